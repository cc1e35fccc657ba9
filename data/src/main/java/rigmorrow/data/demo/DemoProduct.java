package rigmorrow.data.demo;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigmorrow.model.setup.Setup;

/** Kinds of invented products, with the ranges their sizes are drawn from. */
enum DemoProduct {
  HANDBAG(
      "Handbag",
      sizes(240, 380, 110, 170, 220, 320, 0.5, 1.4),
      List.of(DemoSetups.MATTE, DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.SPIN, DemoRecipes.STILLS, DemoRecipes.LOOK, DemoRecipes.SPIN_3),
      DemoSetups.setup("surface", "acrylic")),
  STRAP_BAG(
      "Shoulder bag",
      sizes(230, 360, 100, 160, 200, 300, 0.4, 1.2),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.SPIN, DemoRecipes.STILLS),
      DemoSetups.setup("surface", "acrylic"),
      Trait.STRAPS_HANG),
  HUNG_BAG(
      "Evening bag",
      sizes(180, 260, 60, 110, 350, 600, 0.3, 0.8),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.HUNG),
      Setup.ANY,
      Trait.HANGS),
  BOTTLE(
      "Carafe",
      sizes(90, 130, 90, 130, 220, 300, 0.7, 1.5),
      List.of(DemoSetups.CLEAR),
      List.of(DemoRecipes.STILLS, DemoRecipes.SPIN_TURNING),
      DemoSetups.setup("surface", "glass", "background", "black"),
      Trait.GLASS),
  TALL_BOTTLE(
      "Tall bottle",
      sizes(58, 68, 58, 68, 360, 420, 0.9, 1.6),
      List.of(DemoSetups.CLEAR, DemoSetups.GLOSSY),
      List.of(DemoRecipes.SPIN_TURNING, DemoRecipes.STILLS),
      DemoSetups.setup("surface", "glass", "background", "grey"),
      Trait.GLASS,
      Trait.OFF_CENTRE),
  LAMP(
      "Table lamp",
      sizes(180, 280, 180, 280, 320, 520, 1.0, 2.6),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.LAMP, DemoRecipes.SPIN, DemoRecipes.LAMP),
      DemoSetups.setup("surface", "mat"),
      Trait.POWERED),
  PENDANT(
      "Pendant lamp",
      sizes(200, 320, 200, 320, 500, 800, 0.8, 2.4),
      List.of(DemoSetups.MATTE),
      List.of(DemoRecipes.LAMP),
      Setup.ANY,
      Trait.POWERED,
      Trait.HANGS),
  SHOES(
      "Shoes",
      sizes(270, 310, 180, 220, 90, 140, 0.5, 1.1),
      List.of(DemoSetups.MATTE, DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.SPIN_3, DemoRecipes.STILLS, DemoRecipes.TOP, DemoRecipes.SPIN),
      DemoSetups.setup("surface", "acrylic")),
  BOOK(
      "Book",
      sizes(180, 280, 140, 220, 15, 50, 0.3, 1.5),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.STILLS, DemoRecipes.SPIN_3, DemoRecipes.TOP),
      DemoSetups.setup("surface", "acrylic")),
  CHAIR(
      "Chair",
      sizes(440, 520, 420, 500, 760, 860, 4.0, 7.5),
      List.of(DemoSetups.MATTE),
      List.of(DemoRecipes.LARGE_SPIN, DemoRecipes.LARGE),
      DemoSetups.setup("background", "white-reflected", "surface", "mat"),
      Trait.TWO_HANDS),
  ARMCHAIR(
      "Armchair",
      sizes(780, 900, 760, 860, 800, 980, 18, 34),
      List.of(DemoSetups.MATTE),
      List.of(DemoRecipes.LARGE_SPIN, DemoRecipes.LARGE),
      DemoSetups.setup("background", "grey", "surface", "deck"),
      Trait.TWO_HANDS),
  FLOOR_MIRROR(
      "Floor mirror",
      sizes(420, 520, 300, 380, 1300, 1600, 8, 13),
      List.of(DemoSetups.GLOSSY),
      List.of(DemoRecipes.LARGE),
      DemoSetups.setup("background", "grey", "surface", "deck"),
      Trait.THREE_HANDS,
      Trait.HELD,
      Trait.GLASS),
  CARGO_SCOOTER(
      "Cargo scooter",
      sizes(1500, 1750, 480, 600, 950, 1100, 9, 16),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.LARGE, DemoRecipes.SPIN_TURNING),
      DemoSetups.setup("background", "white-reflected", "surface", "deck"),
      Trait.TWO_HANDS,
      Trait.WHEELS),
  JEWELLERY(
      "Brooch",
      sizes(18, 60, 15, 40, 8, 30, 0.01, 0.08),
      List.of(DemoSetups.GLOSSY, DemoSetups.MATTE),
      List.of(DemoRecipes.FOCUS),
      Setup.ANY),
  WATCH(
      "Watch",
      sizes(60, 90, 60, 80, 80, 110, 0.05, 0.2),
      List.of(DemoSetups.GLOSSY),
      List.of(DemoRecipes.FOCUS, DemoRecipes.STILLS),
      DemoSetups.setup("surface", "acrylic"),
      Trait.HELD),
  JACKET(
      "Jacket",
      sizes(450, 580, 180, 260, 750, 1000, 0.8, 2.2),
      List.of(DemoSetups.MATTE),
      List.of(DemoRecipes.HUNG),
      DemoSetups.setup("suspension", "hanger"),
      Trait.HANGS),
  BOXED(
      "Boxed kettle",
      sizes(200, 320, 160, 260, 180, 300, 0.8, 2.8),
      List.of(DemoSetups.MATTE, DemoSetups.GLOSSY),
      List.of(DemoRecipes.STILLS, DemoRecipes.SPIN_TURNING, DemoRecipes.SPIN, DemoRecipes.TOP),
      DemoSetups.setup("surface", "acrylic"));

  /** What makes a product harder to place. */
  enum Trait {
    GLASS,
    TWO_HANDS,
    THREE_HANDS,
    HELD,
    STRAPS_HANG,
    HANGS,
    POWERED,
    OFF_CENTRE,
    WHEELS
  }

  /** Ranges in mm and kg, both ends within. */
  record Sizes(
      int lengthFrom,
      int lengthTo,
      int widthFrom,
      int widthTo,
      int heightFrom,
      int heightTo,
      double massFrom,
      double massTo) {}

  private final String label;
  private final Sizes sizes;
  private final List<String> finishes;
  private final List<String> recipes;
  private final Setup asks;
  private final Set<Trait> traits;

  DemoProduct(
      String label,
      Sizes sizes,
      List<String> finishes,
      List<String> recipes,
      Setup asks,
      Trait... traits) {
    this.label = label;
    this.sizes = sizes;
    this.finishes = finishes;
    this.recipes = recipes;
    this.asks = asks;
    this.traits = EnumSet.noneOf(Trait.class);
    this.traits.addAll(List.of(traits));
  }

  String label() {
    return label;
  }

  Sizes sizes() {
    return sizes;
  }

  /** Finishes it comes in; one named twice is twice as frequent. */
  List<String> finishes() {
    return finishes;
  }

  /** Recipes it is shot on; one named twice is twice as frequent. */
  List<String> recipes() {
    return recipes;
  }

  /** What it asks for beyond the recipe. */
  Setup asks() {
    return asks;
  }

  boolean has(Trait trait) {
    return traits.contains(trait);
  }

  private static Sizes sizes(
      int lengthFrom,
      int lengthTo,
      int widthFrom,
      int widthTo,
      int heightFrom,
      int heightTo,
      double massFrom,
      double massTo) {
    return new Sizes(
        lengthFrom, lengthTo, widthFrom, widthTo, heightFrom, heightTo, massFrom, massTo);
  }
}
