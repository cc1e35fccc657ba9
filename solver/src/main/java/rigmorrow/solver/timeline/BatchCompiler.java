package rigmorrow.solver.timeline;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.work.JobWork;

/** Turns a batch into arrays. Used once per batch, then thrown away. */
final class BatchCompiler {
  private static final int MOST_OPERATORS = 31;
  private static final int MOST_KITS = 31;

  /** Stands for a job that may start at any time; a pinned start may be before the first day. */
  private static final int NO_START = -CompiledBatch.NEVER;

  final Batch batch;
  private final JobFacts facts;
  final Floor floor;
  final PlanClock clock;
  final List<Operator> crew;
  final CrewMask crewMask;
  final List<ShotJob> jobs = new ArrayList<>();
  final List<LeftOut> excluded = new ArrayList<>();
  final Map<Setup, Integer> requests = new LinkedHashMap<>();
  final Map<Long, JobWork> works = new HashMap<>();
  final List<String> places = new ArrayList<>();
  final List<String> units = new ArrayList<>();
  private final List<JobFit> fits = new ArrayList<>();

  int[] work = {};
  int[] request = {};
  int[] release = {};
  int[] leave = {};
  int[] due = {};
  boolean[] must = {};
  int[] weight = {};
  int[] leftOutWeight = {};
  int[] sample = {};
  int sampleCount;
  int[][] rigHours = {};
  int[][] crewHours = {};
  boolean[] twoStepsAtOnce = {};
  int[] ringLimit = {};
  int[] ringTurns = {};
  int[] ringSeconds = {};
  int[] ringMask = {};
  int[] kitUnits = {};
  int[] kitAlign = {};
  int[] kitPeople = {};
  int[] kitMask = {};
  int[] unitPlace = {};
  int[] fetch = {};
  int[] pinRig = {};
  int[] pinPlace = {};
  int[] pinStart = {};
  int[] frozen = {};
  boolean pinned;
  int excludedPins;
  int firstOpening;
  long excludedWeight;

  /**
   * @throws IllegalArgumentException when the crew or the kit is beyond what a bit mask holds
   */
  BatchCompiler(Batch batch, JobFacts facts) {
    this.batch = batch;
    this.facts = facts;
    this.floor = batch.floor();
    this.clock = PlanClock.of(batch);
    this.crew =
        floor.crew().stream()
            .sorted(Comparator.comparingInt((Operator one) -> one.skills().size()))
            .toList();
    this.crewMask = new CrewMask(crew);
    if (crew.size() > MOST_OPERATORS || floor.kits().size() > MOST_KITS) {
      throw new IllegalArgumentException(
          crew.size()
              + " operators and "
              + floor.kits().size()
              + " kinds of kit; accepted: up to "
              + MOST_OPERATORS
              + " and "
              + MOST_KITS);
    }
  }

  CompiledBatch compile() {
    chooseJobs();
    compileHours();
    compileKit();
    compileJobs();
    compileWork();
    compilePins();
    packJobs();
    ruleOutTooLong();
    return new CompiledBatch(this);
  }

  private void chooseJobs() {
    Set<String> heldBack = Set.copyOf(batch.shotList().heldBack());
    for (ShotJob job : batch.shotList().jobs()) {
      JobFit fit = facts.fit(job);
      boolean held = heldBack.contains(job.id());
      if (held || !fit.fitsSomewhere()) {
        excludedWeight += leftOutWeight(job);
      }
      if (fit.needsMeasuring()) {
        String missing = String.join(", ", fit.unmeasured());
        excluded.add(
            new LeftOut(
                job.id(),
                LeftOut.Cause.NEEDS_MEASURING,
                List.of("Not measured: " + missing + ".")));
      } else if (fit.fitsSomewhere() && held) {
        excluded.add(
            new LeftOut(job.id(), LeftOut.Cause.HELD_BACK, List.of("It is left out by hand.")));
      } else if (fit.fitsSomewhere()) {
        jobs.add(job);
        fits.add(fit);
      } else {
        excluded.add(new LeftOut(job.id(), LeftOut.Cause.NO_RIG, FitSentences.noRig(fit)));
      }
    }
  }

