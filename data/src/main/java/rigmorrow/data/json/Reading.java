package rigmorrow.data.json;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rigmorrow.data.problem.Problems;

/** One pass over one file: its problems, and the names of fields the reader asked for. */
public final class Reading {
  private final Problems problems;
  private final Map<String, Set<String>> known = new TreeMap<>();

  /**
   * @param problems takes all that is wrong
   */
  public Reading(Problems problems) {
    this.problems = problems;
  }

  /** What is wrong so far. */
  public Problems problems() {
    return problems;
  }

  /**
   * Names of fields by kind of object, such as {@code rig} or {@code recipe}, as far as such an
   * object was read. This is what the description of the format is held against.
   */
  public Map<String, Set<String>> known() {
    return Collections.unmodifiableMap(known);
  }

  void asked(String kind, String field) {
    known.computeIfAbsent(kind, name -> new TreeSet<>()).add(field);
  }
}
