package rigmorrow.data;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.data.column.TableKind;
import rigmorrow.data.csv.CsvAnnotator;
import rigmorrow.data.csv.CsvTable;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.plan.PlanCsvWriter;
import rigmorrow.data.plan.PlanJsonReader;
import rigmorrow.data.plan.PlanJsonWriter;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Problems;
import rigmorrow.data.scenario.ScenarioFile;
import rigmorrow.data.scenario.ScenarioReader;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.data.shottable.ShotTable;
import rigmorrow.data.shottable.ShotTableOptions;
import rigmorrow.data.shottable.ShotTableReading;
import rigmorrow.data.shottable.ShotTableWriter;
import rigmorrow.data.sizes.SizesMerge;
import rigmorrow.data.sizes.SizesMerging;
import rigmorrow.data.table.CellEdit;
import rigmorrow.data.table.HeaderJudge;
import rigmorrow.data.table.OpenTable;
import rigmorrow.data.table.Table;
import rigmorrow.data.table.TableOptions;
import rigmorrow.data.workbook.WorkbookAnnotator;
import rigmorrow.data.workbook.WorkbookTable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** The door to files: picks the format by a file's ending. */
public final class Formats {
  private Formats() {}

  /**
   * Reads a floor file (.json, .yaml or .yml).
   *
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static Floor readFloor(Path file) throws IOException, InputException {
    Trees.Notation notation = notation(file.toString());
    return FloorReader.read(file.toString(), InputFile.read(file).text(), notation);
  }

  /**
   * Writes a floor file (.json, .yaml or .yml), whole or not at all.
   *
   * @throws InputException when the ending is no floor file's
   * @throws IOException when it cannot be written
   */
  public static void writeFloor(Floor floor, Path file, SafeFile.Existing existing)
      throws IOException, InputException {
    SafeFile.write(file, FloorWriter.write(floor, notation(file.toString())), existing);
  }

  /**
   * Reads a shot list (.json, .yaml or .yml) and checks it against its floor.
   *
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static ShotList readShotList(Path file, Floor floor) throws IOException, InputException {
    listNotation(file.toString());
    return readShotList(InputFile.read(file), floor);
  }

  /**
   * Reads a shot list (.json, .yaml or .yml) from memory and checks it against its floor.
   *
   * @throws InputException with everything that is wrong with the file
   */
  public static ShotList readShotList(InputFile file, Floor floor) throws InputException {
    return ShotJsonReader.read(file.name(), file.text(), listNotation(file.name()), floor);
  }

  /**
   * Writes a shot list (.json, .yaml or .yml), whole or not at all.
   *
   * @throws InputException when the ending is no shot list's
   * @throws IOException when it cannot be written
   */
  public static void writeShotList(ShotList list, Path file, SafeFile.Existing existing)
      throws IOException, InputException {
    SafeFile.write(file, ShotJsonWriter.write(list, notation(file.toString())), existing);
  }

  /**
   * Reads a shot list that is a table (.csv, .tsv, .txt, .xlsx or .xlsm) and checks it against its
   * floor.
   *
   * @param options what the file itself does not say
   * @return the shot list with notes on how it was read
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static ShotTableReading readShotTable(Path file, Floor floor, ShotTableOptions options)
      throws IOException, InputException {
    return readShotTable(openShotTable(InputFile.read(file), options.table()), floor, options);
  }

  /**
   * Opens a shot list that is a table (.csv, .tsv, .txt, .xlsx or .xlsm), to be read, mended and
   * read again.
   *
   * @throws InputException when there is no header, or one that cannot be read
   */
  public static OpenTable openShotTable(InputFile file, TableOptions options)
      throws InputException {
    Problems problems = new Problems(file.name());
    Table table = table(file, options, TableKind.SHOT_LIST, problems);
    return new OpenTable(file.name(), table, problems.found());
  }

  /**
   * Reads the shot list that an open table holds and checks it against its floor.
   *
   * @param options what the file itself does not say
   * @return the shot list with notes on how it was read
   * @throws InputException with everything that is wrong with the table
   */
  public static ShotTableReading readShotTable(
      OpenTable table, Floor floor, ShotTableOptions options) throws InputException {
    Problems problems = new Problems(table.name());
    table
        .noted()
        .forEach(
            noted -> problems.add(noted.place(), noted.field(), noted.value(), noted.accepted()));
    return ShotTable.read(table.table(), floor, options, problems);
  }

  /**
   * Reads what a dimensioning device measured, a table (.csv, .tsv, .txt, .xlsx or .xlsm), and
   * merges it into a shot list.
   *
   * @param preferred true when the device's values go before those of the list
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static SizesMerging mergeSizes(
      Path file, TableOptions options, ShotList list, Floor floor, boolean preferred)
      throws IOException, InputException {
    Problems problems = new Problems(file.toString());
    Table table = table(InputFile.read(file), options, TableKind.SIZES, problems);
    return SizesMerge.merge(table, options, list, floor, preferred, problems);
  }

  /** True when the name is that of a table: .csv, .tsv or .txt, .xlsx or .xlsm. */
  public static boolean isTable(Path file) {
    return InputFile.isTable(file.toString());
  }