  private void compileHours() {
    CompiledHours hours = new CompiledHours(floor, crew, clock);
    rigHours = hours.rigs();
    crewHours = hours.crew();
    firstOpening = hours.firstOpening();
    twoStepsAtOnce = new boolean[floor.rigs().size()];
    for (int rig = 0; rig < twoStepsAtOnce.length; rig++) {
      twoStepsAtOnce[rig] = floor.sharesChangeovers(floor.rigs().get(rig));
    }
    ringLimit = rings(PlateRing::serviceEveryTurns, Integer.MAX_VALUE);
    ringTurns = rings(PlateRing::turnsSinceService, 0);
    ringSeconds = rings(PlateRing::serviceSeconds, 0);
    ringMask = rings(ring -> crewMask.of(ring.skills()), 0);
  }

  private int[] rings(java.util.function.ToIntFunction<PlateRing> figure, int without) {
    return floor.rigs().stream()
        .mapToInt(
            rig -> {
              PlateRing ring = rig.ring();
              return ring == null ? without : figure.applyAsInt(ring);
            })
        .toArray();
  }

  private void compileKit() {
    List<Kit> kits = floor.kits();
    floor.rigs().forEach(rig -> places.add(rig.id()));
    kitUnits = new int[kits.size() + 1];
    List<Integer> unitPlaces = new ArrayList<>();
    for (int kit = 0; kit < kits.size(); kit++) {
      for (KitUnit unit : kits.get(kit).units()) {
        if (!places.contains(unit.place())) {
          places.add(unit.place());
        }
        units.add(unit.id());
        unitPlaces.add(places.indexOf(unit.place()));
      }
      kitUnits[kit + 1] = units.size();
    }
    unitPlace = ints(unitPlaces);
    kitAlign = kits.stream().mapToInt(Kit::alignSeconds).toArray();
    kitPeople = kits.stream().mapToInt(Kit::people).toArray();
    kitMask = kits.stream().mapToInt(kit -> crewMask.of(kit.skills())).toArray();
    int rigs = floor.rigs().size();
    fetch = new int[places.size() * rigs];
    for (int place = 0; place < places.size(); place++) {
      for (int rig = 0; rig < rigs; rig++) {
        fetch[place * rigs + rig] = floor.fetchSeconds(places.get(place), places.get(rig));
      }
    }
  }

  private void compileJobs() {
    int count = jobs.size();
    request = new int[count];
    release = new int[count];
    leave = new int[count];
    due = new int[count];
    must = new boolean[count];
    weight = new int[count];
    leftOutWeight = new int[count];
    Map<String, Long> jobsBySample =
        jobs.stream().collect(Collectors.groupingBy(ShotJob::sample, Collectors.counting()));
    Map<String, Integer> shared = new HashMap<>();
    sample = new int[count];
    for (int j = 0; j < count; j++) {
      ShotJob job = jobs.get(j);
      release[j] = Math.max(0, seconds(job.arrivesAt(), 0));
      leave[j] = seconds(job.leavesAt(), CompiledBatch.NEVER);
      due[j] = job.promise() == null ? CompiledBatch.NEVER : clock.secondsAt(job.promise().dueAt());
      must[j] = job.must();
      weight[j] = job.weight();
      leftOutWeight[j] = leftOutWeight(job);
      sample[j] = -1;
      if (jobsBySample.getOrDefault(job.sample(), 0L) > 1) {
        sample[j] = shared.computeIfAbsent(job.sample(), key -> shared.size());
      }
    }
    sampleCount = shared.size();
  }

  private int leftOutWeight(ShotJob job) {
    return job.weight() * (job.must() ? floor.weights().mustFactor() : 1);
  }

  private int seconds(@Nullable LocalDateTime time, int without) {
    return time == null ? without : clock.secondsAt(time);
  }

  private void compileWork() {
    int rigs = floor.rigs().size();
    work = new int[jobs.size() * rigs * CompiledBatch.WORK_STRIDE];
    for (int j = 0; j < jobs.size(); j++) {
      for (int r = 0; r < rigs; r++) {
        Rig rig = floor.rigs().get(r);
        if (fits.get(j).on(rig.id()).map(RigFit::fits).orElse(false)) {
          JobWork one = facts.work(jobs.get(j), rig);
          works.put((long) j * rigs + r, one);
          request[j] = requests.computeIfAbsent(one.request(), key -> requests.size());
          put(one, (j * rigs + r) * CompiledBatch.WORK_STRIDE);
        }
      }
    }
  }

