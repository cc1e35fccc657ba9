package rigmorrow.benchmarks.instance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rigmorrow.benchmarks.textbook.LiteratureFiles;
import rigmorrow.benchmarks.textbook.TextbookFiles;
import rigmorrow.benchmarks.textbook.TextbookProblem;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.shot.Batch;

/**
 * A folder with published instances and the tables of their best known values, as they are handed
 * out. Each instance goes the planner's way: written as a floor file and a shot list, and read back
 * with the ordinary readers.
 */
public final class LiteratureFolder {
  private static final int LIMIT_MILLIS = 50;
  private static final int TEN = 10;

  /** A set of instances with its table. */
  public enum LiteratureSet {
    /** Makespan on unrelated machines with setups, up to 12 jobs. */
    SMALL("upmsp/small", "upmsp/small_optimal.csv", "optimum_exact_dp"),
    /** The same with 50 to 150 jobs. */
    LARGE("upmsp/large", "upmsp/large_best_known.csv", "best_verified_by_solution_2021_2023"),
    /** Weighted tardiness with setups on one machine. */
    TARDINESS("wtsds", "wtsds/optimal.csv", "opt");

    private final String folder;
    private final String table;
    private final String column;

    LiteratureSet(String folder, String table, String column) {
      this.folder = folder;
      this.table = table;
      this.column = column;
    }
  }

  private LiteratureFolder() {}

  /**
   * The instances of a set, by size and then by name, each to be read when it is its turn.
   *
   * @param reference folder in which the set has its own
   * @throws InputException when the folder or its table is not there or not as it should be
   * @throws IOException when the file system fails
   */
  public static List<Instance> read(Path reference, LiteratureSet set)
      throws IOException, InputException {
    Path folder = reference.resolve(set.folder);
    if (!Files.isDirectory(folder)) {
      throw refusal(folder, "no folder", "the instances, as benchmarks/PROTOCOL.md lists them");
    }
    Map<String, Long> known = table(reference.resolve(set.table), set.column);
    List<Instance> instances = new ArrayList<>();
    for (Path file : instanceFiles(folder)) {
      instances.add(
          set == LiteratureSet.TARDINESS ? tardiness(file, known) : machines(file, known));
    }
    return instances;
  }

  private static Instance machines(Path file, Map<String, Long> known) throws InputException {
    String name = stem(file);
    String[] parts = name.split("_");
    try {
      int jobs = Integer.parseInt(parts[1]);
      int rigs = Integer.parseInt(parts[2]);
      return new Instance(
          name,
          jobs + " x " + rigs,
          known.get(name),
          limit(jobs, rigs),
          () -> throughFiles(LiteratureFiles.parallelMachines(file)));
    } catch (NumberFormatException | ArrayIndexOutOfBoundsException e) {
      throw refusal(file, name, "a name such as I_50_10_S_1-9_1");
    }
  }

  private static Instance tardiness(Path file, Map<String, Long> known) throws InputException {
    String name = stem(file);
    int number = number(file);
    if (number < 0) {
      throw refusal(file, name, "a name such as wt_sds_1");
    }
    int first = (number - 1) / TEN * TEN + 1;
    return new Instance(
        name,
        "number " + first + " to " + (first + TEN - 1),
        known.get(String.valueOf(number)),
        limit(60, 1),
        () -> throughFiles(LiteratureFiles.tardinessWithSetups(file)));
  }

  /** The longest of the published limits of the parallel machines: n (m / 2) 50 ms. */
  private static Duration limit(int jobs, int rigs) {
    return Duration.ofMillis((long) jobs * rigs * LIMIT_MILLIS / 2);
  }

  private static Batch throughFiles(TextbookProblem problem) throws IOException, InputException {
    Path folder = Files.createTempDirectory("instance");
    try {
      TextbookFiles.write(problem, folder);
      return TextbookFiles.read(folder);
    } finally {
      try (Stream<Path> all = Files.walk(folder)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private static List<Path> instanceFiles(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(file -> isInstance(String.valueOf(file.getFileName())))
          .sorted(Comparator.comparing(LiteratureFolder::sizes).thenComparing(Path::toString))
          .toList();
    }
  }

  private static boolean isInstance(String name) {
    return name.startsWith("I_") || name.endsWith(".instance");
  }

  /** The numbers in a name, each in five digits: so 6 comes before 10. */
  private static String sizes(Path file) {
    StringBuilder key = new StringBuilder();
    for (String part : stem(file).split("\\D+")) {
      key.append("00000".substring(Math.min(5, part.length()))).append(part);
    }
    return key.toString();
  }

  private static int number(Path file) {
    String digits = stem(file).replaceAll(".*_", "");
    return digits.matches("[1-9]\\d{0,4}") ? Integer.parseInt(digits) : -1;
  }

  private static Map<String, Long> table(Path file, String column)
      throws IOException, InputException {
    if (!Files.isRegularFile(file)) {
      throw refusal(file, "no file", "the table of best known values");
    }
    List<String> lines = Files.readAllLines(file);
    List<String> heads = lines.isEmpty() ? List.of() : List.of(lines.get(0).split(","));
    int at = heads.indexOf(column);
    if (at < 0) {
      throw refusal(file, "no such column", "a column " + column);
    }
    Map<String, Long> known = new HashMap<>();
    for (int row = 1; row < lines.size(); row++) {
      String[] cells = lines.get(row).split(",");
      if (cells.length > at && cells[at].matches("\\d{1,15}")) {
        known.put(cells[0], Long.valueOf(cells[at]));
      } else if (cells.length > at && !cells[at].isBlank()) {
        throw refusal(file, cells[at], "a whole number in row " + (row + 1));
      }
    }
    return known;
  }

  private static String stem(Path file) {
    return String.valueOf(file.getFileName()).replaceAll("\\.[a-z]+$", "");
  }

  private static InputException refusal(Path path, String value, String accepted) {
    return new InputException(
        List.of(new InputProblem(path.toString(), "file", "", value, accepted)));
  }
}