  /** True when the name is that of a workbook: .xlsx or .xlsm. */
  public static boolean isWorkbook(Path file) {
    return InputFile.isWorkbook(file.toString());
  }

  /**
   * A copy of a shot list that is a table, with its problems beside its rows, to be mended and read
   * again.
   *
   * @param told what is wrong with it
   * @throws InputException with the reason when no such copy can be made
   * @throws IOException when the file system fails
   */
  public static byte[] annotatedShotTable(Path file, TableOptions options, List<InputProblem> told)
      throws IOException, InputException {
    return annotatedShotTable(InputFile.read(file), options, told, List.of());
  }

  /**
   * The same of a file in memory, some of whose cells were mended already.
   *
   * @param told what is wrong with it still
   * @param mended cells that have another text in the copy
   * @throws InputException with the reason when no such copy can be made
   */
  public static byte[] annotatedShotTable(
      InputFile file, TableOptions options, List<InputProblem> told, List<CellEdit> mended)
      throws InputException {
    return InputFile.isWorkbook(file.name())
        ? WorkbookAnnotator.annotated(
            file.bytes(), options, TableKind.SHOT_LIST, told, mended, file.name())
        : CsvAnnotator.annotated(
            file.bytes(), options, TableKind.SHOT_LIST, told, mended, file.name());
  }

  /**
   * Writes a shot list as a table, whole or not at all.
   *
   * @throws IllegalArgumentException when the list has pins or jobs held back, which a table cannot
   *     keep
   * @throws IOException when it cannot be written
   */
  public static void writeShotTable(ShotList list, Path file, SafeFile.Existing existing)
      throws IOException {
    SafeFile.write(file, ShotTableWriter.write(list), existing);
  }

  /**
   * Reads a plan (.json). Whether it keeps the floor's rules is not asked.
   *
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static Plan readPlan(Path file) throws IOException, InputException {
    return PlanJsonReader.read(file.toString(), InputFile.read(file).text());
  }

  /**
   * Writes a plan in JSON, whole or not at all.
   *
   * @throws IOException when it cannot be written
   */
  public static void writePlan(Plan plan, Path file, SafeFile.Existing existing)
      throws IOException {
    SafeFile.write(file, PlanJsonWriter.write(plan), existing);
  }

  /**
   * Writes a plan as a table for spreadsheets, whole or not at all.
   *
   * @param list the shot list the plan was made for
   * @throws IOException when it cannot be written
   */
  public static void writePlanTable(Plan plan, ShotList list, Path file, SafeFile.Existing existing)
      throws IOException {
    SafeFile.write(file, PlanCsvWriter.write(plan, list, ""), existing);
  }

  /**
   * Reads scenarios (.json, .yaml or .yml) and makes each on every batch.
   *
   * @param batches that they are to be compared over; at least one
   * @throws InputException with everything that is wrong with the file
   * @throws IOException when the file system fails
   */
  public static Study readScenarios(Path file, List<Batch> batches)
      throws IOException, InputException {
    notation(file.toString());
    return readScenarioFile(InputFile.read(file), batches).study();
  }

  /**
   * Reads a scenario file (.json, .yaml or .yml) from memory and makes each scenario on every
   * batch.
   *
   * @param batches that they are to be compared over; at least one
   * @throws InputException with everything that is wrong with the file
   */
  public static ScenarioFile readScenarioFile(InputFile file, List<Batch> batches)
      throws InputException {
    return ScenarioReader.readFile(file.name(), file.text(), notation(file.name()), batches);
  }

  private static Table table(
      InputFile file, TableOptions options, HeaderJudge judge, Problems problems)
      throws InputException {
    return InputFile.isWorkbook(file.name())
        ? WorkbookTable.read(file.bytes(), options, judge, problems)
        : CsvTable.read(file.bytes(), options, judge, problems);
  }

  private static Trees.Notation notation(String name) throws InputException {
    return notation(name, "a name that ends in .json, .yaml or .yml");
  }

  private static Trees.Notation listNotation(String name) throws InputException {
    return notation(name, "a name that ends in .xlsx, .csv, .json, .yaml or .yml");
  }

  private static Trees.Notation notation(String name, String accepted) throws InputException {
    return switch (InputFile.ending(name)) {
      case "json" -> Trees.Notation.JSON;
      case "yaml", "yml" -> Trees.Notation.YAML;
      default -> throw InputFile.refused(name, "another ending", accepted);
    };
  }
}
