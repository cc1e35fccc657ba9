package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** Fills the sheet of a rig. */
final class RigSheets {

  private final Names names;
  private final JobCards cards;
  private final TimeText times;

  RigSheets(Names names, JobCards cards, TimeText times) {
    this.names = names;
    this.cards = cards;
    this.times = times;
  }

  RigSheet of(RigPlan plan, String anchor) {
    Rig rig = names.rig(plan.rig());
    List<Span> open = WorkingHours.of(rig, times.clock());
    DayLines<RigSheet.Job> day =
        new DayLines<>(times, "Rig opens", "Rig closes", "Nothing planned");
    day.workingHours(open);
    day.closures(rig.closed());
    int number = 0;
    for (PlannedJob job : plan.jobs()) {
      number++;
      day.entry(job.whole(), new RigSheet.Job(number, cards.of(job, rig), parts(job)));
    }
    return new RigSheet(
        anchor,
        rig.id(),
        rig.name(),
        plan.jobs().size(),
        facts(rig, plan, open),
        names.setup(rig.initialSetup()),
        day.lines());
  }

  private List<SheetDocument.Fact> facts(Rig rig, RigPlan plan, List<Span> open) {
    List<SheetDocument.Fact> facts = new ArrayList<>();
    facts.add(new SheetDocument.Fact("Kind", rig.kind()));
    facts.add(new SheetDocument.Fact("Open", spans(open)));
    facts.add(new SheetDocument.Fact("Jobs", String.valueOf(plan.jobs().size())));
    if (!plan.jobs().isEmpty()) {
      int start = plan.jobs().get(0).whole().start();
      int end = plan.jobs().get(plan.jobs().size() - 1).whole().end();
      facts.add(
          new SheetDocument.Fact("First start to last end", times.span(new Span(start, end))));
    }
    facts.add(new SheetDocument.Fact("Times in", times.zone()));
    return facts;
  }

  private String spans(List<Span> spans) {
    return spans.isEmpty()
        ? "not at all"
        : spans.stream().map(times::span).collect(Collectors.joining(", "));
  }

  private List<RigSheet.Part> parts(PlannedJob job) {
    List<RigSheet.Part> parts = new ArrayList<>();
    Attended changeover = job.changeover();
    int loadStart = job.load().span().start();
    int loadEnd = job.load().span().end();
    if (changeover != null) {
      int end = changeover.span().end();
      parts.add(attended("Changeover", changeover));
      if (job.warmedUpAt() > end) {
        parts.add(alone("Warm-up", new Span(end, job.warmedUpAt())));
      }
      waits(parts, end, loadStart);
    }
    parts.add(attended("Load", job.load()));
    waits(parts, loadEnd, job.capture().start());
    parts.add(
        job.captureOperators().isEmpty()
            ? alone("Capture", job.capture())
            : attended("Capture", new Attended(job.capture(), job.captureOperators())));
    waits(parts, job.capture().end(), job.unload().span().start());
    parts.add(attended("Unload", job.unload()));
    return parts;
  }

  private void waits(List<RigSheet.Part> parts, int from, int to) {
    if (to - from > DayLines.LONGEST_SILENT_GAP_SECONDS) {
      parts.add(alone("Rig waits", new Span(from, to)));
    }
  }

  private RigSheet.Part alone(String what, Span span) {
    return new RigSheet.Part(what, times.span(span), TimeText.duration(span.seconds()), "", "");
  }

  private RigSheet.Part attended(String what, Attended part) {
    int people = part.operators().size();
    return new RigSheet.Part(
        what,
        times.span(part.span()),
        TimeText.duration(part.span().seconds()),
        names.people(part.operators()),
        people > 1 ? people + " people" : "");
  }
}
