package rigmorrow.data.shotcsv;

import rigmorrow.model.shot.ShotList;

/**
 * A shot list as read from a CSV file.
 *
 * @param shotList without pins; a CSV file has none
 * @param notes how the file was understood; to be shown to the user
 */
public record CsvReading(ShotList shotList, CsvNotes notes) {}
