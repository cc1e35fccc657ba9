package rigmorrow.solver.bound;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import rigmorrow.solver.timeline.BatchFacts;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * The jobs by kind, and what leads from kind to kind: jobs of a kind ask for the same setup and can
 * go on the same rigs, so nothing changes between two of them.
 */
final class SetupKinds {
  /** Stands for two kinds that share no rig. */
  static final int NONE = Integer.MAX_VALUE;

  private record Kind(int request, BitSet rigs) {}

  private final int[] kindOf;
  private final List<Kind> kinds = new ArrayList<>();
  private final List<Integer> sizes = new ArrayList<>();
  private final SetupCosts costs;
  private final int[][] values;
  private final int[][] initial;
  private final int[][] entry;

  /**
   * @param rigsOf what rigs can take a job
   */
  SetupKinds(CompiledBatch batch, BatchFacts facts, IntFunction<BitSet> rigsOf) {
    Map<Kind, Integer> numbers = new LinkedHashMap<>();
    this.costs = new SetupCosts(facts);
    this.kindOf = new int[batch.jobCount()];
    for (int job = 0; job < kindOf.length; job++) {
      Kind kind = new Kind(batch.request(job), rigsOf.apply(job));
      kindOf[job] = -1;
      if (!kind.rigs.isEmpty()) {
        kindOf[job] = numbers.computeIfAbsent(kind, key -> numbers.size());
        if (kindOf[job] == kinds.size()) {
          kinds.add(kind);
          sizes.add(0);
        }
        sizes.set(kindOf[job], sizes.get(kindOf[job]) + 1);
      }
    }
    this.values =
        kinds.stream().map(kind -> costs.values(facts.setup(kind.request))).toArray(int[][]::new);
    this.initial = new int[batch.rigCount()][];
    for (int rig = 0; rig < initial.length; rig++) {
      initial[rig] = costs.values(facts.rig(rig).initialSetup());
    }
    this.entry = entries();
  }

  /** The least seconds into each kind on each rig, from its start or from any other setup. */
  private int[][] entries() {
    int[][] least = new int[kinds.size()][initial.length];
    for (int to = 0; to < least.length; to++) {
      BitSet rigs = kinds.get(to).rigs;
      for (int rig = rigs.nextSetBit(0); rig >= 0; rig = rigs.nextSetBit(rig + 1)) {
        least[to][rig] = secondsAsFirst(rig, to);
        for (int from = 0; from < least.length && least[to][rig] > 0; from++) {
          boolean other = kinds.get(from).request != kinds.get(to).request;
          if (other && kinds.get(from).rigs.get(rig)) {
            least[to][rig] = Math.min(least[to][rig], costs.seconds(rig, values[from], values[to]));
          }
        }
      }
    }
    return least;
  }

  /** The least hands-on seconds before the first job of a job's kind on a rig. */
  int entrySeconds(int job, int rig) {
    return kindOf[job] < 0 ? 0 : entry[kindOf[job]][rig];
  }

  /** How many kinds there are. */
  int count() {
    return kinds.size();
  }

  /** Number of jobs of a kind. */
  int size(int kind) {
    return sizes.get(kind);
  }

  /** Kind of a job, or -1 for a job that no rig can take. */
  int of(int job) {
    return kindOf[job];
  }

  /** The least hands-on seconds from one kind to another on any rig, or {@link #NONE}. */
  int seconds(int from, int to) {
    int least = NONE;
    BitSet others = kinds.get(to).rigs;
    for (int rig = others.nextSetBit(0); rig >= 0; rig = others.nextSetBit(rig + 1)) {
      if (kinds.get(from).rigs.get(rig)) {
        least = Math.min(least, costs.seconds(rig, values[from], values[to]));
      }
    }
    return least;
  }

  /** The least hands-on seconds of a kind as the first on a rig, or {@link #NONE}. */
  int secondsAsFirst(int rig, int kind) {
    return kinds.get(kind).rigs.get(rig) ? costs.seconds(rig, initial[rig], values[kind]) : NONE;
  }
}
