package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.app.report.Counted;
import rigmorrow.app.report.Durations;
import rigmorrow.app.report.Times;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Standing;
import rigmorrow.model.explain.Trouble;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.shot.Batch;

/**
 * Explanations in sentences, for whatever shows them. Every cause reads "if this, then that", with
 * the figures that were decoded.
 */
public final class ExplainSentences {
  private static final String UNASKED =
      "So many jobs are in trouble that no place was tried for it: ask why about it alone.";

  private final Names names;
  private final boolean searched;

  /**
   * @param batch that was planned
   * @param origin how the plan was made: only of a search can be said what it did not find
   */
  public ExplainSentences(Batch batch, PlanOrigin origin) {
    this.names = new Names(batch);
    this.searched = origin.method().equals("search");
  }

  /** The whole answer; the first section says what the plan does with the job. */
  public List<Section> of(Explanation answer) {
    List<Section> sections = about(answer);
    int last = sections.size() - 1;
    List<String> rigs = new RigSentences(names, answer, searched).all();
    if (!rigs.isEmpty()) {
      sections.add(last, new Section("Rigs, every place tried", rigs));
    }
    return sections;
  }

  /** The answer without what each rig is for the job, for whoever shows the rigs by themselves. */
  public List<Section> about(Explanation answer) {
    List<Section> sections = new ArrayList<>();
    sections.add(new Section(title(answer), here(answer)));
    JobTimes now = answer.times();
    ChangeSentences changes = new ChangeSentences(names, now == null ? "" : now.rig());
    if (now != null) {
      String heading =
          now.lateSeconds() > 0
              ? "What stands in the way of its promise"
              : "What would take its pictures sooner";
      add(sections, heading, changes.planned(answer, now));
    } else {
      add(sections, "What would make room for it", changes.leftOut(answer));
    }
    add(sections, "What holds for it", new RuleSentences(names, answer).all());
    return sections;
  }

  private static void add(List<Section> sections, String heading, List<String> sentences) {
    if (!sentences.isEmpty()) {
      sections.add(new Section(heading, sentences));
    }
  }

  private String title(Explanation answer) {
    String job = answer.job().id() + " " + answer.job().name();
    JobTimes now = answer.times();
    return switch (answer.status()) {
      case PLANNED ->
          now == null
              ? job
              : "%s: %s, place %d of %d%s"
                  .formatted(
                      job,
                      now.rig(),
                      now.place() + 1,
                      now.of(),
                      now.lateSeconds() == 0 ? "" : ", " + Names.late(now.lateSeconds()));
      case LEFT_OUT -> job + ": left out";
      case HELD_BACK -> job + ": left out by hand";
      case FITS_NO_RIG -> job + ": left out, no rig can take it";
      case NEEDS_MEASURING -> job + ": left out, needs measuring";
    };
  }

  private List<String> here(Explanation answer) {
    List<String> sentences = new ArrayList<>();
    if (!answer.differing().isEmpty()) {
      sentences.add(
          "The plan's own times are not what its orders lead to (%s, %s first): this is of the times worked out anew."
              .formatted(Counted.of(answer.differing().size(), "job"), answer.differing().get(0)));
    }
    JobTimes now = answer.times();
    if (now != null) {
      planned(answer, now, sentences);
    } else {
      sentences.add(whyLeftOut(answer));
    }
    if (answer.cost().hard() > 0) {
      sentences.add("The plan as it stands breaks rules that must hold.");
    }
    answer.rigs().stream()
        .filter(rig -> answer.status() != Explanation.Status.HELD_BACK)
        .filter(rig -> rig.best() != null && rig.best().standing() == Standing.BETTER)
        .filter(rig -> !rig.withoutItsPin())
        .forEach(rig -> sentences.add(better(answer, rig)));
    return sentences;
  }

  private static String better(Explanation answer, RigAnswer rig) {
    Move best = java.util.Objects.requireNonNull(rig.best());
    return "A better plan is one move away, on %s as %d of %d; it stands below. %s."
        .formatted(
            rig.rig(),
            best.times().place() + 1,
            best.times().of(),
            CostSentences.standing(answer.cost(), best.cost()));
  }

  private void planned(Explanation answer, JobTimes now, List<String> sentences) {
    Times times = names.times();
    String before = answer.before() == null ? ", first of the rig" : ", after " + answer.before();
    String after = answer.after() == null ? ", last of the rig" : ", before " + answer.after();
    sentences.add(
        "On %s %s%s%s; its pictures are taken by %s."
            .formatted(
                now.rig(),
                times.span(now.startSecond(), now.endSecond()),
                before,
                after,
                times.at(now.captureEndSecond())));
    sentences.add(promise(answer, now));
    sentences.add(
        now.changeoverSeconds() == 0
            ? "It needs no changeover there."
            : "Its changeover takes " + Durations.of(now.changeoverSeconds()) + ".");
    sentences.addAll(new WaitSentences(names, answer.rules()).of(answer.waits()));
  }

