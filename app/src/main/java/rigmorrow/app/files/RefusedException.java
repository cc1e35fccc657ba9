package rigmorrow.app.files;

import java.util.List;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Words;

/** The command line asks for something that cannot be done as it stands. */
public final class RefusedException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<InputProblem> problems;

  /**
   * @param message one line that says what is wrong and what would mend it
   * @param problems the same, part by part; may be empty
   */
  public RefusedException(String message, List<InputProblem> problems) {
    super(message);
    this.problems = List.copyOf(problems);
  }

  /** A value of an option that names something that is not there. */
  public static RefusedException unknown(String option, String value, List<String> known) {
    int shown = 8;
    String meant =
        Words.nearest(known, value).map(word -> " (did you mean " + word + "?)").orElse("");
    String accepted =
        String.join(", ", known.stream().limit(shown).toList())
            + (known.size() > shown ? " … (" + known.size() + " in all)" : "")
            + meant;
    return new RefusedException(
        option + ": there is no '" + value + "'; accepted: " + accepted,
        List.of(new InputProblem("", "command line", option, value, accepted)));
  }

  /** What is wrong, part by part. */
  public List<InputProblem> problems() {
    return problems;
  }
}
