package rigmorrow.data.demo;

import java.util.Locale;

/** Invented article codes. */
final class DemoNumbers {
  /**
   * GS1 prefix 952 is kept for demonstrations and examples (GS1 company prefix list, from memory),
   * so no real product has such a number.
   */
  private static final String DEMO_PREFIX = "952";

  private DemoNumbers() {}

  /**
   * A GTIN-13 of the demo prefix.
   *
   * @param article 0 to 999,999,999
   */
  static String gtin13(int article) {
    String digits = DEMO_PREFIX + String.format(Locale.ROOT, "%09d", article);
    return digits + checkDigit(digits);
  }

  /** Weights 3 and 1 from the right (GS1 General Specifications, check digit calculation). */
  private static int checkDigit(String digits) {
    int sum = 0;
    for (int at = 0; at < digits.length(); at++) {
      int weight = (digits.length() - at) % 2 == 1 ? 3 : 1;
      sum += weight * Character.digit(digits.charAt(at), 10);
    }
    return (10 - sum % 10) % 10;
  }
}
