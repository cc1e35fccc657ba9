package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.work.ChangeoverModel;

/**
 * The compiled changeover matrix of one rig: from the state it is in, by the setup that is asked
 * for, to the next state and what that takes. A request may leave attributes as they are, so the
 * states are found as they are first reached, and each row is made once. Not safe for two threads.
 */
final class SetupTable {
  static final int STRIDE = 4;
  static final int NEXT = 0;
  static final int ATTENDED = 1;

  /** Tail in the low bits, people from {@link #PEOPLE_SHIFT} up. */
  static final int TAIL_AND_PEOPLE = 2;

  static final int MASK = 3;
  static final int PEOPLE_SHIFT = 28;
  static final int TAIL_BITS = (1 << PEOPLE_SHIFT) - 1;

  private static final int UNKNOWN = -1;

  private final Rig rig;
  private final boolean share;
  private final ChangeoverModel model;
  private final List<Setup> requests;
  private final CrewMask crewMask;
  private final Map<Setup, Integer> stateNumbers = new HashMap<>();
  private final List<Setup> states = new ArrayList<>();
  private int[][] rows = new int[16][];

  /** For two people: the parts of each change, by state and request. */
  private int[][][] parts = new int[16][][];

  /**
   * @param share true when two people share each change
   */
  SetupTable(
      Rig rig, boolean share, ChangeoverModel model, List<Setup> requests, CrewMask crewMask) {
    this.rig = rig;
    this.share = share;
    this.model = model;
    this.requests = requests;
    this.crewMask = crewMask;
    number(rig.initialSetup());
  }

  /**
   * The numbers of one change, from {@code at} in the row that is returned.
   *
   * @param at number of the request times {@link #STRIDE}
   */
  int[] row(int state, int at) {
    int[] row = rows[state];
    return row[at + NEXT] == UNKNOWN ? fill(state, at / STRIDE) : row;
  }

  /** The steps of one change, for the run sheet. */
  List<ChangeoverStep> steps(int state, int request) {
    return model.steps(rig, states.get(state), requests.get(request));
  }

  /** Attended seconds, unattended seconds and people of each step of one change, one by one. */
  int[] parts(int state, int request) {
    int[] known = parts[state][request];
    if (known == null) {
      List<ChangeoverStep> steps = steps(state, request);
      known = new int[3 * steps.size()];
      for (int i = 0; i < steps.size(); i++) {
        known[3 * i] = steps.get(i).attendedSeconds();
        known[3 * i + 1] = steps.get(i).unattendedSeconds();
        known[3 * i + 2] = steps.get(i).people();
      }
      parts[state][request] = known;
    }
    return known;
  }

  private int[] fill(int state, int request) {
    Setup from = states.get(state);
    List<ChangeoverStep> steps = model.steps(rig, from, requests.get(request));
    Changeover changeover = Changeover.of(steps, share);
    int next = number(from.after(requests.get(request)));
    int[] row = rows[state];
    int at = request * STRIDE;
    row[at + ATTENDED] = changeover.attendedSeconds();
    row[at + TAIL_AND_PEOPLE] =
        Math.min(TAIL_BITS, changeover.tailSeconds()) | changeover.people() << PEOPLE_SHIFT;
    row[at + MASK] = crewMask.of(changeover.skills());
    row[at + NEXT] = next;
    return row;
  }

  private int number(Setup state) {
    Integer known = stateNumbers.get(state);
    if (known != null) {
      return known;
    }
    int number = states.size();
    states.add(state);
    stateNumbers.put(state, number);
    if (number == rows.length) {
      rows = Arrays.copyOf(rows, 2 * rows.length);
      parts = Arrays.copyOf(parts, 2 * parts.length);
    }
    rows[number] = new int[Math.max(1, requests.size()) * STRIDE];
    Arrays.fill(rows[number], UNKNOWN);
    if (share) {
      parts[number] = new int[requests.size()][];
    }
    return number;
  }
}
