package rigmorrow.solver.timeline;

/**
 * A changeover that two people share: each step goes to the hand that is free first, a step for two
 * to both. The same rule as {@link rigmorrow.model.setup.Changeover#of}, on numbers, for the steps
 * that are only known while decoding.
 */
final class TwoHands {
  private int first;
  private int second;
  private int tailEnd;
  private int steps;
  private int people;

  void open() {
    first = 0;
    second = 0;
    tailEnd = 0;
    steps = 0;
    people = 1;
  }

  void add(int attended, int unattended, int stepPeople) {
    int end;
    if (stepPeople == 2) {
      end = Math.max(first, second) + attended;
      first = end;
      second = end;
    } else if (second < first) {
      end = second + attended;
      second = end;
    } else {
      end = first + attended;
      first = end;
    }
    if (unattended > 0) {
      tailEnd = Math.max(tailEnd, end + unattended);
    }
    steps++;
    people = Math.max(people, stepPeople);
  }

  int attendedSeconds() {
    return Math.max(first, second);
  }

  int tailSeconds() {
    return Math.max(0, tailEnd - attendedSeconds());
  }

  /** One step is done by whom it takes; more are shared by two. */
  int people() {
    return steps > 1 ? 2 : people;
  }
}
