package rigmorrow.data.demo;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;

/** What can be set on a rig, in the order in which a changeover does it. */
final class DemoSetups {
  static final String ARM = "arm";
  static final String FRAME = "frame";
  static final String BACKGROUND = "background";
  static final String LIGHTING = "lighting";
  static final String SURFACE = "surface";
  static final String CAMERA = "camera";
  static final String SUSPENSION = "suspension";
  static final String POWER = "power";
  static final String FLAGS = "flags";

  static final String MATTE = "matte";
  static final String GLOSSY = "glossy";
  static final String CLEAR = "clear";

  private DemoSetups() {}

  static List<SetupAttribute> attributes() {
    return Stream.of(aroundTheItem(), lightAndCamera(), atTheItem()).flatMap(List::stream).toList();
  }

  private static List<SetupAttribute> aroundTheItem() {
    return List.of(
        attribute(ARM, "Camera arm", value("home", "own arm"), value("docked", "docking arm")),
        attribute(
            FRAME,
            "Overhead frame",
            value("parked", "parked"),
            cautious("over-plate", "over the plate", "Mind your head under the frame.")),
        attribute(
            BACKGROUND,
            "Background",
            // Light from behind bleeds round the edges of what lets it through or mirrors it
            // (common practice).
            new AttributeValue("white-direct", "white, lit directly", null, Set.of(CLEAR), null),
            value("white-reflected", "white, by reflection"),
            value("grey", "grey"),
            value("black", "black")));
  }

  private static List<SetupAttribute> lightAndCamera() {
    return List.of(
        attribute(
            LIGHTING,
            "Lighting",
            value("strobe-soft", "strobes, large boxes"),
            value("strobe-crisp", "strobes, reflectors"),
            value("continuous-soft", "continuous, large panels"),
            cautious("continuous-low", "continuous, small lamps", "Lamps stay hot.")),
        attribute(
            SURFACE,
            "Plate surface",
            surface("glass", "bare glass", 0.40),
            surface("acrylic", "white acrylic", 0.35),
            surface("mat", "rubber mat", 0.80),
            surface("deck", "platform deck", 0.60)),
        attribute(
            CAMERA,
            "Camera and lens",
            value("a-50", "body A, 50 mm"),
            value("a-100", "body A, 100 mm"),
            value("b-70", "body B, 70 mm"),
            value("b-macro", "body B, macro")));
  }

  private static List<SetupAttribute> atTheItem() {
    return List.of(
        attribute(
            SUSPENSION,
            "Suspension",
            value("none", "none"),
            value("strings", "strings"),
            value("hanger", "hanger bar")),
        attribute(
            POWER,
            "Socket in the turning part",
            value("off", "off"),
            cautious(
                "on",
                "ready",
                "The socket is mains: qualified person only, switched off and unplugged before"
                    + " touching; switch on only when the item is connected.")),
        attribute(
            FLAGS,
            "Dark flags",
            value("none", "none"),
            value("sides", "beside the item"),
            value("sides-under", "beside the item and under the plate")));
  }

  /** What an item adds: the later rule is the stronger. */
  static List<ItemSetupRule> itemSetups() {
    return List.of(
        new ItemSetupRule(MATTE, null, null, setup(FLAGS, "none")),
        new ItemSetupRule(GLOSSY, null, null, setup(FLAGS, "sides")),
        new ItemSetupRule(CLEAR, null, null, setup(FLAGS, "sides-under")),
        new ItemSetupRule(null, false, null, setup(SUSPENSION, "none")),
        new ItemSetupRule(null, true, null, setup(SUSPENSION, "strings", FRAME, "over-plate")),
        new ItemSetupRule(null, null, true, setup(POWER, "on")),
        new ItemSetupRule(null, null, false, setup(POWER, "off")));
  }

  /** A setup of attribute and value in turn. */
  static Setup setup(String... attributesAndValues) {
    Map<String, String> values = new TreeMap<>();
    for (int at = 0; at < attributesAndValues.length; at += 2) {
      values.put(attributesAndValues[at], attributesAndValues[at + 1]);
    }
    return new Setup(values);
  }

  private static SetupAttribute attribute(String id, String label, AttributeValue... values) {
    return new SetupAttribute(id, label, List.of(values));
  }

  private static AttributeValue value(String id, String label) {
    return new AttributeValue(id, label, null, Set.of(), null);
  }

  private static AttributeValue cautious(String id, String label, String caution) {
    return new AttributeValue(id, label, null, Set.of(), caution);
  }

  private static AttributeValue surface(String id, String label, double friction) {
    return new AttributeValue(id, label, friction, Set.of(), null);
  }
}
