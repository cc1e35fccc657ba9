package rigmorrow.benchmarks.textbook;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Supplier;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.plan.PlanFigures;

/** Instances of the literature that are read from the reference folder. */
final class LiteratureChecks {
  private static final String SALESMAN =
      "Reinelt, TSPLIB, ORSA Journal on Computing 3 (1991), 376-384";
  private static final String PARALLEL =
      "instance: Vallada, Ruiz, European Journal of Operational Research 211 (2011), 612-622;"
          + " optimum proven by dynamic programming";
  private static final String TARDINESS = "OR-Library of J. E. Beasley";
  private static final String TARDINESS_WITH_SETUPS =
      "instance: Cicirello 2003; value attributed to Tanaka, Araki, Computers & Operations Research"
          + " 40 (2013), 344-352";

  private LiteratureChecks() {}

  static List<OutsideCheck> all() {
    List<OutsideCheck> all = new ArrayList<>(salesmen());
    all.addAll(parallelMachines());
    all.addAll(tardiness());
    all.addAll(tardinessWithSetups());
    return all;
  }

  /** One rig with nothing but changeovers. Bars: the worst of seeds 1 to 4, and 2 % more. */
  static List<OutsideCheck> salesmen() {
    return List.of(
        salesman("br17", 200_000, 39, 39),
        salesman("ftv33", 1_000_000, 1286, 1328),
        salesman("ftv35", 1_000_000, 1473, 1516),
        salesman("ftv38", 1_000_000, 1530, 1577),
        salesman("ftv44", 1_000_000, 1613, 1668));
  }

  private static OutsideCheck salesman(String name, long decodes, int best, int bar) {
    String file = "atsp/" + name + ".atsp";
    return reached(
        "Changeovers alone, " + name,
        SALESMAN,
        file,
        Reference.reading(file, LiteratureFiles::salesman),
        decodes,
        plan -> Figure.atMost("", best, bar, plan.changeoverSeconds()));
  }

  private static OutsideCheck reached(
      String what,
      String source,
      String file,
      Supplier<TextbookProblem> problem,
      long decodes,
      Function<PlanFigures, Figure> figure) {
    return Reference.needed(
        file,
        OutsideCheck.of(
            String.format(Locale.ROOT, "%s, %,d decodes", what, decodes),
            source,
            LiteratureTest.class,
            () -> List.of(figure.apply(FrontDoor.figures(problem.get(), decodes)))));
  }

  /**
   * Four named ones whose optima stand here, and one of each other size, setups of each kind in
   * turn.
   */
  static List<OutsideCheck> parallelMachines() {
    List<OutsideCheck> list = new ArrayList<>();
    list.add(parallel("I_6_2_S_1-9_1", () -> 74));
    list.add(parallel("I_8_3_S_1-9_1", () -> 72));
    list.add(parallel("I_10_2_S_1-9_1", () -> 169));
    list.add(parallel("I_12_5_S_1-9_1", () -> 80));
    int[] jobs = {6, 8, 10, 12};
    int[] machines = {2, 3, 4, 5};
    int[] setups = {9, 49, 99, 124};
    for (int i = 0; i < jobs.length; i++) {
      for (int j = 0; j < machines.length; j++) {
        String size = "I_" + jobs[i] + "_" + machines[j] + "_S_1-";
        if (list.stream().noneMatch(check -> check.toString().contains(size + "9_1"))) {
          String name = size + setups[(i + j) % setups.length] + "_2";
          list.add(parallel(name, () -> listedOptimum(name)));
        }
      }
    }
    return list;
  }

  private static OutsideCheck parallel(String name, Supplier<Integer> optimum) {
    String file = "upmsp/small/" + name + ".txt";
    return reached(
        "Makespan with setups, " + name,
        PARALLEL,
        file,
        Reference.reading(file, LiteratureFiles::parallelMachines),
        500_000,
        plan -> Figure.equal("", optimum.get(), plan.finishedAt()));
  }

  /** From a table with the name first and the proven optimum fourth. */
  private static int listedOptimum(String name) {
    Reference.Reading<List<String>> lines = Files::readAllLines;
    return Reference.reading("upmsp/small_optimal.csv", lines).get().stream()
        .map(line -> line.split(","))
        .filter(cells -> cells[0].equals(name))
        .map(cells -> Integer.valueOf(cells[3]))
        .findFirst()
        .orElseThrow();
  }

  /** One machine, weighted tardiness; the values are optima. */
  static List<OutsideCheck> tardiness() {
    int[] optima = {913, 1225, 537, 2094, 990};
    List<OutsideCheck> list = new ArrayList<>();
    for (int i = 0; i < optima.length; i++) {
      int instance = i + 1;
      int optimum = optima[i];
      Supplier<TextbookProblem> problem =
          Reference.reading("wt/wt40.txt", file -> LiteratureFiles.tardiness(file, 40, instance));
      list.add(
          reached(
              "Weighted tardiness, wt40 number " + instance,
              TARDINESS,
              "wt/wt40.txt",
              problem,
              500_000,
              plan -> Figure.equal("", optimum, plan.latenessPoints())));
    }
    return list;
  }

  /** One machine, weighted tardiness with setups. Bars: the worst of seeds 1 to 4, and 2 % more. */
  static List<OutsideCheck> tardinessWithSetups() {
    return List.of(
        withSetups(1, 453, 765),
        withSetups(15, 724, 1429),
        withSetups(57, 63_514, 72_411),
        withSetups(81, 383_485, 394_835),
        withSetups(113, 259_649, 268_631));
  }

  private static OutsideCheck withSetups(int instance, long best, long bar) {
    String file = "wtsds/wt_sds_" + instance + ".instance";
    return reached(
        "Weighted tardiness with setups, number " + instance,
        TARDINESS_WITH_SETUPS,
        file,
        Reference.reading(file, LiteratureFiles::tardinessWithSetups),
        1_000_000,
        plan -> Figure.atMost("", best, bar, plan.latenessPoints()));
  }
}
