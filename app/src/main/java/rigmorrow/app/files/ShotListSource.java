package rigmorrow.app.files;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.table.TableOptions;

/**
 * Which floor and shot list to read, and what a table does not say by itself.
 *
 * @param floor floor file
 * @param shotList shot list
 * @param date first day to plan; null for what the file says, or for a table the usual day
 * @param days how many days; null for what the file says, or for a table the usual number
 * @param table how a table is to be read
 * @param sizes what a dimensioning device measured; null for nothing
 */
public record ShotListSource(
    Path floor,
    Path shotList,
    @Nullable LocalDate date,
    @Nullable Integer days,
    TableOptions table,
    @Nullable SizesSource sizes) {

  /**
   * A table of sizes.
   *
   * @param file the table
   * @param table how it is to be read
   * @param preferred true when its values go before those of the shot list
   */
  public record SizesSource(Path file, TableOptions table, boolean preferred) {}
}
