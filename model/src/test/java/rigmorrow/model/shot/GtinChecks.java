package rigmorrow.model.shot;

import java.util.List;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** Check digits worked by hand from the rule in the GS1 General Specifications. */
public final class GtinChecks {
  private GtinChecks() {}

  /** The list. */
  public static List<OutsideCheck> all() {
    return List.of(
        check("629104150021", 3),
        check("730001100001", 7),
        check("890400021003", 7),
        check("4098765000022", 3),
        check("501234567890", 0));
  }

  private static OutsideCheck check(String digits, int checkDigit) {
    return OutsideCheck.of(
        "Check digit of GTIN " + digits,
        "GS1 General Specifications, worked by hand",
        GtinTest.class,
        () -> List.of(Figure.equal("", checkDigit, Gtin.checkDigit(digits))));
  }
}
