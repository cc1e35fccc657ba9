package rigmorrow.solver.bound;

import java.util.Arrays;

/**
 * A bound on the hands-on seconds of all setup changes.
 *
 * <p>In a plan, draw an arc from each job to the next on its rig where the kind changes, and one
 * from each rig to its first kind. Then (a) every kind that is done hangs on some rig by arcs, (b)
 * a kind is left at most as often as it is entered, and a rig's start at most once, (c) a kind is
 * entered at most once for each of its jobs. Each arc costs at least what {@link SetupKinds} says.
 *
 * <p>Prices of 0 or more on (b) turn it into costs: leaving a node costs its price more, entering a
 * kind its price less, and the starts' prices are taken off at the end. Whatever the prices, no
 * plan costs less than the cheapest arcs that satisfy (a) and (c) at these costs: an {@link
 * Arborescence}, and for each kind as many more arcs as it has further jobs where the cheapest is
 * below 0. Good prices are searched by the subgradient method (Held and Karp 1971, Polyak 1969) in
 * whole numbers.
 *
 * <p>When kinds are left out, what the others cost is at least this less the arcs into those left
 * out; see {@link Arborescence}.
 */
final class SetupBound {
  /** Prices are in this part of a second. */
  static final int PARTS = 16;

  private static final int MOST_ROUNDS = 400;

  /** Cells of a matrix that may be looked at in all rounds, and in the contractions of a round. */
  private static final long CELLS = 12_000_000;

  private static final long CELLS_CONTRACTED = 6_000_000;

  /** Rounds without a better bound after which the steps are made smaller. */
  private static final int PATIENCE = 15;

  private static final double SMALLER = 0.6;

  /** How far above the best bound the steps aim. */
  private static final double AIM = 1.03;

  private final SetupKinds kinds;
  private final int count;
  private final int levels;
  private final long[][] between;
  private final long[][] first;
  private final long[] price;
  private final long[] startPrice;

  private final long[][] cost;
  private final int[] firstRig;
  private final int[] excess;
  private long value;
  private int[] before = {};

  private long best;
  private long[] bestEntry;

  SetupBound(SetupKinds kinds, int rigs) {
    this.kinds = kinds;
    this.count = kinds.count();
    this.levels =
        (int) Math.max(4, Math.min(40, CELLS_CONTRACTED / Math.max(1, (long) count * count)));
    this.between = new long[count][count];
    this.first = new long[rigs][count];
    for (int to = 0; to < count; to++) {
      for (int from = 0; from < count; from++) {
        between[from][to] = from == to ? Arborescence.NONE : parts(kinds.seconds(from, to));
      }
      for (int rig = 0; rig < rigs; rig++) {
        first[rig][to] = parts(kinds.secondsAsFirst(rig, to));
      }
    }
    this.price = new long[count];
    this.startPrice = new long[rigs];
    this.cost = new long[count + 1][count + 1];
    this.firstRig = new int[count];
    this.excess = new int[count + rigs];
    this.bestEntry = new long[count];
    search();
  }

  private static long parts(int seconds) {
    return seconds == SetupKinds.NONE ? Arborescence.NONE : (long) seconds * PARTS;
  }

  /** The bound where every kind is done, in parts of a second. */
  long parts() {
    return best;
  }

  /** What leaving a kind out takes off the bound at most, in parts of a second. */
  long partsOf(int kind) {
    return Math.max(0, bestEntry[kind]);
  }

  private void search() {
    if (count == 0) {
      return;
    }
    long rounds = Math.max(10, Math.min(MOST_ROUNDS, CELLS / ((long) count * count)));
    double step = 1;
    int patience = PATIENCE;
    for (int round = 0; round < rounds; round++) {
      putCosts();
      weigh();
      if (round == 0 || value > best) {
        best = value;
        Arrays.setAll(bestEntry, kind -> cost[before[kind + 1]][kind + 1]);
        patience = PATIENCE;
      } else if (--patience == 0) {
        step *= SMALLER;
        patience = PATIENCE;
      }
      if (!movePrices(step)) {
        return;
      }
    }
  }

  /** Node 0 stands for all rigs' starts; kind k is node k + 1. */
  private void putCosts() {
    for (int to = 0; to < count; to++) {
      cost[0][to + 1] = Arborescence.NONE;
      for (int rig = 0; rig < first.length; rig++) {
        long one = first[rig][to] + startPrice[rig] - price[to];
        if (first[rig][to] < Arborescence.NONE && one < cost[0][to + 1]) {
          cost[0][to + 1] = one;
          firstRig[to] = rig;
        }
      }
    }
    for (int from = 0; from < count; from++) {
      for (int to = 0; to < count; to++) {
        cost[from + 1][to + 1] =
            between[from][to] == Arborescence.NONE
                ? Arborescence.NONE
                : between[from][to] + price[from] - price[to];
      }
    }
  }

  private void weigh() {
    Arrays.fill(excess, 0);
    before = Arborescence.of(cost, levels);
    value = 0;
    for (int kind = 0; kind < count; kind++) {
      take(before[kind + 1], kind, 1);
      int more = kinds.size(kind) - 1;
      int cheapest = more == 0 ? 0 : cheapestInto(kind);
      if (more > 0 && cost[cheapest][kind + 1] < 0) {
        take(cheapest, kind, more);
      }
    }
    for (int rig = 0; rig < startPrice.length; rig++) {
      value -= startPrice[rig];
      excess[count + rig]--;
    }
  }

  private int cheapestInto(int kind) {
    int cheapest = 0;
    for (int node = 1; node <= count; node++) {
      cheapest = cost[node][kind + 1] < cost[cheapest][kind + 1] ? node : cheapest;
    }
    return cheapest;
  }

  private void take(int node, int kind, int times) {
    value += cost[node][kind + 1] * times;
    excess[kind] -= times;
    excess[node == 0 ? count + firstRig[kind] : node - 1] += times;
  }

  /** Dearer where too much leaves, cheaper where too little does; false when nothing is to move. */
  private boolean movePrices(double step) {
    double square = 0;
    for (int node = 0; node < excess.length; node++) {
      if (excess[node] > 0 || priceAt(node) > 0) {
        square += (double) excess[node] * excess[node];
      }
    }
    if (square == 0) {
      return false;
    }
    double aim = Math.max(AIM * best, best + 60.0 * PARTS);
    double length = step * (aim - value) / square;
    for (int node = 0; node < excess.length; node++) {
      long moved = Math.max(0, priceAt(node) + Math.round(length * excess[node]));
      if (node < count) {
        price[node] = moved;
      } else {
        startPrice[node - count] = moved;
      }
    }
    return true;
  }

  private long priceAt(int node) {
    return node < count ? price[node] : startPrice[node - count];
  }
}
