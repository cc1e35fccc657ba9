package rigmorrow.model.shot;

/** How far a pinned job is. */
public enum PinState {
  /** Not begun. */
  PLANNED,
  /** Begun; it cannot be moved. */
  RUNNING,
  /** Finished; it cannot be moved. */
  DONE
}
