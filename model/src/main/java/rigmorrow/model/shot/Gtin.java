package rigmorrow.model.shot;

/**
 * Global Trade Item Numbers of 8, 12, 13 or 14 digits.
 *
 * <p>Source: GS1 General Specifications, standard check digit calculation for GS1 data structures:
 * from the right, without the check digit, the digits weigh 3, 1, 3, 1 and so on; the check digit
 * brings the sum to the next multiple of ten.
 */
public final class Gtin {
  private Gtin() {}

  /** True when the text has an allowed number of digits and the right check digit. */
  public static boolean valid(String text) {
    return rightLength(text) && checkDigit(text.substring(0, text.length() - 1)) == lastDigit(text);
  }

  /** True when the text has 8, 12, 13 or 14 digits and nothing else. */
  public static boolean rightLength(String text) {
    return text.matches("[0-9]{8}|[0-9]{12,14}");
  }

  /**
   * The check digit of a number.
   *
   * @param digits the number without its check digit; digits 0 to 9 only
   * @return 0 to 9
   */
  public static int checkDigit(String digits) {
    int sum = 0;
    for (int fromRight = 0; fromRight < digits.length(); fromRight++) {
      int digit = digits.charAt(digits.length() - 1 - fromRight) - '0';
      sum += fromRight % 2 == 0 ? 3 * digit : digit;
    }
    return (10 - sum % 10) % 10;
  }

  private static int lastDigit(String text) {
    return text.charAt(text.length() - 1) - '0';
  }
}
