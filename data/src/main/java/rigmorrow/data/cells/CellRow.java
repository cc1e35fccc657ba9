package rigmorrow.data.cells;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.model.money.DayCost;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.outcome.LoadCurve;
import rigmorrow.model.outcome.Outcome;

/** A cell as a row of texts and back. */
final class CellRow {
  /** Heads of the columns, in order. */
  static final List<String> HEADS =
      List.of(
          "scenario",
          "demand_percent",
          "batch",
          "seed",
          "took_ms",
          "days",
          "planned",
          "left_out",
          "promises",
          "kept",
          "late_weighted_s",
          "finished_s",
          "changeover_s",
          "crew_hands_on_s",
          "crew_regular_s",
          "crew_overtime_s",
          "rigs_open_s",
          "rigs_busy_s",
          "rigs_capture_s",
          "cost_regular",
          "cost_overtime",
          "cost_rigs",
          "cost_lateness",
          "cost_left_out",
          "breaches",
          "rig_load_s",
          "crew_load_s",
          "plan");

  private CellRow() {}

  static List<String> of(KeptCell kept) {
    Cell cell = kept.cell();
    Outcome outcome = cell.outcome();
    List<Object> row = new ArrayList<>();
    row.add(cell.key().scenario());
    row.add(cell.key().demandPercent());
    row.add(cell.key().batch());
    row.add(cell.key().seed());
    row.add(cell.millis());
    row.add(outcome.days());
    row.add(outcome.planned());
    row.add(outcome.leftOut());
    row.add(outcome.promises());
    row.add(outcome.kept());
    row.add(outcome.lateSeconds());
    row.add(outcome.finishedSeconds());
    row.add(outcome.changeoverSeconds());
    row.add(outcome.crew().handsOnSeconds());
    row.add(outcome.crew().regularSeconds());
    row.add(outcome.crew().overtimeSeconds());
    row.add(outcome.rigs().plannedBusySeconds());
    row.add(outcome.rigs().unitBusySeconds());
    row.add(outcome.rigs().productionSeconds());
    row.add(outcome.cost().regular());
    row.add(outcome.cost().overtime());
    row.add(outcome.cost().rigs());
    row.add(outcome.cost().lateness());
    row.add(outcome.cost().leftOut());
    row.add(outcome.breaches());
    row.add(curve(outcome.rigLoad()));
    row.add(curve(outcome.crewLoad()));
    row.add(kept.plan());
    return row.stream().map(String::valueOf).toList();
  }

  private static String curve(LoadCurve curve) {
    return curve.busySeconds().stream().map(String::valueOf).collect(Collectors.joining(" "));
  }

  /**
   * Reads a row.
   *
   * @throws IllegalArgumentException when it is none
   */
  static KeptCell cell(List<String> row) {
    if (row.size() != HEADS.size()) {
      throw new IllegalArgumentException(row.size() + " columns in place of " + HEADS.size());
    }
    Iterator<String> in = row.iterator();
    String scenario = in.next();
    double demand = number(in);
    Cell.Key key = new Cell.Key(scenario, demand, in.next(), large(in));
    long millis = large(in);
    Outcome outcome =
        new Outcome(
            whole(in),
            whole(in),
            whole(in),
            whole(in),
            whole(in),
            large(in),
            large(in),
            large(in),
            new Outcome.CrewTime(large(in), large(in), large(in)),
            new Outcome.RigTime(large(in), large(in), large(in)),
            new DayCost(number(in), number(in), number(in), number(in), number(in)),
            whole(in),
            load(in),
            load(in));
    return new KeptCell(in.next(), new Cell(key, outcome, millis));
  }

  private static LoadCurve load(Iterator<String> in) {
    List<Long> parts = new ArrayList<>();
    for (String part : in.next().split(" ", -1)) {
      parts.add(Long.valueOf(part));
    }
    return new LoadCurve(parts);
  }

  private static int whole(Iterator<String> in) {
    return Integer.parseInt(in.next());
  }

  private static long large(Iterator<String> in) {
    return Long.parseLong(in.next());
  }

  private static double number(Iterator<String> in) {
    return Double.parseDouble(in.next());
  }
}
