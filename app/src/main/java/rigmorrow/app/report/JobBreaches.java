package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;

/** The broken rules of a plan, for those who would work to it: as a warning and job by job. */
public final class JobBreaches {
  private static final int MOST_SENTENCES = 30;

  private final List<Breach> breaches;

  /**
   * @param breaches what the independent check found
   */
  public JobBreaches(List<Breach> breaches) {
    this.breaches = List.copyOf(breaches);
  }

  /** Not to be worked from, and why; empty for a plan that keeps every rule. */
  public String warning() {
    return breaches.isEmpty()
        ? ""
        : "This plan breaks " + Counted.of(breaches.size(), "rule") + ". Do not work from it.";
  }

  /** What is wrong, one sentence each; where there are many, the last says how many more. */
  public List<String> sentences() {
    List<String> sentences =
        new ArrayList<>(breaches.stream().limit(MOST_SENTENCES).map(Breach::sentence).toList());
    int more = breaches.size() - MOST_SENTENCES;
    if (more > 0) {
      sentences.add("and " + more + " more");
    }
    return sentences;
  }

  /** What is wrong with a job: breaches that are at it, or that name it. */
  public List<String> of(String job) {
    Pattern named = named(job);
    return breaches.stream()
        .filter(breach -> breach.where().equals(job) || names(breach, job, named))
        .map(Breach::sentence)
        .distinct()
        .toList();
  }

  /** A sentence about a figure names no job but holds numbers, which may be a job's id as well. */
  private static boolean names(Breach breach, String job, Pattern named) {
    return breach.rule() != FloorRule.FIGURES
        && breach.sentence().contains(job)
        && named.matcher(breach.sentence()).find();
  }

  /** The id as a word of its own, so that J1 is not found in J12, nor 9 in 09:10 or in 9 s. */
  private static Pattern named(String job) {
    return Pattern.compile(
        "(?<![\\p{L}\\p{N}_:-])(?<!\\p{N}\\.)"
            + Pattern.quote(job)
            + "(?![\\p{L}\\p{N}_-])(?!:\\p{N})(?!\\.\\p{N})(?! s\\b)(?! times\\b)");
  }
}