  private String promise(Explanation answer, JobTimes now) {
    Integer due = answer.rules().dueAtSecond();
    if (due == null) {
      return "It has no promise.";
    }
    int spare = due - now.captureEndSecond();
    return "They are promised for %s: %s."
        .formatted(
            names.times().at(due),
            now.lateSeconds() > 0
                ? Names.late(now.lateSeconds())
                : spare == 0 ? "just in time" : Durations.available(spare) + " to spare");
  }

  private String whyLeftOut(Explanation answer) {
    return switch (answer.status()) {
      case NEEDS_MEASURING ->
          "Not measured: " + String.join(", ", answer.unmeasured()) + ". No rig was asked.";
      case FITS_NO_RIG -> "Every rig has a reason why not; they stand below.";
      case HELD_BACK ->
          "It is left out by hand; no search plans it until it is taken in. "
              + leftOutThoughItFits(answer.rigs(), answer);
      default -> leftOutThoughItFits(answer.rigs(), answer);
    };
  }

  private String leftOutThoughItFits(List<RigAnswer> rigs, Explanation answer) {
    String fits =
        rigs.stream()
            .filter(rig -> rig.kind() == RigAnswer.Kind.POSSIBLE)
            .map(RigAnswer::rig)
            .collect(Collectors.joining(", "));
    int tried =
        rigs.stream().filter(rig -> !rig.withoutItsPin()).mapToInt(RigAnswer::placesTried).sum();
    if (tried == 0) {
      return "As things stand no rig has a place for it; what each says stands below.";
    }
    boolean room =
        rigs.stream()
            .filter(rig -> !rig.withoutItsPin())
            .anyMatch(
                rig -> rig.best() != null && rig.best().cost().hard() <= answer.cost().hard());
    String result =
        room
            ? "at least one of them keeps every rule that the plan keeps"
            : "each of them breaks a rule that must hold";
    return "It fits %s. Of %s tried, every other job in its order, %s."
        .formatted(fits, Counted.of(tried, "place"), result);
  }

  /** What one rig is for the job, without its name. */
  public String of(Explanation answer, RigAnswer rig) {
    return new RigSentences(names, answer, searched).text(rig);
  }

  /** One line for a job that is late or left out. */
  public String of(Trouble trouble) {
    String job = trouble.job().id() + " " + trouble.job().name();
    return job + (trouble.times() == null ? ": " : ", ") + withoutName(trouble);
  }

  /** The same for whoever names the job beside it. */
  public String withoutName(Trouble trouble) {
    JobTimes now = trouble.times();
    if (now != null) {
      String late = now.rig() + ": " + Names.late(now.lateSeconds()) + ". ";
      String otherwise =
          trouble.change() == null
              ? "No single change that was tried takes its pictures sooner."
              : new ChangeSentences(names, now.rig()).brief(trouble.change());
      return trouble.asked() ? late + move(trouble) + " " + otherwise : late + UNASKED;
    }
    if (!trouble.asked() && trouble.status() != Explanation.Status.NEEDS_MEASURING) {
      return "left out. " + UNASKED;
    }
    return switch (trouble.status()) {
      case HELD_BACK -> "left out by hand; " + places(trouble);
      case NEEDS_MEASURING -> "left out; it needs measuring.";
      case FITS_NO_RIG -> "left out; no rig can take it.";
      default -> "left out; " + places(trouble);
    };
  }

  /** What the planner can do at once comes first. */
  private static String move(Trouble trouble) {
    Move best = trouble.best();
    if (best == null) {
      return "At the cheapest place on each rig it would be no less late, or a rule would break.";
    }
    String what =
        switch (best.standing()) {
          case BETTER -> "and the plan better";
          case EQUAL -> "and the plan costs the same";
          case WORSE -> "though the plan as a whole worse";
        };
    return "Move it to %s as %d of %d: it would be %s, %s."
        .formatted(
            best.times().rig(),
            best.times().place() + 1,
            best.times().of(),
            Names.late(best.times().lateSeconds()),
            what);
  }

  private String places(Trouble trouble) {
    Move best = trouble.best();
    if (best == null) {
      return "no rig that it fits has a place for it.";
    }
    String where =
        "the best of %s, %s as %d of %d, "
            .formatted(
                Counted.of(trouble.placesTried(), "place"),
                best.times().rig(),
                best.times().place() + 1,
                best.times().of());
    String what = RigSentences.breaches(best.breaches().stream().limit(1).toList());
    return where
        + (best.breaches().isEmpty()
            ? "breaks no rule"
                + (trouble.status() == Explanation.Status.HELD_BACK
                    ? "."
                    : searched ? ": the search has not found it." : ": it can be taken in there.")
            : "breaks a rule. " + what);
  }
}
