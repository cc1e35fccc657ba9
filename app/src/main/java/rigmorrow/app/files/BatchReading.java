package rigmorrow.app.files;

import org.jspecify.annotations.Nullable;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.sizes.SizesMerging;
import rigmorrow.model.shot.Batch;

/**
 * A floor and a shot list with notes on how they were read.
 *
 * @param batch floor and shot list
 * @param notes how a table was understood; null for another kind of file
 * @param sizes what came of the measured sizes; null without any
 */
public record BatchReading(Batch batch, @Nullable TableNotes notes, @Nullable SizesMerging sizes) {}
