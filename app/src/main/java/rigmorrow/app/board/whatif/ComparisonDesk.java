package rigmorrow.app.board.whatif;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.scenario.ScenarioDocument;
import rigmorrow.app.board.scenario.ScenarioEdits;
import rigmorrow.app.board.scenario.UsualChange;
import rigmorrow.app.planning.Cores;
import rigmorrow.app.planning.CoresTakenException;
import rigmorrow.app.planning.Listeners;
import rigmorrow.app.report.Durations;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.Estimate;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.plans.PlanNames;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.money.Investment;
import rigmorrow.solver.whatif.Past;

/**
 * What a board compares: the scenarios that were chosen, and one comparison of them at a time. All
 * tabs see the same. Every method may be called from any thread; what a method has chosen is stored
 * when it returns, and every plan before it is told of.
 */
public final class ComparisonDesk implements AutoCloseable {
  private static final Logger LOG = LoggerFactory.getLogger(ComparisonDesk.class);
  private static final Duration LAST_WAIT = Duration.ofSeconds(15);

  private final DayReading reading;
  private final Chosen chosen;
  private final ComparisonMaker maker;
  private final Cores.Share share;
  private final Listeners listeners = new Listeners("comparisons");
  private final Object lock = new Object();
  private volatile @Nullable ComparisonRun run;
  private long changes;

  /**
   * @param source of the days to compare on; null for none
   * @param folder to keep in what is compared; made when there is something to keep
   * @param cores that a search for the day wants too
   * @param program name and version
   */
  public ComparisonDesk(@Nullable DaySource source, Path folder, Cores cores, String program) {
    this(source, folder, cores, program, new PlanNames());
  }

  /**
   * @param names of all plans. They take a while to work out, so nobody may wait for a lock of this
   *     while that is done.
   */
  ComparisonDesk(
      @Nullable DaySource source, Path folder, Cores cores, String program, PlanNames names) {
    ComparisonStore store = new ComparisonStore(folder);
    this.chosen = new Chosen(store);
    this.maker = new ComparisonMaker(store, program, names);
    this.reading = new DayReading(source, this::restore, this::changed);
    this.share = cores.share(this::comparing, this::comparingSentence);
  }

  /** What there is to see; the first to look has the days read. */
  public Look look() {
    DayReading.Days days = reading.ask();
    boolean ready = !days.days().isEmpty(); // What is being restored is not there yet.
    synchronized (lock) {
      return new Look(
          changes,
          days,
          ready ? chosen.document() : null,
          chosen.settings(),
          chosen.note(),
          ready ? progress() : ComparisonProgress.NONE);
    }
  }

  /** Grows with everything that there is to see but the progress. */
  public long change() {
    synchronized (lock) {
      return changes;
    }
  }

  /** How far the comparison is, or how the last one ended. */
  public ComparisonProgress progress() {
    ComparisonRun known = run;
    return known == null ? ComparisonProgress.NONE : known.progress();
  }

  /**
   * Asks to be told.
   *
   * @param listener called after every change, on the thread that made it; must be quick
   */
  public void listen(Runnable listener) {
    listeners.add(listener);
  }

  /**
   * Takes a scenario file in place of the scenarios there are.
   *
   * @throws InputException with everything that is wrong with it; then the others stay
   * @throws CoresTakenException while a comparison runs
   */
  public void bring(InputFile file) throws InputException {
    requireIdle();
    choose(new ScenarioEdits(days()).read(chosen.next(), file.name(), file), null);
  }

  /**
   * Adds a scenario.
   *
   * @param number of the scenarios it is added to; 0 where there are none
   * @param purchase null where nothing is bought
   * @throws InputException with why it cannot be made on every day; then nothing is changed
   * @throws IllegalArgumentException when a number is outside its bounds, or a name unknown
   * @throws OtherScenariosException when the scenarios are others
   * @throws CoresTakenException while a comparison runs
   */
  public void add(long number, UsualChange change, @Nullable Investment purchase)
      throws InputException {
    requireIdle();
    ScenarioDocument before = chosen.fresh(number);
    choose(new ScenarioEdits(days()).with(chosen.next(), before, change, purchase), number);
  }

  /**
   * Takes a scenario out.
   *
   * @throws IllegalArgumentException when there is none of that name
   * @throws OtherScenariosException when the scenarios are others
   * @throws CoresTakenException while a comparison runs
   */
  public void remove(long number, String scenario) throws InputException {
    requireIdle();
    ScenarioDocument before = chosen.required(number);
    choose(new ScenarioEdits(days()).without(chosen.next(), before, scenario), number);
  }

