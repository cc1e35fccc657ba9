package rigmorrow.data.shottable;

import java.time.LocalDate;
import rigmorrow.data.table.TableOptions;

/**
 * What a shot list in a table does not say by itself.
 *
 * @param date first day that may be planned; a time of day without a date is on this day
 * @param days how many days may be planned, 1 to 31
 * @param table how the table is to be read
 */
public record ShotTableOptions(LocalDate date, int days, TableOptions table) {
  public ShotTableOptions {
    if (days < 1 || days > 31) {
      throw new IllegalArgumentException("days is " + days + "; accepted: 1 to 31");
    }
  }
}
