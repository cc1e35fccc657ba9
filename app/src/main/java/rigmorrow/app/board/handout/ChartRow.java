package rigmorrow.app.board.handout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/**
 * What one rig or operator does, as one row of a chart.
 *
 * @param name of the rig or operator
 * @param bars in any order; those of work do not overlap in a workable plan
 * @param marks ids of jobs where they start
 * @param open when the rig or operator is there, breaks included
 */
record ChartRow(String name, List<Bar> bars, List<Mark> marks, List<Span> open) {

  /** A stretch of one kind. */
  record Bar(LaneKind kind, Span span) {}

  /** A text that stands where something starts. */
  record Mark(int at, String text) {}

  /** A row for each rig, in floor order. */
  static List<ChartRow> ofRigs(BoardState state) {
    PlanClock clock = PlanClock.of(state.batch());
    Names names = new Names(state.batch());
    List<ChartRow> rows = new ArrayList<>();
    for (RigPlan plan : state.plan().rigs()) {
      List<Bar> bars = new ArrayList<>();
      List<Mark> marks = new ArrayList<>();
      for (PlannedJob job : plan.jobs()) {
        marks.add(mark(job, job.whole().start()));
        addParts(bars, job);
      }
      List<Span> open = WorkingHours.of(names.rig(plan.rig()), clock);
      rows.add(new ChartRow(names.place(plan.rig()), bars, marks, open));
    }
    return rows;
  }

  /** A row for each operator, in floor order. */
  static List<ChartRow> ofCrew(BoardState state) {
    PlanClock clock = PlanClock.of(state.batch());
    Map<String, ChartRow> rows = new HashMap<>();
    List<ChartRow> all = new ArrayList<>();
    for (Operator operator : state.batch().floor().crew()) {
      List<Bar> bars = new ArrayList<>();
      WorkingHours.breaks(operator, clock).forEach(span -> bars.add(new Bar(LaneKind.BREAK, span)));
      List<Span> shifts = WorkingHours.shifts(operator, clock);
      ChartRow row = new ChartRow(operator.name(), bars, new ArrayList<>(), shifts);
      rows.put(operator.id(), row);
      all.add(row);
    }
    for (RigPlan plan : state.plan().rigs()) {
      for (PlannedJob job : plan.jobs()) {
        Attended changeover = job.changeover();
        if (changeover != null) {
          addTask(rows, changeover, LaneKind.CHANGEOVER, job);
        }
        addTask(rows, job.load(), LaneKind.LOAD, job);
        addTask(rows, new Attended(job.capture(), job.captureOperators()), LaneKind.CAPTURE, job);
        addTask(rows, job.unload(), LaneKind.UNLOAD, job);
      }
    }
    return all;
  }

  private static void addTask(
      Map<String, ChartRow> rows, Attended part, LaneKind kind, PlannedJob job) {
    for (String operator : part.operators()) {
      ChartRow row = rows.get(operator);
      if (row != null && part.span().seconds() > 0) {
        row.bars.add(new Bar(kind, part.span()));
        row.marks.add(mark(job, part.span().start()));
      }
    }
  }

  private static void addParts(List<Bar> bars, PlannedJob job) {
    Attended changeover = job.changeover();
    int load = job.load().span().start();
    if (changeover != null) {
      int end = changeover.span().end();
      int warm = Math.min(load, Math.max(end, job.warmedUpAt()));
      add(bars, LaneKind.CHANGEOVER, changeover.span().start(), end);
      add(bars, LaneKind.WARM_UP, end, warm);
      add(bars, LaneKind.WAIT, warm, load);
    }
    add(bars, LaneKind.LOAD, load, job.load().span().end());
    add(bars, LaneKind.WAIT, job.load().span().end(), job.capture().start());
    add(bars, LaneKind.CAPTURE, job.capture().start(), job.capture().end());
    add(bars, LaneKind.WAIT, job.capture().end(), job.unload().span().start());
    add(bars, LaneKind.UNLOAD, job.unload().span().start(), job.unload().span().end());
  }

  private static void add(List<Bar> bars, LaneKind kind, int from, int to) {
    if (to > from) {
      bars.add(new Bar(kind, new Span(from, to)));
    }
  }

  private static Mark mark(PlannedJob job, int at) {
    return new Mark(at, job.lateSeconds() > 0 ? job.job() + "!" : job.job());
  }
}
