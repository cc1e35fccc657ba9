package rigmorrow.data.problem;

/**
 * How many places of a file have something in common, and the first of them.
 *
 * @param number at least 1
 * @param first what stands there and where
 */
public record Examples(int number, String first) {
  /** One place. */
  public static Examples of(String first) {
    return new Examples(1, first);
  }

  /** These and more of them; the first stays the first. */
  public Examples and(Examples more) {
    return new Examples(number + more.number, first);
  }

  /** Such as "1 size is small, 4 mm (row 2)" and "3 sizes are small, such as 4 mm (row 2)". */
  public String phrase(String one, String several) {
    return number == 1 ? "1 " + one + ", " + first : number + " " + several + ", such as " + first;
  }
}
