package rigmorrow.app.files;

import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Which floor and shot list to read, and what a CSV file does not say by itself.
 *
 * @param floor floor file
 * @param shotList shot list
 * @param date first day to plan; null for what the file says, or for CSV the usual day
 * @param days how many days; null for what the file says, or for CSV the usual number
 * @param decimal decimal mark of a CSV file; null to find it
 * @param delimiter of a CSV file; null to find it
 */
public record ShotListSource(
    Path floor,
    Path shotList,
    @Nullable LocalDate date,
    @Nullable Integer days,
    @Nullable Character decimal,
    @Nullable Character delimiter) {}