  /** The scenario file of the scenarios there are; nothing where there are none. */
  public Optional<String> text() {
    return Optional.ofNullable(chosen.document()).map(ScenarioDocument::text);
  }

  /**
   * How many plans a comparison takes and how long; nothing is planned.
   *
   * @throws InputException when what is asked for cannot be made on every day
   */
  public Estimate estimate(long number, RunSettings wanted) throws InputException {
    requireIdle();
    Comparison comparison = maker.of(chosen.required(number).study(), days(), wanted);
    maker.name(comparison);
    synchronized (lock) {
      requireIdle(); // One that has begun meanwhile writes to what would be read.
      Kept kept = maker.kept(comparison);
      return Estimate.of(comparison, kept.cells(), kept.note());
    }
  }

  /**
   * Begins a comparison, or goes on with it where the same was begun before.
   *
   * @throws InputException when what is asked for cannot be made on every day
   * @throws CoresTakenException while a search or a comparison runs
   */
  public void begin(long number, RunSettings wanted) throws InputException {
    requireIdle();
    share.requireFree(); // Before plans are named, which takes a while.
    Comparison comparison = maker.of(chosen.required(number).study(), days(), wanted);
    maker.name(comparison);
    Path file = maker.file(comparison);
    share.begin(
        () -> {
          synchronized (lock) {
            requireIdle();
            Kept kept = maker.kept(comparison);
            chosen.choose(chosen.required(number), wanted);
            chosen.say(maker.prepare(comparison, file, kept));
            changes++;
            ComparisonRun next = new ComparisonRun(comparison, kept.cells(), file, this::tell);
            run = next;
            next.start();
          }
        });
    tell();
  }

  /** Ends a comparison soon; what is finished is kept. Nothing happens when none runs. */
  public void stop() {
    ComparisonRun known = run;
    if (known != null && known.running()) {
      known.stop();
      tell();
    }
  }

  /** The comparison that runs, or the last one; nothing where there was none of these scenarios. */
  public Optional<ComparisonRun> latest() {
    return Optional.ofNullable(run);
  }

  private boolean comparing() {
    ComparisonRun known = run;
    return known != null && known.running();
  }

  private String comparingSentence() {
    ComparisonProgress now = progress();
    String left =
        now.leftSeconds() < 0 ? "" : " (about " + Durations.left(now.leftSeconds()) + " left)";
    return "Scenarios are being compared, %d of %d plans, and that has the cores. Stop it under What if, or wait until it ends%s."
        .formatted(now.done(), now.all(), left);
  }

  private void requireIdle() {
    if (comparing()) {
      throw new CoresTakenException(comparingSentence());
    }
  }

  private List<Past> days() {
    DayReading.Days days = reading.now();
    if (days.days().isEmpty()) {
      throw ComparisonMaker.refused(days.sentence());
    }
    return days.days();
  }

  /**
   * Takes other scenarios, with what was compared of them before.
   *
   * @param replaced number of those they are made of; null where any may be replaced
   */
  private void choose(ScenarioDocument next, @Nullable Long replaced) {
    for (boolean taken = false; !taken; ) {
      RunSettings settings = chosen.settings();
      Comparison comparison = maker.named(next.study(), days(), settings);
      synchronized (lock) {
        requireIdle();
        if (replaced != null) {
          chosen.fresh(replaced);
        }
        taken = settings.equals(chosen.settings()); // Else another comparison ran meanwhile.
        if (taken) {
          ComparisonMaker.Earlier earlier = maker.earlier(comparison);
          chosen.choose(next, settings);
          chosen.say(earlier.note());
          run = earlier.run();
          changes++;
        }
      }
    }
    tell();
  }

  /** Takes what there was when the program ended, before anybody sees the days. */
  private void restore(DaySource source, List<Past> days) {
    chosen.restore(source, days);
    ScenarioDocument known = chosen.document();
    if (known != null) {
      try {
        ComparisonMaker.Earlier earlier =
            maker.earlier(maker.named(known.study(), days, chosen.settings()));
        chosen.say(earlier.note());
        run = earlier.run();
      } catch (RuntimeException e) {
        LOG.warn("What was compared last cannot be read", e);
      }
    }
  }

  private void changed() {
    synchronized (lock) {
      changes++;
    }
    tell();
  }

  private void tell() {
    listeners.tell();
  }

  /** Ends a comparison with what is finished. */
  @Override
  public void close() {
    ComparisonRun known = run;
    if (known != null) {
      known.stop();
      known.join(LAST_WAIT);
    }
    reading.join(LAST_WAIT);
  }
}
