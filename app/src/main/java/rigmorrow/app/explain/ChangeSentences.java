package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Change.Kind;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.JobTimes;

/** Says what one change would do: "if this, then that", and nothing that was not decoded. */
final class ChangeSentences {
  private static final int MOST_JOBS_LEFT_OUT = 3;

  /** These change what the whole plan does, so its cost is told as well. */
  private static final Set<Kind> ABOUT_ORDERS =
      EnumSet.of(Kind.WITHOUT_JOB, Kind.FIRST_ON_RIG, Kind.ALONE);

  private final Names names;
  private final String rig;

  /**
   * @param rig id of the rig the job is on; empty when it is left out
   */
  ChangeSentences(Names names, String rig) {
    this.names = names;
    this.rig = rig;
  }

  /** For a planned job: what takes its pictures sooner, then what was tried without effect. */
  List<String> planned(Explanation answer, JobTimes now) {
    List<String> sentences = new ArrayList<>();
    List<IfThen> helpful = answer.changes().stream().filter(IfThen::helps).toList();
    helpful.stream()
        .filter(one -> !ABOUT_ORDERS.contains(one.change().kind()))
        .forEach(one -> sentences.add(sooner(answer, one, now)));
    List<IfThen> without =
        helpful.stream().filter(one -> one.change().kind() == Kind.WITHOUT_JOB).toList();
    without.stream()
        .limit(MOST_JOBS_LEFT_OUT)
        .forEach(one -> sentences.add(sooner(answer, one, now)));
    int more = without.size() - MOST_JOBS_LEFT_OUT;
    if (more > 0) {
      sentences.add(
          "Leaving out any of %s before it on %s would help no more than those named."
              .formatted(Counted.of(more, "more job"), rig));
    }
    helpful.stream()
        .filter(one -> one.change().kind() == Kind.FIRST_ON_RIG)
        .forEach(one -> sentences.add(sooner(answer, one, now)));
    answer.changes().stream()
        .filter(one -> one.change().kind() == Kind.ALONE)
        .forEach(one -> sentences.add(alone(one, now)));
    without(answer, sentences, "Tried, and its pictures are taken no sooner: ");
    return sentences;
  }

  /** For a job that is left out: what makes room, then what was tried and does not. */
  List<String> leftOut(Explanation answer) {
    List<String> sentences = new ArrayList<>();
    for (IfThen one : answer.changes()) {
      if (one.helps()) {
        sentences.add(
            "If %s, it would keep every rule that the plan keeps, on %s from %s to %s%s; %s."
                .formatted(
                    clause(one.change()),
                    place(one.times()),
                    names.times().at(one.times().startSecond()),
                    names.times().at(one.times().endSecond()),
                    answer.rules().dueAtSecond() == null
                        ? ""
                        : ", " + Names.late(one.times().lateSeconds()),
                    CostSentences.inShort(answer.cost(), one.cost())));
      }
    }
    without(answer, sentences, "Tried, and no place keeps the rules: ");
    return sentences;
  }

  /** One change in short, such as "If it were first on R2, it would be on time." */
  String brief(IfThen one) {
    return "If %s, it would be %s."
        .formatted(clause(one.change()), Names.late(one.times().lateSeconds()));
  }

  private String sooner(Explanation answer, IfThen one, JobTimes now) {
    boolean orders = ABOUT_ORDERS.contains(one.change().kind());
    return "If %s, its pictures would be taken by %s, %s sooner%s%s."
        .formatted(
            clause(one.change()),
            names.times().at(one.times().captureEndSecond()),
            Durations.of(now.captureEndSecond() - one.times().captureEndSecond()),
            now.lateSeconds() == 0 ? "" : ", " + Names.late(one.times().lateSeconds()),
            orders ? "; " + CostSentences.inShort(answer.cost(), one.cost()) : "");
  }

  private String alone(IfThen one, JobTimes now) {
    String by = names.times().at(one.times().captureEndSecond());
    if (one.times().lateSeconds() > 0) {
      return "Even if nothing else were planned, it would be %s on %s: its pictures by %s."
          .formatted(Names.late(one.times().lateSeconds()), one.times().rig(), by);
    }
    String late = now.lateSeconds() == 0 ? "" : ", on time";
    return "If nothing else were planned, its pictures would be taken by %s%s.".formatted(by, late);
  }

  private void without(Explanation answer, List<String> sentences, String opening) {
    List<String> clauses =
        answer.changes().stream()
            .filter(one -> !one.helps())
            .map(IfThen::change)
            .filter(one -> one.kind() != Kind.WITHOUT_JOB && one.kind() != Kind.ALONE)
            .map(this::noun)
            .distinct()
            .toList();
    if (!clauses.isEmpty()) {
      sentences.add(opening + String.join("; ", clauses) + ".");
    }
  }

  /** What is supposed, after "if". */
  private String clause(Change change) {
    return switch (change.kind()) {
      case SAMPLE_THERE -> "its sample were there from the start";
      case SAMPLE_NOT_SHARED -> "it had a sample of its own";
      case NO_SETUP -> "it could take " + rig + " as it stands, without a setup";
      case START_NOT_PINNED -> "its start were not pinned";
      case ONE_MORE_OPERATOR -> "there were one more operator, with every skill and no breaks";
      case ONE_MORE_KIT -> "there were one more of " + names.kit(change.subject());
      case RIG_NOT_CLOSED -> "the dated closures of " + change.subject() + " fell away";
      case LONGER_HOURS -> "every rig and operator stayed " + length(change) + " longer";
      case WITHOUT_JOB -> names.job(change.subject()) + " were left out";
      case FIRST_ON_RIG -> "it were the first on " + rig;
      case ALONE -> "nothing else were planned";
      case PROMISE_LATER -> "its promise were " + length(change) + " later";
      case COLLECTION_LATER -> "its sample could stay " + length(change) + " longer";
      case NOT_PINNED -> "it were not pinned";
      case INSTEAD_OF -> names.job(change.subject()) + " were left out instead";
    };
  }

  /** What was supposed, in a list. */
  private String noun(Change change) {
    return switch (change.kind()) {
      case SAMPLE_THERE -> "its sample there from the start";
      case SAMPLE_NOT_SHARED -> "a sample of its own";
      case NO_SETUP -> "no setup";
      case START_NOT_PINNED -> "no pinned start";
      case ONE_MORE_OPERATOR -> "one more operator";
      case ONE_MORE_KIT -> "one more of " + names.kit(change.subject());
      case RIG_NOT_CLOSED -> "no dated closures of " + change.subject();
      case LONGER_HOURS -> length(change) + " longer hours of all";
      case WITHOUT_JOB -> names.job(change.subject()) + " left out";
      case FIRST_ON_RIG -> "being first on its rig";
      case ALONE -> "nothing else planned";
      case PROMISE_LATER -> "a promise " + length(change) + " later";
      case COLLECTION_LATER -> "a collection " + length(change) + " later";
      case NOT_PINNED -> "no pin";
      case INSTEAD_OF -> "the place of any job that is not pinned";
    };
  }

  private static String length(Change change) {
    return Durations.of(change.seconds());
  }

  private static String place(JobTimes times) {
    return times.rig() + " as " + (times.place() + 1) + " of " + times.of();
  }
}
