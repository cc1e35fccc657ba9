package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.Literal;

/**
 * A step of a changeover that depends on more than the two jobs it lies between.
 *
 * @param job it is done for
 * @param rig it is done on
 * @param done true when it must be
 * @param seconds hands-on
 * @param warmSeconds from its start until the rig is warm; not less than hands-on
 * @param people 1 or 2
 * @param lead operators who may be in charge, as bits
 * @param first true for kit and ring, which come before the setup
 */
record Extra(
    int job,
    int rig,
    Literal done,
    int seconds,
    int warmSeconds,
    int people,
    int lead,
    boolean first) {}
