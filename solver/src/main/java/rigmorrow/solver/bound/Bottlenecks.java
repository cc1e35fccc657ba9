package rigmorrow.solver.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * Finds what a batch may run short of: each group of rigs outside of which some jobs cannot go, the
 * people with some skill, each kit, each sample that several jobs share.
 */
final class Bottlenecks {
  private static final int MOST_RIG_GROUPS = 1024;

  private final CompiledBatch batch;
  private final BatchFacts facts;
  private final SetupKinds kinds;
  private final SetupBound setups;
  private final BitSet[] rigsOf;
  private final int[] anyRigOpen;
  private final List<Bottleneck> found = new ArrayList<>();

  /** What one job takes on one rig. */
  private interface Share {
    long of(int job, int rig);
  }

  Bottlenecks(
      CompiledBatch batch, BatchFacts facts, Alone alone, SetupKinds kinds, SetupBound setups) {
    this.batch = batch;
    this.facts = facts;
    this.kinds = kinds;
    this.setups = setups;
    this.rigsOf = new BitSet[batch.jobCount()];
    for (int job = 0; job < rigsOf.length; job++) {
      rigsOf[job] = alone.rigs(job);
    }
    this.anyRigOpen = new OpenTime(rigHours(allRigs())).anyThere();
  }

  /** All of them. */
  List<Bottleneck> all() {
    rigGroups().forEach(this::addRigs);
    addCrew();
    addKits();
    addSamples();
    return List.copyOf(found);
  }

  private BitSet allRigs() {
    BitSet all = new BitSet();
    all.set(0, batch.rigCount());
    return all;
  }

  /**
   * Every union of the sets of rigs that jobs can go on; the first so many where there are more.
   */
  private Set<BitSet> rigGroups() {
    Set<BitSet> groups = new LinkedHashSet<>();
    groups.add(allRigs());
    for (BitSet rigs : new LinkedHashSet<>(List.of(rigsOf))) {
      List<BitSet> unions = new ArrayList<>(List.of(rigs));
      for (BitSet group : groups) {
        BitSet union = (BitSet) group.clone();
        union.or(rigs);
        unions.add(union);
      }
      unions.stream().filter(one -> groups.size() < MOST_RIG_GROUPS).forEach(groups::add);
    }
    groups.removeIf(BitSet::isEmpty);
    return groups;
  }

  private List<int[]> rigHours(BitSet rigs) {
    return rigs.stream().mapToObj(facts::rigHours).toList();
  }

  private void addRigs(BitSet group) {
    int[] jobs = jobs(job -> within(rigsOf[job], group));
    long[] captured =
        least(jobs, (job, rig) -> facts.loadSeconds(job, rig) + facts.captureSeconds(job, rig));
    long[] whole = least(jobs, batch::plainSeconds);
    OpenTime time = new OpenTime(rigHours(group));
    boolean all = group.cardinality() == batch.rigCount();
    add(time, group.cardinality(), jobs, captured, whole, all);
  }

  private static boolean within(BitSet some, BitSet group) {
    BitSet outside = (BitSet) some.clone();
    outside.andNot(group);
    return outside.isEmpty();
  }

  /**
   * Hands-on work is done while a rig is open, by whoever is there; with skills, by who has them.
   */
  private void addCrew() {
    int everybody = (int) ((1L << facts.operatorCount()) - 1);
    Set<Integer> groups = new LinkedHashSet<>(List.of(everybody));
    for (int job = 0; job < batch.jobCount(); job++) {
      for (int rig = rigsOf[job].nextSetBit(0); rig >= 0; rig = rigsOf[job].nextSetBit(rig + 1)) {
        groups.add(facts.loadLeads(job, rig));
        groups.add(facts.unloadLeads(job, rig));
      }
    }
    int[] jobs = jobs(job -> !rigsOf[job].isEmpty());
    for (int group : groups) {
      List<int[]> hours = new ArrayList<>();
      for (int rest = group; rest != 0; rest &= rest - 1) {
        int[] atWork = facts.crewHours(Integer.numberOfTrailingZeros(rest));
        hours.add(OpenTime.both(atWork, anyRigOpen));
      }
      boolean all = group == everybody;
      long[] captured = least(jobs, (job, rig) -> untilCaptured(job, rig, group, all));
      long[] whole =
          least(
              jobs,
              (job, rig) -> untilCaptured(job, rig, group, all) + unload(job, rig, group, all));
      add(new OpenTime(hours), batch.rigCount(), jobs, captured, whole, all);
    }
  }

