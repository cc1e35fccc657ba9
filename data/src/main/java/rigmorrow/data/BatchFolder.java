package rigmorrow.data;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.table.TableOptions;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/**
 * A folder of past days in ordinary files. Each folder in it is a day: a shot list ({@code
 * shot-list.csv} or any other ending that shot lists may have) and the floor as it was ({@code
 * floor.json}, {@code .yaml} or {@code .yml}). A day without a floor of its own takes the one that
 * stands beside the days. A shot list that is a table says no date, so its folder's name does.
 */
public final class BatchFolder {
  private static final String FLOOR = "floor";
  private static final String SHOT_LIST = "shot-list";

  /**
   * One day as read.
   *
   * @param name of its folder
   */
  public record Day(String name, Batch batch) {}

  /**
   * What was found.
   *
   * @param days that can be used, by name
   * @param refused what is wrong with the others, a file each
   */
  public record Reading(List<Day> days, List<InputException> refused) {
    public Reading {
      days = List.copyOf(days);
      refused = List.copyOf(refused);
    }
  }

  private BatchFolder() {}

  /**
   * Reads every day of a folder, whatever is wrong with some.
   *
   * @throws IOException when the file system fails
   */
  public static Reading read(Path folder) throws IOException {
    return read(folder, null);
  }

  /**
   * Reads every day of a folder, whatever is wrong with some.
   *
   * @param other floor that every day takes in place of its own; null for its own
   * @throws IOException when the file system fails
   */
  public static Reading read(Path folder, @Nullable Floor other) throws IOException {
    List<Day> days = new ArrayList<>();
    List<InputException> refused = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      refused.add(refusal(folder, "no folder", "a folder with a folder for each day"));
      return new Reading(days, refused);
    }
    List<Path> folders = entries(folder).stream().filter(BatchFolder::isDay).toList();
    if (folders.isEmpty()) {
      refused.add(refusal(folder, "no folders in it", "a folder for each day"));
    }
    for (Path day : folders) {
      try {
        days.add(new Day(nameOf(day), readDay(folder, day, other)));
      } catch (InputException e) {
        refused.add(e);
      }
    }
    return new Reading(days, refused);
  }

  /**
   * Writes a day as a floor in JSON and a shot list in CSV, into a folder named by its date;
   * replaces older files.
   *
   * @param folder for all days; made when it is not there
   * @throws IOException when it cannot be written
   */
  public static void write(Path folder, Batch batch) throws IOException {
    Path day = Files.createDirectories(folder.resolve(batch.shotList().date().toString()));
    try {
      Formats.writeFloor(batch.floor(), day.resolve(FLOOR + ".json"), SafeFile.Existing.REPLACE);
    } catch (InputException e) {
      throw new IllegalStateException("the ending is known", e);
    }
    Formats.writeShotTable(
        batch.shotList(), day.resolve(SHOT_LIST + ".csv"), SafeFile.Existing.REPLACE);
  }

  private static Batch readDay(Path folder, Path day, @Nullable Floor other)
      throws IOException, InputException {
    Path listFile = only(day, SHOT_LIST);
    if (listFile == null) {
      throw refusal(day, "no shot list", "shot-list.csv, .xlsx or .json in it");
    }
    Floor floor = other == null ? floor(folder, day) : other;
    return new Batch(floor, shotList(day, listFile, floor));
  }

  private static Floor floor(Path folder, Path day) throws IOException, InputException {
    Path own = only(day, FLOOR);
    Path file = own == null ? only(folder, FLOOR) : own;
    if (file == null) {
      throw refusal(day, "no floor file", "floor.json in it, or beside all days");
    }
    return Formats.readFloor(file);
  }

  private static ShotList shotList(Path day, Path file, Floor floor)
      throws IOException, InputException {
    if (!Formats.isTable(file)) {
      return Formats.readShotList(file, floor);
    }
    ShotTableOptions options = new ShotTableOptions(date(day), 1, TableOptions.FIND);
    return Formats.readShotTable(file, floor, options).shotList();
  }

  private static LocalDate date(Path day) throws InputException {
    try {
      return LocalDate.parse(nameOf(day));
    } catch (DateTimeParseException e) {
      throw refusal(
          day, nameOf(day), "a date such as 2026-03-18 as its name, or a shot list in JSON");
    }
  }

  /** The one file of that name before its ending, or null. */
  private static @Nullable Path only(Path folder, String name) throws IOException, InputException {
    List<Path> found =
        entries(folder).stream().filter(file -> nameOf(file).startsWith(name + ".")).toList();
    if (found.size() > 1) {
      throw refusal(folder, nameOf(found.get(0)) + " and " + nameOf(found.get(1)), "one of them");
    }
    return found.isEmpty() ? null : found.get(0);
  }

  private static boolean isDay(Path path) {
    return Files.isDirectory(path) && !nameOf(path).startsWith(".");
  }

  private static List<Path> entries(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.sorted().toList();
    }
  }

  private static String nameOf(Path path) {
    return String.valueOf(path.getFileName());
  }

  private static InputException refusal(Path path, String value, String accepted) {
    return new InputException(
        List.of(new InputProblem(path.toString(), "folder", "", value, accepted)));
  }
}
