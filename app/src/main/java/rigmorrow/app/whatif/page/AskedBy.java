package rigmorrow.app.whatif.page;

import rigmorrow.app.whatif.Assumptions;

/** How a comparison was asked for, so that its report can say how to ask for more. */
public enum AskedBy {
  /** The command {@code whatif}. */
  COMMAND(Assumptions.OTHER_DEMANDS),
  /** The board. */
  BOARD("plan other demands too: the board asks for them under Compare");

  private final String demands;

  AskedBy(String demands) {
    this.demands = demands;
  }

  /** How other demands are planned, as a request. */
  String demands() {
    return demands;
  }
}
