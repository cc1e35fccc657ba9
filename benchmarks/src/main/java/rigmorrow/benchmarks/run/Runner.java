package rigmorrow.benchmarks.run;

import java.io.IOException;
import java.io.PrintStream;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.SolveListener;
import rigmorrow.solver.SolverSettings;

/**
 * Runs every peer on every instance and seed, one after another, and has every plan re-examined.
 * Goes on where an earlier run with the same file stopped.
 */
public final class Runner {
  private static final long WARM_UP_MILLIS = 2_000;

  private final List<Instance> instances;
  private final List<Peer> peers;
  private final RunSettings settings;
  private final CellFile file;
  private final PrintStream progress;
  private final Set<Cell.Key> done = new HashSet<>();
  private long begin;
  private int before;
  private boolean warm;

  /**
   * @param instances in the order of the run
   * @param peers in the order of tables
   * @param settings what each cell is allowed
   * @param file for the results
   * @param progress a line for each cell
   */
  public Runner(
      List<Instance> instances,
      List<Peer> peers,
      RunSettings settings,
      CellFile file,
      PrintStream progress) {
    this.instances = List.copyOf(instances);
    this.peers = List.copyOf(peers);
    this.settings = settings;
    this.file = file;
    this.progress = progress;
  }

  /**
   * Runs what is not in the file yet.
   *
   * @throws InputException when the file or an instance cannot be used, or the file was made with
   *     other limits
   * @throws IOException when the file system fails
   */
  public void run() throws IOException, InputException {
    takeUp(file.read());
    before = done.size();
    begin = System.nanoTime();
    warm = settings.steps() > 0;
    for (int number = 0; number < instances.size(); number++) {
      if (hasWork(instances.get(number))) {
        run(instances.get(number), number);
      }
    }
  }

  /** A run goes on only under the limits it began with. */
  private void takeUp(List<Cell> cells) throws InputException {
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      for (Instance instance : instances) {
        Cell.Effort effort = settings.effort(instance);
        if (instance.name().equals(cell.instance()) && !effort.equals(cell.effort())) {
          throw file.refusal(
              i + 2, "" + cell.effort(), "as in this run: " + effort + "; or another --out");
        }
      }
      if (isOfThisRun(cell)) {
        done.add(cell.key());
      }
    }
  }

  private boolean isOfThisRun(Cell cell) {
    return cell.seed() >= 1
        && cell.seed() <= settings.seeds()
        && instances.stream().anyMatch(one -> one.name().equals(cell.instance()))
        && peers.stream().anyMatch(one -> one.name().equals(cell.peer()));
  }

  private boolean hasWork(Instance instance) {
    for (int seed = 1; seed <= settings.seeds(); seed++) {
      for (Peer peer : peers) {
        if (!done.contains(new Cell.Key(instance.name(), seed, peer.name()))) {
          return true;
        }
      }
    }
    return false;
  }

  private void run(Instance instance, int number) throws IOException, InputException {
    Batch batch = instance.source().read();
    if (!warm) {
      warmUp(batch);
      warm = true;
    }
    for (int seed = 1; seed <= settings.seeds(); seed++) {
      for (int turn = 0; turn < peers.size(); turn++) {
        Peer peer = peers.get((turn + number + seed - 1) % peers.size());
        if (done.add(new Cell.Key(instance.name(), seed, peer.name()))) {
          Cell cell = run(instance, batch, peer, seed);
          file.append(cell);
          tell(cell);
        }
      }
    }
  }

  /** Unrecorded, so that the first cells do not pay for compiling what all of them run. */
  private void warmUp(Batch batch) {
    for (Peer peer : peers) {
      progress.println("warming up " + peer.name());
      Duration time = Duration.ofMillis(WARM_UP_MILLIS);
      peer.plan(batch, new SolverSettings(time, 0, 0, settings.cores()), SolveListener.NONE);
    }
  }

  private Cell run(Instance instance, Batch batch, Peer peer, int seed) {
    Cell.Effort effort = settings.effort(instance);
    Duration limit = effort.limitMillis() == 0 ? null : Duration.ofMillis(effort.limitMillis());
    Course course = new Course();
    long start = System.nanoTime();
    Plan plan =
        peer.plan(batch, new SolverSettings(limit, effort.steps(), seed, effort.cores()), course);
    long millis = (System.nanoTime() - start) / 1_000_000;
    PlanFigures figures = plan.figures();
    Score score = Score.of(figures);
    return new Cell(
        instance.name(),
        instance.group(),
        instance.bestKnown(),
        batch.shotList().jobs().size(),
        batch.floor().rigs().size(),
        seed,
        peer.name(),
        effort,
        score,
        new Cell.Parts(
            figures.latenessPoints(),
            figures.changeoverPoints(),
            figures.finishingPoints(),
            figures.leftOut(),
            figures.lateJobs()),
        PlanChecker.check(batch, plan).size(),
        millis,
        limit == null ? List.of() : course.thinned(effort.limitMillis(), millis, score));
  }

  private void tell(Cell cell) {
    int all = instances.size() * settings.seeds() * peers.size();
    double hours = (System.nanoTime() - begin) / 3.6e12;
    double left = hours / (done.size() - before) * (all - done.size());
    progress.printf(
        Locale.ROOT,
        "%d of %d  %s  seed %d  %s  %s%s  %.1f s  (%.1f h left)%n",
        done.size(),
        all,
        cell.instance(),
        cell.seed(),
        cell.peer(),
        cell.score(),
        cell.workable() ? "" : "  UNWORKABLE",
        cell.millis() / 1000.0,
        left);
  }
}
