package rigmorrow.data.shottable;

import rigmorrow.data.column.TableNotes;
import rigmorrow.model.shot.ShotList;

/**
 * A shot list as read from a table.
 *
 * @param shotList without pins; a table has none
 * @param notes how the table was understood; to be shown to the user
 */
public record ShotTableReading(ShotList shotList, TableNotes notes) {}
