package rigmorrow.benchmarks.textbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads instance files of the literature as they are handed out. A file that is not as described
 * fails with {@link IOException}.
 */
public final class LiteratureFiles {
  private LiteratureFiles() {}

  /**
   * Unrelated parallel machines with setups that depend on machine and sequence, least makespan:
   * Vallada and Ruiz, European Journal of Operational Research 211 (2011), 612-622. The first job
   * of a machine has no setup.
   */
  public static TextbookProblem parallelMachines(Path file) throws IOException {
    Numerals in = new Numerals(file);
    int jobs = in.whole();
    int machines = in.whole();
    in.wholes(2);
    List<TextbookJob> list = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      List<Integer> seconds = new ArrayList<>();
      for (int machine = 0; machine < machines; machine++) {
        in.whole();
        seconds.add(in.whole());
      }
      list.add(TextbookJob.of(seconds).withFamily(job));
    }
    in.skipPast("SSD");
    int[][][] setups = new int[machines][jobs][];
    for (int machine = 0; machine < machines; machine++) {
      in.skipPast("M" + machine);
      for (int from = 0; from < jobs; from++) {
        setups[machine][from] = in.wholes(jobs);
      }
    }
    return new TextbookProblem(
        nameOf(file), list, SetupTimes.freeFirst(setups), TextbookProblem.MAKESPAN);
  }

  /**
   * An asymmetric travelling salesman as one rig with nothing but changeovers: Reinelt, TSPLIB,
   * ORSA Journal on Computing 3 (1991), 376-384. The rig starts in the setup of the first city; the
   * last job, held in its place, asks for that setup again and so closes the tour.
   */
  public static TextbookProblem salesman(Path file) throws IOException {
    Numerals in = new Numerals(file);
    in.skipPast("DIMENSION:");
    int cities = in.whole();
    in.skipPast("FULL_MATRIX");
    in.skipPast("EDGE_WEIGHT_SECTION");
    int[][][] setups = new int[1][cities][];
    for (int from = 0; from < cities; from++) {
      setups[0][from] = in.wholes(cities);
    }
    List<TextbookJob> jobs = new ArrayList<>();
    for (int city = 1; city < cities; city++) {
      jobs.add(TextbookJob.of(0).withFamily(city));
    }
    jobs.add(TextbookJob.of(0).withFamily(0).at(cities - 1));
    return new TextbookProblem(
        nameOf(file), jobs, SetupTimes.of(setups, 0), TextbookProblem.CHANGEOVERS);
  }

  /**
   * One machine with setups that depend on the sequence, least weighted tardiness: the 120
   * instances of Cicirello (2003), 60 jobs each. The first job has a setup too.
   */
  public static TextbookProblem tardinessWithSetups(Path file) throws IOException {
    Numerals in = new Numerals(file);
    in.skipPast("Size:");
    int jobs = in.whole();
    in.skipPast("Process");
    in.skipPast("Times:");
    int[] seconds = in.wholes(jobs);
    in.skipPast("Weights:");
    int[] weights = in.wholes(jobs);
    in.skipPast("Duedates:");
    int[] due = in.wholes(jobs);
    in.skipPast("Setup");
    in.skipPast("Times:");
    int[][][] setups = new int[1][jobs + 1][jobs + 1];
    for (int line = 0; line < jobs * jobs; line++) {
      int from = in.whole();
      int to = in.whole();
      setups[0][from < 0 ? jobs : from][to] = in.whole();
    }
    List<TextbookJob> list = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      list.add(tardy(seconds[job], weights[job], due[job]).withFamily(job));
    }
    return new TextbookProblem(
        nameOf(file), list, SetupTimes.of(setups, jobs), TextbookProblem.LATENESS);
  }

  /**
   * One machine, least weighted tardiness: the OR-Library of J. E. Beasley, files wt40 and wt50,
   * 125 instances each.
   *
   * @param jobs in each instance
   * @param instance counted from 1
   */
  public static TextbookProblem tardiness(Path file, int jobs, int instance) throws IOException {
    Numerals in = new Numerals(file);
    in.wholes(3 * jobs * (instance - 1));
    int[] seconds = in.wholes(jobs);
    int[] weights = in.wholes(jobs);
    int[] due = in.wholes(jobs);
    List<TextbookJob> list = new ArrayList<>();
    for (int job = 0; job < jobs; job++) {
      list.add(tardy(seconds[job], weights[job], due[job]));
    }
    return TextbookProblem.of(nameOf(file) + " " + instance, TextbookProblem.LATENESS, list);
  }

  private static TextbookJob tardy(int seconds, int weight, int due) {
    TextbookJob job = TextbookJob.of(seconds).shouldBy(due);
    // A weight of 0 counts for nothing: such a job is never late.
    return weight == 0 ? TextbookJob.of(seconds) : job.withWeight(weight);
  }

  private static String nameOf(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.contains(".") ? name.substring(0, name.lastIndexOf('.')) : name;
  }
}
