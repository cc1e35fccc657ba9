package rigmorrow.model.shot;

/** How an item's height comes to be known when it is aligned. */
public enum HeightSource {
  /** From the shot list: the camera arm drives there by itself. */
  LIST,
  /** From a dimensioning device: as good as the list. */
  DEVICE,
  /** Measured by hand at the rig: takes more time. */
  HAND
}
