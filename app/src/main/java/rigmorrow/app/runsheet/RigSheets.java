package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigmorrow.app.runsheet.chart.DayCharts;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.app.runsheet.text.Fact;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** Fills the sheet of a rig. */
final class RigSheets {

  private final KitWaits waits;
  private final Names names;
  private final JobCards cards;
  private final TimeText times;

  /**
   * @param waits for what rigs wait, by job
   */
  RigSheets(Map<String, List<Wait>> waits, Names names, JobCards cards, TimeText times) {
    this.waits = new KitWaits(waits, names, times);
    this.names = names;
    this.cards = cards;
    this.times = times;
  }

  RigSheet of(RigPlan plan, String anchor) {
    Rig rig = names.rig(plan.rig());
    List<Span> open = WorkingHours.of(rig, times.clock());
    DayLines<RigSheet.Job> day =
        new DayLines<>(times, "Rig opens", "Rig closes", "Nothing planned");
    DayCharts chart = new DayCharts(times);
    day.workingHours(open);
    day.closures(rig.closed());
    for (Closure closure : rig.closed()) {
      chart.add(LaneKind.CLOSED, times.span(closure));
    }
    for (KitVisits.Leaving leaving : cards.kitLeaving(plan)) {
      day.warning("Kit leaves", leaving.span(), leaving.text());
    }
    int number = 0;
    for (PlannedJob job : plan.jobs()) {
      number++;
      waits.of(job).forEach(wait -> day.waiting(wait.spans(), wait.text()));
      day.entry(job.whole(), new RigSheet.Job(number, cards.of(job), parts(job, chart)));
      chart.number(number, job.whole().start());
    }
    return new RigSheet(
        anchor,
        rig.id(),
        rig.name(),
        plan.jobs().size(),
        facts(rig, plan, open),
        names.setup(rig.initialSetup()),
        cards.generalCautions(plan),
        cards.recipes(plan),
        chart.chart(),
        day.lines());
  }

  private List<Fact> facts(Rig rig, RigPlan plan, List<Span> open) {
    List<Fact> facts = new ArrayList<>();
    facts.add(new Fact("Kind", rig.kind()));
    facts.add(new Fact("Open", spans(open)));
    facts.add(new Fact("Jobs", String.valueOf(plan.jobs().size())));
    if (!plan.jobs().isEmpty()) {
      int start = plan.jobs().get(0).whole().start();
      int end = plan.jobs().get(plan.jobs().size() - 1).whole().end();
      facts.add(new Fact("First start to last end", times.span(new Span(start, end))));
    }
    facts.add(new Fact("Times in", times.zone()));
    return facts;
  }

  private String spans(List<Span> spans) {
    return spans.isEmpty()
        ? "not at all"
        : spans.stream().map(times::span).collect(Collectors.joining(", "));
  }

  private List<RigSheet.Part> parts(PlannedJob job, DayCharts chart) {
    List<RigSheet.Part> parts = new ArrayList<>();
    Attended changeover = job.changeover();
    int loadStart = job.load().span().start();
    int loadEnd = job.load().span().end();
    if (changeover != null) {
      int end = changeover.span().end();
      parts.add(part(LaneKind.CHANGEOVER, changeover, chart));
      if (job.warmedUpAt() > end) {
        parts.add(part(LaneKind.WARM_UP, alone(end, job.warmedUpAt()), chart));
      }
      waits(parts, end, loadStart, chart);
    }
    parts.add(part(LaneKind.LOAD, job.load(), chart));
    waits(parts, loadEnd, job.capture().start(), chart);
    Attended capture = new Attended(job.capture(), job.captureOperators());
    parts.add(part(LaneKind.CAPTURE, capture, chart));
    waits(parts, job.capture().end(), job.unload().span().start(), chart);
    parts.add(part(LaneKind.UNLOAD, job.unload(), chart));
    return parts;
  }

  private void waits(List<RigSheet.Part> parts, int from, int to, DayCharts chart) {
    if (to - from > DayLines.LONGEST_SILENT_GAP_SECONDS) {
      parts.add(part(LaneKind.WAIT, alone(from, to), chart));
    } else if (to > from) {
      chart.add(LaneKind.WAIT, new Span(from, to));
    }
  }

  private static Attended alone(int from, int to) {
    return new Attended(new Span(from, to), List.of());
  }

  private RigSheet.Part part(LaneKind kind, Attended part, DayCharts chart) {
    chart.add(kind, part.span());
    int people = part.operators().size();
    return new RigSheet.Part(
        kind.label(),
        times.span(part.span()),
        names.people(part.operators()),
        people > 1 ? people + " people" : "");
  }
}