  private void put(JobWork one, int at) {
    work[at + CompiledBatch.LOAD_SECONDS] = one.load().seconds();
    work[at + CompiledBatch.LOAD_MASK] = crewMask.of(one.load().skills());
    work[at + CompiledBatch.CAPTURE_SECONDS] = one.captureSeconds();
    work[at + CompiledBatch.UNLOAD_SECONDS] = one.unload().seconds();
    work[at + CompiledBatch.UNLOAD_MASK] = crewMask.of(one.unload().skills());
    int kits = 0;
    for (int kit = 0; kit < floor.kits().size(); kit++) {
      kits |= one.kits().contains(floor.kits().get(kit).id()) ? 1 << kit : 0;
    }
    work[at + CompiledBatch.KIT_MASK] = kits;
    work[at + CompiledBatch.TURNS] = one.turns();
    work[at + CompiledBatch.FLAGS] =
        CompiledBatch.FLAG_FITS
            | (one.load().people() == 2 ? CompiledBatch.FLAG_TWO_LOAD : 0)
            | (one.unload().people() == 2 ? CompiledBatch.FLAG_TWO_UNLOAD : 0)
            | (one.attendedCapture() ? CompiledBatch.FLAG_ATTENDED : 0);
  }

  private void compilePins() {
    int rigs = floor.rigs().size();
    pinRig = filled(jobs.size(), -1);
    pinPlace = filled(jobs.size(), -1);
    pinStart = filled(jobs.size(), NO_START);
    frozen = new int[rigs];
    for (Pin pin : batch.shotList().pins()) {
      Optional<ShotJob> job = jobs.stream().filter(one -> one.id().equals(pin.job())).findFirst();
      int rig = places.subList(0, rigs).indexOf(pin.rig());
      if (job.isEmpty() || rig < 0) {
        excludedPins++; // The job is excluded with its reasons, or the reader refused the rig.
        continue;
      }
      int j = jobs.indexOf(job.get());
      pinned = true;
      pinRig[j] = rig;
      pinPlace[j] = pin.place() == null ? -1 : pin.place();
      pinStart[j] = seconds(pin.startsAt(), NO_START);
      if (pin.state() != PinState.PLANNED) {
        frozen[rig] = Math.max(frozen[rig], pinPlace[j] + 1);
      }
      for (int r = 0; r < rigs; r++) {
        if (r != rig) {
          work[(j * rigs + r) * CompiledBatch.WORK_STRIDE + CompiledBatch.FLAGS] &=
              ~CompiledBatch.FLAG_FITS;
        }
      }
    }
  }

  /** Puts what holds for a job on every rig beside what holds for it on one. */
  private void packJobs() {
    int rigs = floor.rigs().size();
    for (int j = 0; j < jobs.size(); j++) {
      for (int r = 0; r < rigs; r++) {
        int at = (j * rigs + r) * CompiledBatch.WORK_STRIDE;
        work[at + CompiledBatch.REQUEST_AT] = request[j] * SetupTable.STRIDE;
        work[at + CompiledBatch.READY] = Math.max(release[j], pinStart[j]);
        work[at + CompiledBatch.DUE] = due[j];
        work[at + CompiledBatch.WEIGHT] = weight[j];
        work[at + CompiledBatch.SAMPLE] = sample[j];
        work[at + CompiledBatch.LEAVE] = leave[j];
        work[at + CompiledBatch.PIN_START] =
            pinStart[j] == NO_START ? CompiledBatch.NEVER : pinStart[j];
        work[at + CompiledBatch.JOB] = j;
        work[at + CompiledBatch.FLAGS] |= must[j] ? CompiledBatch.FLAG_MUST : 0;
      }
    }
  }

  /** A job that is longer than every span of a rig never ends on it. */
  private void ruleOutTooLong() {
    int rigs = floor.rigs().size();
    for (int r = 0; r < rigs; r++) {
      int longest = 0;
      for (int i = 0; i + 2 < rigHours[r].length; i += 2) {
        longest = Math.max(longest, rigHours[r][i + 1] - rigHours[r][i]);
      }
      for (int j = 0; j < jobs.size(); j++) {
        int at = (j * rigs + r) * CompiledBatch.WORK_STRIDE;
        long seconds =
            (long) work[at + CompiledBatch.LOAD_SECONDS]
                + work[at + CompiledBatch.CAPTURE_SECONDS]
                + work[at + CompiledBatch.UNLOAD_SECONDS];
        if (seconds > longest) {
          work[at + CompiledBatch.FLAGS] &= ~CompiledBatch.FLAG_FITS;
        }
      }
    }
  }

  private static int[] filled(int length, int value) {
    int[] array = new int[length];
    Arrays.fill(array, value);
    return array;
  }

  private static int[] ints(List<Integer> list) {
    return list.stream().mapToInt(Integer::intValue).toArray();
  }
}
