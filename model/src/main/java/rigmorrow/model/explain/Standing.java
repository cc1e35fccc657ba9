package rigmorrow.model.explain;

/** How one plan stands against another in the order in which plans are judged. */
public enum Standing {
  /** Costs less on the first level on which they differ. */
  BETTER,
  /** Costs the same on every level. */
  EQUAL,
  /** Costs more on the first level on which they differ. */
  WORSE
}
