package rigmorrow.model.fit;

import java.util.Locale;

/** What a rig is asked when it is to take a job. */
public enum FitRule {
  PLATE_PAYLOAD("item and holder are light enough for the plate"),
  HANGING_PAYLOAD("what hangs is light enough for the rig's structure"),
  BASE_ON_PLATE("the diagonal of the base fits the plate less its edge margin"),
  CLEAR_CIRCLE("the whole item turns without touching the rig"),
  ITEM_HEIGHT("the item is not too tall"),
  CAMERA_HEIGHT("the camera reaches the item's mid-height"),
  ELEVATION("the camera arm reaches the recipe's elevations"),
  EQUIPMENT("the equipment needed is fitted or in kit, and strong enough"),
  LIGHTING("the rig has the kind of light"),
  BACKGROUND("the background is wide enough"),
  SETUP_VALUE("the rig can be set up that way"),
  FINISH("the setup suits the item's finish"),
  STABILITY("the item stands safely at the slowest turn or has a holder"),
  CREW("the crew has the people and skills");

  private final String sentence;

  FitRule(String sentence) {
    this.sentence = sentence;
  }

  /** What holds when the rule is kept. */
  public String sentence() {
    return sentence;
  }

  /** The rule's name in small letters, such as "plate payload". */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
