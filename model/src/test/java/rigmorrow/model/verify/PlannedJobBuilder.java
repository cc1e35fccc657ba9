package rigmorrow.model.verify;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.time.Span;

/** Writes one planned job down part by part, times in seconds of the day. */
final class PlannedJobBuilder {
  private final String job;
  private final List<ChangeoverStep> steps = new ArrayList<>();
  private @Nullable Attended changeover;
  private int warmedUpAt;
  private Attended load = at(0, 0);
  private Span capture = new Span(0, 0);
  private List<String> captureOperators = List.of();
  private Attended unload = at(0, 0);
  private List<KitUse> kit = List.of();
  private int lateSeconds;

  PlannedJobBuilder(String job) {
    this.job = job;
  }

  /** A copy to change. */
  static PlannedJobBuilder from(PlannedJob planned) {
    PlannedJobBuilder copy = new PlannedJobBuilder(planned.job());
    copy.steps.addAll(planned.steps());
    copy.changeover = planned.changeover();
    copy.warmedUpAt = planned.warmedUpAt();
    copy.load = planned.load();
    copy.capture = planned.capture();
    copy.captureOperators = planned.captureOperators();
    copy.unload = planned.unload();
    copy.kit = planned.kit();
    copy.lateSeconds = planned.lateSeconds();
    return copy;
  }

  static Attended at(int start, int end, String... operators) {
    return new Attended(new Span(start, end), List.of(operators));
  }

  PlannedJobBuilder step(int attended, int unattended, int people, String... skills) {
    steps.add(new ChangeoverStep("step", attended, unattended, people, Set.of(skills)));
    return this;
  }

  PlannedJobBuilder withoutSteps() {
    steps.clear();
    return this;
  }

  PlannedJobBuilder changeover(@Nullable Attended other, int warm) {
    changeover = other;
    warmedUpAt = warm;
    return this;
  }

  PlannedJobBuilder load(int start, int end, String... operators) {
    load = at(start, end, operators);
    return this;
  }

  PlannedJobBuilder capture(int start, int end, String... operators) {
    capture = new Span(start, end);
    captureOperators = List.of(operators);
    return this;
  }

  PlannedJobBuilder unload(int start, int end, String... operators) {
    unload = at(start, end, operators);
    return this;
  }

  PlannedJobBuilder kit(KitUse... uses) {
    kit = List.of(uses);
    return this;
  }

  PlannedJobBuilder late(int seconds) {
    lateSeconds = seconds;
    return this;
  }

  /** Every part later (or earlier) by as much. */
  PlannedJobBuilder moved(int seconds) {
    if (changeover != null) {
      changeover = moved(changeover, seconds);
    }
    warmedUpAt += seconds;
    load = moved(load, seconds);
    capture = new Span(capture.start() + seconds, capture.end() + seconds);
    unload = moved(unload, seconds);
    return this;
  }

  PlannedJob build() {
    return new PlannedJob(
        job,
        steps,
        changeover,
        warmedUpAt,
        load,
        capture,
        captureOperators,
        unload,
        kit,
        lateSeconds);
  }

  private static Attended moved(Attended part, int seconds) {
    Span span = part.span();
    return new Attended(new Span(span.start() + seconds, span.end() + seconds), part.operators());
  }
}
