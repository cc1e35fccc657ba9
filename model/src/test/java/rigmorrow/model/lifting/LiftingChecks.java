package rigmorrow.model.lifting;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** Tables and worked examples of NIOSH publication 94-110 (revised 2021), metric columns. */
public final class LiftingChecks {
  private static final String MANUAL = "NIOSH publication 94-110 (revised 2021)";
  private static final double LOAD_CONSTANT_LB = 51;

  /** A rounded 5 in the third decimal goes up. */
  private static final double TWO_DECIMALS = 0.005 + 1e-9;

  /** Example 4, package inspection (pages 44 to 46), in metric units. */
  static final LiftingTask PACKAGE_INSPECTION =
      packageInspection(new HandPosition(25, 55, 0), new HandPosition(50, 150, 0));

  /** The same example in inches; the horizontal 20 in at the destination is from memory. */
  private static final LiftingTask PACKAGE_INSPECTION_IN_INCHES =
      packageInspection(inches(10, 22), inches(20, 59));

  private static final String[] TABLE_1 = {
    "0 1.00", "25 1.00", "28 .89", "30 .83", "32 .78", "34 .74", "36 .69", "38 .66", "40 .63",
    "42 .60", "44 .57", "46 .54", "48 .52", "50 .50", "52 .48", "54 .46", "56 .45", "58 .43",
    "60 .42", "63 .40"
  };

  private static final String[] TABLE_2 = {
    "0 .78", "10 .81", "20 .84", "30 .87", "40 .90", "50 .93", "60 .96", "70 .99", "80 .99",
    "90 .96", "100 .93", "110 .90", "120 .87", "130 .84", "140 .81", "150 .78", "160 .75",
    "170 .72", "175 .70"
  };

  /**
   * The printed .86 for 130 cm is left out: the manual's own formula gives .8546, and formulas
   * govern.
   */
  private static final String[] TABLE_3 = {
    "0 1.00", "25 1.00", "40 .93", "55 .90", "70 .88", "85 .87", "100 .87", "115 .86", "145 .85",
    "160 .85", "175 .85"
  };

  private static final String[] TABLE_4 = {
    "0 1.00", "15 .95", "30 .90", "45 .86", "60 .81", "75 .76", "90 .71", "105 .66", "120 .62",
    "135 .57"
  };

  /**
   * By lifts a minute (16 stands for the row of more than 15): up to 1 hour, up to 2, up to 8, each
   * with the hands below 75 cm and from there on.
   */
  private static final String[] TABLE_5 = {
    "0.2 1.00 1.00 .95 .95 .85 .85",
    "0.5 .97 .97 .92 .92 .81 .81",
    "1 .94 .94 .88 .88 .75 .75",
    "2 .91 .91 .84 .84 .65 .65",
    "3 .88 .88 .79 .79 .55 .55",
    "4 .84 .84 .72 .72 .45 .45",
    "5 .80 .80 .60 .60 .35 .35",
    "6 .75 .75 .50 .50 .27 .27",
    "7 .70 .70 .42 .42 .22 .22",
    "8 .60 .60 .35 .35 .18 .18",
    "9 .52 .52 .30 .30 .00 .15",
    "10 .45 .45 .26 .26 .00 .13",
    "11 .41 .41 .00 .23 .00 .00",
    "12 .37 .37 .00 .21 .00 .00",
    "13 .00 .34 .00 .00 .00 .00",
    "14 .00 .31 .00 .00 .00 .00",
    "15 .00 .28 .00 .00 .00 .00",
    "16 .00 .00 .00 .00 .00 .00"
  };

  private static final String[] TABLE_7 = {"GOOD 1.00 1.00", "FAIR .95 1.00", "POOR .90 .90"};

  private LiftingChecks() {}

  /** Every list below. */
  public static List<OutsideCheck> all() {
    List<OutsideCheck> all = new ArrayList<>(multipliers());
    all.addAll(frequencies());
    all.addAll(examples());
    return all;
  }

  /** The multipliers by distance and angle, and of the coupling. */
  static List<OutsideCheck> multipliers() {
    return List.of(
        table("Table 1, horizontal", TABLE_1, LiftingEquation::horizontalMultiplier),
        table("Table 2, vertical", TABLE_2, LiftingEquation::verticalMultiplier),
        table(
            "Table 3, distance, without 130 cm (printed .86, the formula gives .8546)",
            TABLE_3,
            LiftingEquation::distanceMultiplier),
        table("Table 4, asymmetry", TABLE_4, LiftingEquation::asymmetricMultiplier),
        check("Table 7, coupling", "", LiftingMultipliersTest.class, LiftingChecks::couplings));
  }

  private static OutsideCheck table(String name, String[] rows, DoubleUnaryOperator ours) {
    return check(
        name,
        "",
        LiftingMultipliersTest.class,
        () -> {
          List<Figure> figures = new ArrayList<>();
          for (String row : rows) {
            String[] cells = row.split(" ");
            double multiplier = ours.applyAsDouble(Double.parseDouble(cells[0]));
            figures.add(Figure.near(cells[0], cells[1], TWO_DECIMALS, multiplier));
          }
          return figures;
        });
  }

  private static OutsideCheck check(
      String name, String place, Class<?> test, Supplier<List<Figure>> figures) {
    return OutsideCheck.of("Lifting: " + name, MANUAL + place, test, figures);
  }

