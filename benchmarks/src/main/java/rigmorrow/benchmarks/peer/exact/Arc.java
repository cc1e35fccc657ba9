package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.Literal;

/**
 * One job straight after another on a rig.
 *
 * @param rig number of the rig
 * @param from job before, or {@link SetupCosts#INITIAL} for the rig as it is at first
 * @param to job after
 * @param taken true when it is so
 * @param cost of the changeover between them
 */
record Arc(int rig, int from, int to, Literal taken, SetupCosts.Cost cost) {}
