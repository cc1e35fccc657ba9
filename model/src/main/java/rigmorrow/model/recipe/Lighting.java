package rigmorrow.model.recipe;

/** Which kind of light a recipe asks for. */
public enum Lighting {
  /** Flash: has to recycle between pictures. */
  STROBE,
  /** Light that is always on. */
  CONTINUOUS,
  /** Whatever the rig has; strobes when it has both. */
  EITHER
}
