package rigmorrow.data.problem;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one file, so that all of it can be told at once. */
public final class Problems {
  private final String file;
  private final List<InputProblem> found = new ArrayList<>();

  /**
   * @param file name of the file as the user gave it
   */
  public Problems(String file) {
    this.file = file;
  }

  /** Notes one problem; the parameters are those of {@link InputProblem}. */
  public void add(String where, String field, String value, String accepted) {
    found.add(new InputProblem(file, where, field, value, accepted));
  }

  /** True when nothing was noted. */
  public boolean none() {
    return found.isEmpty();
  }

  /** Number of problems noted so far. */
  public int count() {
    return found.size();
  }

  /**
   * Ends the reading when anything was noted.
   *
   * @throws InputException with every problem noted
   */
  public void throwIfAny() throws InputException {
    if (!found.isEmpty()) {
      throw new InputException(found);
    }
  }
}
