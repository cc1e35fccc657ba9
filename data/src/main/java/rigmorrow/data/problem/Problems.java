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
    add(Place.of(where), field, value, accepted);
  }

  /** Notes one problem; the parameters are those of {@link InputProblem}. */
  public void add(Place place, String field, String value, String accepted) {
    found.add(new InputProblem(file, place, field, value, accepted));
  }

  /** The refusal of the whole file for one reason, besides what was noted before. */
  public InputException refusal(String value, String accepted) {
    add("file", "", value, accepted);
    return new InputException(found);
  }

  /** Name of the file as the user gave it. */
  public String file() {
    return file;
  }

  /** The problems noted so far. */
  public List<InputProblem> found() {
    return List.copyOf(found);
  }

  /** Everything noted so far. */
  public List<InputProblem> all() {
    return List.copyOf(found);
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
