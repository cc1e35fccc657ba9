package rigmorrow.app.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.sizes.SizesMerging;
import rigmorrow.model.shot.Batch;

/**
 * A floor and a shot list with notes on how they were read.
 *
 * @param batch floor and shot list
 * @param notes how a table was understood; null for another kind of file
 * @param remarks what looks odd in a list that is no table; for a table the notes have it
 * @param sizes what came of the measured sizes; null without any
 */
public record BatchReading(
    Batch batch, @Nullable TableNotes notes, List<String> remarks, @Nullable SizesMerging sizes) {
  public BatchReading {
    remarks = List.copyOf(remarks);
  }
}
