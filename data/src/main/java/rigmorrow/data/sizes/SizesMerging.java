package rigmorrow.data.sizes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigmorrow.data.column.TableNotes;
import rigmorrow.data.shot.JobField;
import rigmorrow.model.shot.ShotList;

/**
 * A shot list with the sizes that a device measured.
 *
 * @param shotList the list
 * @param notes how the table of sizes was understood
 * @param articles how many articles the table has
 * @param matchedJobs how many jobs are of one of them
 * @param filled how many values the list lacked and got
 * @param differences values that the list gives otherwise
 * @param unmatched articles of the table that no job is of, with a guess behind where there is one
 * @param lacking jobs that still lack sizes or a mass, with the fields they lack, in list order
 */
public record SizesMerging(
    ShotList shotList,
    TableNotes notes,
    int articles,
    int matchedJobs,
    int filled,
    List<Difference> differences,
    List<String> unmatched,
    Map<String, List<String>> lacking) {
  private static final int MOST_NAMED = 8;

  /**
   * A value that the list and the device give differently.
   *
   * @param job its id
   * @param field what is measured
   * @param listed value of the list
   * @param measured value of the device
   * @param taken true when the device's value was taken
   * @param why a phrase
   */
  public record Difference(
      String job, JobField field, Object listed, Object measured, boolean taken, String why) {
    private String line() {
      return "job %s: %s %s in the list, %s by the device; the %s's is taken (%s)"
          .formatted(job, field.key(), listed, measured, taken ? "device" : "list", why);
    }
  }

  public SizesMerging {
    differences = List.copyOf(differences);
    unmatched = List.copyOf(unmatched);
  }

  /** Everything as lines to show, the most general first. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>(notes.lines());
    lines.add(
        "%s measured, %s of them, %s filled in"
            .formatted(
                counted(articles, "article"),
                counted(matchedJobs, "job"),
                counted(filled, "value")));
    differences.forEach(difference -> lines.add(difference.line()));
    if (!unmatched.isEmpty()) {
      lines.add("articles of no job: " + named(unmatched));
    }
    if (!lacking.isEmpty()) {
      lines.add(
          "jobs still to be measured: "
              + named(
                  lacking.entrySet().stream()
                      .map(job -> job.getKey() + " (" + String.join(", ", job.getValue()) + ")")
                      .toList()));
    }
    return lines;
  }

  private static String counted(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  private static String named(List<String> names) {
    String more = names.size() > MOST_NAMED ? " and " + (names.size() - MOST_NAMED) + " more" : "";
    return names.stream().limit(MOST_NAMED).collect(Collectors.joining(", ")) + more;
  }
}
