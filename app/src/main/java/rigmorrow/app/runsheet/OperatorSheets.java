package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** Fills the sheet of an operator. */
final class OperatorSheets {

  private final Names names;
  private final TimeText times;
  private final List<Duty> duties = new ArrayList<>();

  private enum Part {
    CHANGEOVER("Changeover"),
    LOAD("Load"),
    CAPTURE("Stay during capture"),
    UNLOAD("Unload");

    private final String label;

    Part(String label) {
      this.label = label;
    }
  }

  /** An attended part of a job, whoever does it. */
  private record Duty(Part part, Attended attended, String rig, JobCard card) {
    private Span span() {
      return attended.span();
    }

    private JobCard.Label job() {
      return card.label();
    }
  }

  OperatorSheets(Plan plan, Names names, JobCards cards, TimeText times) {
    this.names = names;
    this.times = times;
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        add(job, rig.rig(), cards.of(job, names.rig(rig.rig())));
      }
    }
    duties.sort(
        Comparator.<Duty>comparingInt(duty -> duty.span().start())
            .thenComparingInt(duty -> duty.span().end()));
  }

  private void add(PlannedJob job, String rig, JobCard card) {
    Attended changeover = job.changeover();
    if (changeover != null) {
      duties.add(new Duty(Part.CHANGEOVER, changeover, rig, card));
    }
    duties.add(new Duty(Part.LOAD, job.load(), rig, card));
    if (!job.captureOperators().isEmpty()) {
      duties.add(
          new Duty(Part.CAPTURE, new Attended(job.capture(), job.captureOperators()), rig, card));
    }
    duties.add(new Duty(Part.UNLOAD, job.unload(), rig, card));
  }

  OperatorSheet of(Operator operator, String anchor) {
    List<Span> shifts = WorkingHours.of(withoutBreaks(operator), times.clock());
    List<Span> breaks = breaks(shifts, WorkingHours.of(operator, times.clock()));
    DayLines<OperatorSheet.Task> day =
        new DayLines<>(times, "Shift starts", "Shift ends", "No task");
    day.workingHours(shifts);
    day.closures(operator.closed());
    breaks.forEach(span -> day.remark("Break", span, ""));
    List<Duty> own =
        duties.stream().filter(duty -> duty.attended.operators().contains(operator.id())).toList();
    int told = 0;
    for (int i = 0; i < own.size(); i++) {
      boolean sameJob = i > 0 && own.get(i - 1).job().equals(own.get(i).job());
      told = sameJob ? told : i + 1;
      day.entry(own.get(i).span(), task(own.get(i), operator.id(), i + 1, told));
    }
    List<SheetDocument.Fact> facts =
        List.of(
            new SheetDocument.Fact("Shift", spans(shifts)),
            new SheetDocument.Fact("Breaks", spans(breaks)),
            new SheetDocument.Fact("Tasks", String.valueOf(own.size())),
            new SheetDocument.Fact("Hands-on time", TimeText.duration(handsOnSeconds(own))),
            new SheetDocument.Fact("Times in", times.zone()));
    return new OperatorSheet(
        anchor, operator.id(), operator.name(), own.size(), facts, day.lines());
  }

  private static int handsOnSeconds(List<Duty> own) {
    return own.stream().mapToInt(duty -> duty.span().seconds()).sum();
  }

  /** The cautions of a job stand once where its tasks follow each other, at the first of them. */
  private OperatorSheet.Task task(Duty duty, String operator, int number, int cautionsAt) {
    JobCard card = duty.card;
    boolean changeover = duty.part == Part.CHANGEOVER;
    int people = duty.attended.operators().size();
    return new OperatorSheet.Task(
        number,
        times.span(duty.span()),
        TimeText.duration(duty.span().seconds()),
        names.place(duty.rig),
        duty.part.label,
        card.label(),
        card.breaches(),
        people > 1 ? people + " people" : "",
        with(duty.attended.operators(), operator),
        changeover ? card.steps() : List.of(),
        how(duty),
        cautionsAt < number ? List.of() : card.cautions(),
        cautionsAt < number && !card.cautions().isEmpty()
            ? "Cautions as at task " + cautionsAt
            : "");
  }

  private static List<String> how(Duty duty) {
    return switch (duty.part) {
      case CHANGEOVER -> duty.card.kit();
      case LOAD -> duty.card.loading();
      case CAPTURE -> duty.card.pictures();
      case UNLOAD -> duty.card.unloading();
    };
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

  private static Operator withoutBreaks(Operator operator) {
    return new Operator(
        operator.id(),
        operator.name(),
        operator.skills(),
        operator.shifts(),
        List.of(),
        operator.closed());
  }

  /** What the shifts have and the working hours have not. */
  private static List<Span> breaks(List<Span> shifts, List<Span> working) {
    List<Span> breaks = new ArrayList<>();
    for (Span shift : shifts) {
      int from = shift.start();
      for (Span span : working) {
        if (shift.contains(span)) {
          if (span.start() > from) {
            breaks.add(new Span(from, span.start()));
          }
          from = span.end();
        }
      }
      if (from < shift.end()) {
        breaks.add(new Span(from, shift.end()));
      }
    }
    return breaks;
  }
}
