package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.FitText;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.explain.LateChange;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.plan.Breach;

/** Says what each rig is for a job. */
final class RigSentences {
  private static final int MOST_BREACHES = 2;
  private static final int MOST_JOBS = 3;

  private final Names names;
  private final Explanation answer;
  private final boolean searched;

  /**
   * @param searched true when the plan is what a search found
   */
  RigSentences(Names names, Explanation answer, boolean searched) {
    this.names = names;
    this.answer = answer;
    this.searched = searched;
  }

  /** One sentence or a few for each rig. */
  List<String> all() {
    return answer.rigs().stream().map(this::one).toList();
  }

  private String one(RigAnswer rig) {
    return rig.rig() + ": " + text(rig);
  }

  /** What a rig is for the job, without its name. */
  String text(RigAnswer rig) {
    switch (rig.kind()) {
      case MISFIT:
        return "impossible. "
            + rig.misfits().stream().map(FitText::line).collect(Collectors.joining("; "))
            + ".";
      case TOO_LONG:
        return "impossible. It takes %s there; the rig is open and staffed for %s in one go."
            .formatted(
                Durations.of(rig.neededSeconds()), Durations.available(rig.longestOpenSeconds()));
      case FIXED:
        return "could take it, but it is running or done and stays.";
      default:
        break;
    }
    Move best = rig.best();
    if (best == null) {
      return rig.placesTried() > 0 || answer.rules().pin() == null
          ? "it is here, and there is no other place on this rig."
          : "it is here; running or done, it stays.";
    }
    return opening(rig, best) + effects(best);
  }

  private String opening(RigAnswer rig, Move best) {
    JobTimes there = best.times();
    String what = rig.kind() == RigAnswer.Kind.HERE ? "it is here; the best other" : "the best";
    String pin = rig.withoutItsPin() ? "it is pinned elsewhere; without the pin " : "";
    String of = rig.placesTried() == 1 ? "place" : "of " + rig.placesTried() + " places";
    return "%s%s %s is %d of %d, %s. "
        .formatted(
            pin,
            what,
            of,
            there.place() + 1,
            there.of(),
            names.times().span(there.startSecond(), there.endSecond()));
  }

  /** How it stands, then every figure that moves. */
  String effects(Move move) {
    List<String> moved = new ArrayList<>();
    int lateNow = answer.times() == null ? 0 : answer.times().lateSeconds();
    int lateThere = move.times().lateSeconds();
    if (answer.rules().dueAtSecond() != null) {
      String instead =
          answer.times() == null || lateNow == lateThere
              ? ""
              : " instead of " + Names.late(lateNow);
      moved.add("it would be " + Names.late(lateThere) + instead);
    }
    moved.addAll(
        CostSentences.moved(answer.cost(), move.cost(), lateThere - lateNow, names.times()));
    boolean workable = move.cost().hard() <= answer.cost().hard();
    moved.addAll(workable ? others(move) : List.of());
    String standing = CostSentences.standing(answer.cost(), move.cost());
    String found =
        searched
                && move.standing() == Standing.BETTER
                && answer.status() != Explanation.Status.HELD_BACK
            ? " The search has not found this place."
            : "";
    String breaches = breaches(move.breaches());
    return standing
        + (moved.isEmpty() ? "" : ": " + String.join("; ", moved))
        + "."
        + (breaches.isEmpty() ? "" : " " + breaches)
        + found;
  }

  private List<String> others(Move move) {
    List<LateChange> changes = move.lateChanges();
    if (changes.isEmpty()) {
      return List.of();
    }
    String named =
        changes.stream().limit(MOST_JOBS).map(RigSentences::late).collect(Collectors.joining(", "));
    int more = changes.size() - MOST_JOBS;
    return List.of(named + (more > 0 ? " and " + more + " more" : ""));
  }

  private static String late(LateChange one) {
    String instead =
        one.beforeSeconds() == 0 ? "" : " instead of " + Names.late(one.beforeSeconds());
    return one.job() + " " + Names.late(one.afterSeconds()) + instead;
  }

  /** What would be broken, with figures. */
  static String breaches(List<Breach> breaches) {
    String named =
        breaches.stream()
            .limit(MOST_BREACHES)
            .map(Breach::sentence)
            .map(sentence -> sentence.endsWith(".") ? sentence : sentence + ".")
            .collect(Collectors.joining(" "));
    int more = breaches.size() - MOST_BREACHES;
    return named
        + (more > 0 ? " And " + Counted.of(more, "more breach", "more breaches") + "." : "");
  }
}
