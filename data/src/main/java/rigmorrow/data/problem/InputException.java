package rigmorrow.data.problem;

import java.util.List;
import java.util.stream.Collectors;

/** An input file cannot be used; carries every problem that was found in it, in file order. */
public final class InputException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<InputProblem> problems;

  /**
   * @param problems at least one
   */
  public InputException(List<InputProblem> problems) {
    super(text(problems));
    this.problems = List.copyOf(problems);
  }

  /** Every problem, in file order. */
  public List<InputProblem> problems() {
    return problems;
  }

  private static String text(List<InputProblem> problems) {
    String file = problems.get(0).file();
    String count = problems.size() == 1 ? "1 problem" : problems.size() + " problems";
    return problems.stream()
        .map(problem -> "  " + problem.line())
        .collect(Collectors.joining("\n", file + ": " + count + "\n", ""));
  }
}
