package rigmorrow.app.whatif.page;

import java.util.Locale;

/**
 * What a part of a drawing stands for, with its colour on white paper. What is to be told apart
 * differs in lightness and in form too, never by colour alone.
 */
public enum Ink {
  /** Lines behind everything. */
  FAINT("#d9d9d9"),
  /** The floor as it is. */
  BASE("#9a9a9a"),
  /** The scenario. */
  SCENARIO("#123f6b"),
  /** Marks that must be seen. */
  MARK("#000000");

  private final String colour;

  Ink(String colour) {
    this.colour = colour;
  }

  /** Colour as a style sheet has it. */
  public String colour() {
    return colour;
  }

  /** The name that a style sheet may give it another colour by. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
