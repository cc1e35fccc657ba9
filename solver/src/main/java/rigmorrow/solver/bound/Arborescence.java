package rigmorrow.solver.bound;

import java.util.Arrays;

/**
 * The cheapest way to reach every node from node 0: one arc into each other node, so that all hang
 * together. Found by contracting circles (Chu and Liu 1965, Edmonds 1967) on a full matrix, in
 * whole numbers, so that nothing is lost to rounding.
 *
 * <p>Each contraction takes the same amount off every arc into a circle, and every way to reach its
 * nodes has such an arc; so the arcs chosen never cost more than the cheapest way, also where the
 * contracting is broken off. The cost of the arc into a node is made of such amounts, each taken
 * for a set of nodes that holds it; reaching only some nodes costs at least the amounts of the sets
 * they lie in, and so at least the whole less the arcs into all the other nodes, where those are
 * above 0.
 */
final class Arborescence {
  /** Stands for an arc that is not there; sums of costs stay far below. */
  static final long NONE = Long.MAX_VALUE / 4;

  private Arborescence() {}

  /**
   * The node before each node; that of node 0 means nothing.
   *
   * @param cost of the arc from a node to a node; {@link #NONE} for none. Every node has an arc
   *     from node 0.
   * @param levels how many contractions within each other there may be, as each takes a matrix;
   *     circles that are left then stay closed: no way to reach every node, but below every such
   *     way
   */
  static int[] of(long[][] cost, int levels) {
    int[] before = cheapest(cost);
    int[] part = new int[before.length];
    int parts = contract(before, part);
    if (parts == before.length || levels == 0) {
      return before;
    }
    long[][] less = new long[parts][parts];
    int[][] tail = new int[parts][parts];
    int[][] head = new int[parts][parts];
    for (long[] row : less) {
      Arrays.fill(row, NONE);
    }
    for (int from = 0; from < before.length; from++) {
      for (int to = 1; to < before.length; to++) {
        int first = part[from];
        int second = part[to];
        long saved = cost[from][to] == NONE ? NONE : cost[from][to] - cost[before[to]][to];
        if (first != second && saved < less[first][second]) {
          less[first][second] = saved;
          tail[first][second] = from;
          head[first][second] = to;
        }
      }
    }
    int[] outer = of(less, levels - 1);
    for (int node = 1; node < parts; node++) {
      before[head[outer[node]][node]] = tail[outer[node]][node];
    }
    return before;
  }

  private static int[] cheapest(long[][] cost) {
    int[] before = new int[cost.length];
    for (int from = 1; from < cost.length; from++) {
      for (int to = 1; to < cost.length; to++) {
        if (from != to && cost[from][to] < cost[before[to]][to]) {
          before[to] = from;
        }
      }
    }
    return before;
  }

  /**
   * Numbers the nodes so that those of one circle have one number and all others one each.
   *
   * @return how many numbers there are
   */
  private static int contract(int[] before, int[] part) {
    int parts = 1;
    int[] walk = new int[before.length];
    for (int start = 1; start < before.length; start++) {
      int node = start;
      while (node != 0 && walk[node] == 0) {
        walk[node] = start;
        node = before[node];
      }
      if (node != 0 && walk[node] == start && part[node] == 0) {
        for (int on = node; part[on] == 0; on = before[on]) {
          part[on] = parts;
        }
        parts++;
      }
    }
    for (int node = 1; node < part.length; node++) {
      if (part[node] == 0) {
        part[node] = parts++;
      }
    }
    return parts;
  }
}
