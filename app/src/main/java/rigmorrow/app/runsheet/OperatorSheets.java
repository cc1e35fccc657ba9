package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.app.runsheet.chart.DayCharts;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.app.runsheet.text.Fact;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** Fills the sheet of an operator. */
final class OperatorSheets {

  private final Plan plan;
  private final Names names;
  private final JobCards cards;
  private final TimeText times;
  private final List<Duty> duties;

  OperatorSheets(Plan plan, Names names, JobCards cards, TimeText times) {
    this.plan = plan;
    this.names = names;
    this.cards = cards;
    this.times = times;
    this.duties = Duty.of(plan, cards);
  }

  OperatorSheet of(Operator operator, String anchor) {
    List<Span> shifts = WorkingHours.shifts(operator, times.clock());
    List<Span> breaks = WorkingHours.breaks(operator, times.clock());
    List<List<Duty>> tasks = tasks(operator.id());
    DayCharts chart = new DayCharts(times);
    breaks.forEach(span -> chart.add(LaneKind.BREAK, span));
    DayLines<OperatorSheet.Task> day =
        new DayLines<>(times, "Shift starts", "Shift ends", "No task");
    day.workingHours(shifts);
    day.closures(operator.closed());
    breaks.forEach(span -> day.remark("Break", span, ""));
    int number = 0;
    for (List<Duty> task : tasks) {
      number++;
      day.entry(whole(task), task(task, operator.id(), number));
      chart.number(number, task.get(0).span().start());
      task.forEach(duty -> chart.add(duty.kind(), duty.span()));
    }
    return new OperatorSheet(
        anchor,
        operator.id(),
        operator.name(),
        tasks.size(),
        facts(shifts, breaks, tasks),
        cautions(tasks),
        chart.chart(),
        day.lines());
  }

  /** Parts of one job that follow each other are one task. */
  private List<List<Duty>> tasks(String operator) {
    List<List<Duty>> tasks = new ArrayList<>();
    for (Duty duty : duties) {
      if (duty.attended().operators().contains(operator)) {
        if (tasks.isEmpty() || !tasks.get(tasks.size() - 1).get(0).sameJob(duty)) {
          tasks.add(new ArrayList<>());
        }
        tasks.get(tasks.size() - 1).add(duty);
      }
    }
    return tasks;
  }

  private static Span whole(List<Duty> task) {
    int end = task.stream().mapToInt(duty -> duty.span().end()).max().orElseThrow();
    return new Span(task.get(0).span().start(), end);
  }

  private List<Fact> facts(List<Span> shifts, List<Span> breaks, List<List<Duty>> tasks) {
    int handsOnSeconds =
        tasks.stream().flatMap(List::stream).mapToInt(duty -> duty.span().seconds()).sum();
    return List.of(
        new Fact("Shift", spans(shifts)),
        new Fact("Breaks", spans(breaks)),
        new Fact("Tasks", String.valueOf(tasks.size())),
        new Fact("Hands-on time", TimeText.duration(handsOnSeconds)),
        new Fact("Times in", times.zone()));
  }

  /** A caution that holds on some of this operator's rigs only names them. */
  private List<String> cautions(List<List<Duty>> tasks) {
    Set<String> rigs = new LinkedHashSet<>();
    tasks.forEach(task -> rigs.add(task.get(0).rig()));
    Map<String, List<String>> rigsByCaution = new LinkedHashMap<>();
    for (RigPlan rig : plan.rigs()) {
      if (rigs.contains(rig.rig())) {
        cards
            .generalCautions(rig)
            .forEach(
                text ->
                    rigsByCaution.computeIfAbsent(text, key -> new ArrayList<>()).add(rig.rig()));
      }
    }
    return rigsByCaution.entrySet().stream()
        .map(
            entry ->
                (entry.getValue().size() == rigs.size()
                        ? ""
                        : "On " + String.join(", ", entry.getValue()) + ": ")
                    + entry.getKey())
        .toList();
  }

  private OperatorSheet.Task task(List<Duty> task, String operator, int number) {
    JobCard card = task.get(0).card();
    List<String> notes = new ArrayList<>(card.sampleTimes());
    if (!card.note().isEmpty()) {
      notes.add(card.note());
    }
    return new OperatorSheet.Task(
        number,
        names.place(task.get(0).rig()),
        card.label(),
        card.breaches(),
        task.stream().map(duty -> part(duty, operator)).toList(),
        card.cautions(),
        notes);
  }

  private OperatorSheet.Part part(Duty duty, String operator) {
    int people = duty.attended().operators().size();
    return new OperatorSheet.Part(
        duty.what(),
        times.span(duty.span()),
        people > 1 ? people + " people" : "",
        with(duty.attended().operators(), operator),
        duty.steps(),
        duty.how());
  }

  /** The one in charge stands first in a plan. */
  private String with(List<String> operators, String self) {
    if (operators.size() < 2) {
      return "";
    }
    List<String> others = operators.stream().filter(id -> !id.equals(self)).toList();
    return "With "
        + names.people(others)
        + (operators.get(0).equals(self)
            ? ", you are in charge"
            : ", " + names.people(operators.subList(0, 1)) + " is in charge");
  }

  private String spans(List<Span> spans) {
    return spans.isEmpty()
        ? "none"
        : spans.stream().map(times::span).collect(Collectors.joining(", "));
  }
}