  private static List<Figure> couplings() {
    List<Figure> figures = new ArrayList<>();
    for (String row : TABLE_7) {
      String[] cells = row.split(" ");
      Coupling coupling = Coupling.valueOf(cells[0]);
      figures.add(Figure.near(cells[0] + " below", cells[1], 0, coupling.multiplier(74.9)));
      figures.add(Figure.near(cells[0] + " from 75 cm", cells[2], 0, coupling.multiplier(75)));
    }
    return figures;
  }

  /** The frequency multipliers. */
  static List<OutsideCheck> frequencies() {
    return List.of(
        check("Table 5, frequency", ", page 15", FrequencyTableTest.class, LiftingChecks::table5),
        check(
            "2.4 lifts a minute, between two rows of table 5",
            ", example 7, pages 56 and 57",
            FrequencyTableTest.class,
            () ->
                List.of(
                    Figure.near(
                        "",
                        "0.898",
                        1e-12,
                        FrequencyTable.multiplier(2.4, LiftDuration.UP_TO_1_HOUR, 50)))));
  }

  private static List<Figure> table5() {
    List<Figure> figures = new ArrayList<>();
    for (String row : TABLE_5) {
      String[] cells = row.split(" ");
      double lifts = Double.parseDouble(cells[0]);
      for (LiftDuration duration : LiftDuration.values()) {
        int at = 1 + 2 * duration.ordinal();
        double low = FrequencyTable.multiplier(lifts, duration, 74.9);
        double high = FrequencyTable.multiplier(lifts, duration, 75);
        figures.add(Figure.near(cells[0] + " low", cells[at], 0, low));
        figures.add(Figure.near(cells[0] + " high", cells[at + 1], 0, high));
      }
    }
    return figures;
  }

  /** The worked examples. */
  static List<OutsideCheck> examples() {
    return List.of(
        example(
            "package inspection, multipliers",
            ", example 4, pages 44 to 46",
            LiftingChecks::multipliersOfInspection),
        example(
            "package inspection, 12 kg",
            ", example 4, pages 44 to 46",
            LiftingChecks::inspectionInKilograms),
        example(
            "package inspection, limit in lb",
            ", example 4; printed 34.9 from rounded multipliers",
            () -> pounds("34.8", PACKAGE_INSPECTION_IN_INCHES)),
        example(
            "package inspection at the destination, limit in lb",
            ", example 4; printed 15.2 from rounded multipliers",
            LiftingChecks::inspectionAtTheDestination),
        example(
            "H 20, V 6, D 16 in, coupling .95, rare lifts, limit in lb",
            "; printed 18.4 from rounded multipliers",
            () ->
                pounds(
                    "18.5",
                    new LiftingTask(
                        inches(20, 6),
                        inches(20, 22),
                        false,
                        0.2,
                        LiftDuration.UP_TO_1_HOUR,
                        Coupling.FAIR))));
  }

  private static OutsideCheck example(String name, String place, Supplier<List<Figure>> figures) {
    return check(name, place, LiftingEquationTest.class, figures);
  }

  private static List<Figure> multipliersOfInspection() {
    LiftingResult result = LiftingEquation.assess(PACKAGE_INSPECTION, 12);
    return List.of(
        Figure.near("HM", "1.0", 0, result.horizontalMultiplier()),
        Figure.near("VM", ".94", TWO_DECIMALS, result.verticalMultiplier()),
        Figure.near("DM", ".87", TWO_DECIMALS, result.distanceMultiplier()),
        Figure.near("AM", "1.0", 0, result.asymmetricMultiplier()),
        Figure.near("FM", ".88", 0, result.frequencyMultiplier()),
        Figure.near("CM", ".95", 0, result.couplingMultiplier()));
  }

  private static List<Figure> inspectionInKilograms() {
    LiftingResult result = LiftingEquation.assess(PACKAGE_INSPECTION, 12);
    return List.of(
        Figure.near("limit", "15.7", 0.05, result.recommendedWeightLimitKg()),
        Figure.near("index", ".76", 0.01, result.liftingIndex()));
  }

  private static List<Figure> inspectionAtTheDestination() {
    LiftingTask task = controlled(PACKAGE_INSPECTION_IN_INCHES);
    LiftingResult result = LiftingEquation.assess(task, 12);
    List<Figure> figures = new ArrayList<>(pounds("15.3", task));
    figures.add(Figure.near("HM", ".5", 0, result.horizontalMultiplier()));
    figures.add(Figure.near("CM", "1.0", 0, result.couplingMultiplier()));
    return figures;
  }

  /** The limit as a share of the load constant is the same in both unit systems of the manual. */
  private static List<Figure> pounds(String expected, LiftingTask task) {
    double limitKg = LiftingEquation.assess(task, 12).recommendedWeightLimitKg();
    double pounds = limitKg / LiftingEquation.LOAD_CONSTANT_KG * LOAD_CONSTANT_LB;
    return List.of(Figure.near("limit", expected, 0.05, pounds));
  }

  private static LiftingTask packageInspection(HandPosition origin, HandPosition destination) {
    return new LiftingTask(origin, destination, false, 3, LiftDuration.UP_TO_1_HOUR, Coupling.FAIR);
  }

  /** The manual's two sets of formulas agree where an inch is taken as 2.5 cm. */
  private static HandPosition inches(double horizontal, double vertical) {
    return new HandPosition(2.5 * horizontal, 2.5 * vertical, 0);
  }

  static LiftingTask controlled(LiftingTask task) {
    return new LiftingTask(
        task.origin(),
        task.destination(),
        true,
        task.liftsPerMinute(),
        task.duration(),
        task.coupling());
  }
}