  /** Of two people only the one in charge must have the skill; of everybody, both count. */
  private long untilCaptured(int job, int rig, int group, boolean all) {
    if ((facts.loadLeads(job, rig) & ~group) != 0) {
      return 0;
    }
    long seconds = facts.loadSeconds(job, rig);
    seconds += facts.attended(job, rig) ? facts.captureSeconds(job, rig) : 0;
    return all ? seconds * facts.loadPeople(job, rig) : seconds;
  }

  private long unload(int job, int rig, int group, boolean all) {
    if ((facts.unloadLeads(job, rig) & ~group) != 0) {
      return 0;
    }
    long seconds = facts.unloadSeconds(job, rig);
    return all ? seconds * facts.unloadPeople(job, rig) : seconds;
  }

  /** A unit is held from the start of a job to its end, while the job's rig is open. */
  private void addKits() {
    for (int kit = 0; kit < facts.kitCount(); kit++) {
      int bit = 1 << kit;
      int[] jobs =
          jobs(
              job ->
                  !rigsOf[job].isEmpty()
                      && rigsOf[job].stream().allMatch(rig -> (facts.kits(job, rig) & bit) != 0));
      addHeld(facts.kitUnits(kit), jobs);
    }
  }

  private void addSamples() {
    List<List<Integer>> jobs = new ArrayList<>();
    IntStream.range(0, facts.sampleCount()).forEach(sample -> jobs.add(new ArrayList<>()));
    for (int job = 0; job < batch.jobCount(); job++) {
      if (facts.sample(job) >= 0 && !rigsOf[job].isEmpty()) {
        jobs.get(facts.sample(job)).add(job);
      }
    }
    jobs.forEach(some -> addHeld(1, some.stream().mapToInt(Integer::intValue).toArray()));
  }

  private void addHeld(int units, int[] jobs) {
    List<int[]> hours = new ArrayList<>();
    for (int unit = 0; unit < units; unit++) {
      hours.add(anyRigOpen);
    }
    long[] captured =
        least(jobs, (job, rig) -> facts.loadSeconds(job, rig) + facts.captureSeconds(job, rig));
    add(new OpenTime(hours), units, jobs, captured, least(jobs, batch::plainSeconds), false);
  }

  private void add(
      OpenTime time, int lanes, int[] jobs, long[] captured, long[] whole, boolean changeovers) {
    if (jobs.length == 0) {
      return;
    }
    long[] entry = new long[jobs.length];
    for (int i = 0; changeovers && i < jobs.length; i++) {
      int kind = kinds.of(jobs[i]);
      entry[i] = 1 + setups.partsOf(kind) / ((long) SetupBound.PARTS * kinds.size(kind));
    }
    long least = changeovers ? setups.parts() / SetupBound.PARTS : 0;
    found.add(new Bottleneck(time, lanes, jobs, captured, whole, entry, least));
  }

  private int[] jobs(IntPredicate which) {
    return IntStream.range(0, batch.jobCount())
        .filter(job -> !rigsOf[job].isEmpty())
        .filter(which)
        .toArray();
  }

  private long[] least(int[] jobs, Share share) {
    long[] least = new long[jobs.length];
    for (int i = 0; i < jobs.length; i++) {
      int job = jobs[i];
      least[i] = rigsOf[job].stream().mapToLong(rig -> share.of(job, rig)).min().orElse(0);
    }
    return least;
  }
}
