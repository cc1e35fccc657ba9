package rigmorrow.app.board.handout;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.BoardState.Handed;
import rigmorrow.app.board.handout.ChartRow.Bar;
import rigmorrow.app.board.handout.ChartRow.Mark;
import rigmorrow.app.print.Drawing;
import rigmorrow.app.print.PrintableText;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.report.PlanText;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * A whole plan as one drawing to be printed: a row for each rig or operator, a block for each day.
 * Kinds of time are told apart by pattern, which a legend names; nothing depends on colour.
 */
public final class PlanChart {
  private static final int LEFT = 330;
  private static final int WIDTH = 2200;
  private static final int RIGHT = 40;
  private static final int TOP = 150;
  private static final int LANE = 36;
  private static final int ROW = 88;
  private static final int LABEL_LINES = 2;
  private static final int AXIS = 46;
  private static final int LEGEND = 90;
  private static final int FONT = 22;
  private static final int SMALL = 17;
  private static final double SMALL_LETTER = 10;
  private static final int HOUR = 3600;
  private static final double PAPER_MM = 277;

  private static final DateTimeFormatter HOUR_TEXT =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final BoardState state;
  private final PlanStamp stamp;
  private final TimeText times;
  private final StringBuilder svg = new StringBuilder();
  private double y = TOP;

  /**
   * @param handed the plan to draw, and which one it is
   */
  public PlanChart(Handed handed) {
    this.state = handed.state();
    this.stamp = handed.stamp();
    this.times = new TimeText(PlanClock.of(state.batch()));
  }

  /**
   * The drawing.
   *
   * @param byCrew true for a row for each operator, false for each rig
   * @return an SVG document; encode it as UTF-8
   */
  public String svg(boolean byCrew) {
    List<ChartRow> rows = byCrew ? ChartRow.ofCrew(state) : ChartRow.ofRigs(state);
    heading();
    PlanClock clock = times.clock();
    for (int day = 0; day <= clock.days(); day++) {
      LocalDate date = clock.date().plusDays(day);
      Span whole =
          new Span(
              clock.secondsAt(date.atStartOfDay()),
              clock.secondsAt(date.plusDays(1).atStartOfDay()));
      Optional<Span> hours = hours(rows, whole);
      hours.ifPresent(span -> day(times.day(date), rows, span));
    }
    legend();
    double wide = RIGHT + LEFT + WIDTH + RIGHT;
    String head =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"-%d 0 %s %s\" width=\"%smm\" height=\"%smm\" role=\"img\" font-family=\"sans-serif\" font-size=\"%d\"><title>%s</title>"
            .formatted(
                RIGHT,
                number(wide),
                number(y),
                number(PAPER_MM),
                number(PAPER_MM * y / wide),
                FONT,
                escaped(title()));
    return PrintableText.forXml(head + svg + "</svg>");
  }

  private String title() {
    return state.plan().floor() + ", " + times.dates(state.plan().days());
  }

  private void heading() {
    text(0, 32, FONT + 8, "bold", title());
    text(0, 66, FONT, "bold", stamp.line());
    text(0, 96, FONT, "normal", "Times in " + times.zone() + ". " + PlanText.ADVICE);
    String warning = new JobBreaches(state.breaches()).warning();
    if (!warning.isEmpty()) {
      text(0, 130, FONT, "bold", warning);
    }
  }

  /**
   * From the hour in which the day's work starts to the hour in which it ends; none for no work.
   */
  private static Optional<Span> hours(List<ChartRow> rows, Span day) {
    int first = Integer.MAX_VALUE;
    int end = Integer.MIN_VALUE;
    for (ChartRow row : rows) {
      for (Bar bar : row.bars()) {
        if (bar.kind() != LaneKind.BREAK && bar.span().overlaps(day)) {
          first = Math.min(first, Math.max(day.start(), bar.span().start()));
          end = Math.max(end, Math.min(day.end(), bar.span().end()));
        }
      }
    }
    if (first >= end) {
      return Optional.empty();
    }
    int from = day.start() + (first - day.start()) / HOUR * HOUR;
    int to = day.start() + (end - day.start() + HOUR - 1) / HOUR * HOUR;
    return Optional.of(new Span(from, to));
  }

  private void day(String name, List<ChartRow> rows, Span hours) {
    text(0, y + FONT, FONT, "bold", name);
    double top = y + AXIS - 6;
    Drawing lines = new Drawing();
    for (int at = hours.start(); at <= hours.end(); at += HOUR) {
      ZonedDateTime time = times.clock().at(at);
      double x = x(at, hours);
      if (at < hours.end()) {
        text(x + 3, y + FONT, SMALL, "normal", HOUR_TEXT.format(time));
      }
      lines.rectangle(x, top, 1, (double) rows.size() * ROW);
    }
    path(lines);
    y += AXIS;
    for (ChartRow row : rows) {
      row(row, hours);
      y += ROW;
    }
  }

  private void row(ChartRow row, Span hours) {
    text(0, y + ROW - 18, FONT, "normal", shortened(row.name()));
    Drawing bars = new Drawing();
    for (Span closed : closed(row.open(), hours)) {
      bar(bars, LaneKind.CLOSED, closed, hours);
    }
    for (Bar bar : row.bars()) {
      if (bar.span().overlaps(hours)) {
        bar(bars, bar.kind(), bar.span(), hours);
      }
    }
    svg.append("<g transform=\"translate(0 %s)\">".formatted(number(y + ROW - LANE - 6)));
    path(bars);
    svg.append("</g>");
    labels(row.marks(), hours);
  }

  /** Ids where jobs start, on the first line that has room; one that finds none is left out. */
  private void labels(List<Mark> marks, Span hours) {
    double[] free = new double[LABEL_LINES];
    String last = "";
    for (Mark mark : inOrder(marks)) {
      double x = x(mark.at(), hours);
      boolean shown =
          mark.at() >= hours.start() && mark.at() < hours.end() && !mark.text().equals(last);
      for (int line = 0; shown && line < LABEL_LINES; line++) {
        if (x >= free[line]) {
          text(x, y + (SMALL + 1) * (line + 1) + 2, SMALL, "normal", mark.text());
          free[line] = x + SMALL_LETTER * (mark.text().length() + 1);
          last = mark.text();
          break;
        }
      }
    }
  }

  private static List<Mark> inOrder(List<Mark> marks) {
    return marks.stream().sorted(Comparator.comparingInt(Mark::at)).toList();
  }

  private static List<Span> closed(List<Span> open, Span hours) {
    List<Span> closed = new ArrayList<>();
    int from = hours.start();
    for (Span span : open) {
      if (span.overlaps(hours)) {
        if (span.start() > from) {
          closed.add(new Span(from, span.start()));
        }
        from = Math.max(from, span.end());
      }
    }
    if (from < hours.end()) {
      closed.add(new Span(from, hours.end()));
    }
    return closed;
  }

  private void legend() {
    y += LEGEND / 2.0;
    double x = 0;
    Drawing samples = new Drawing();
    for (LaneKind kind : LaneKind.values()) {
      kind.draw(samples, x, x + 70, LANE);
      text(x + 80, y + LANE - 6, FONT, "normal", kind.label());
      x += 250;
    }
    svg.append("<g transform=\"translate(0 %s)\">".formatted(number(y)));
    path(samples);
    svg.append("</g>");
    text(x, y + LANE - 6, FONT, "normal", "J1! is late for its promise");
    y += LEGEND / 2.0;
  }

  private static void bar(Drawing drawing, LaneKind kind, Span span, Span hours) {
    double from = x(Math.max(span.start(), hours.start()), hours);
    double to = x(Math.min(span.end(), hours.end()), hours);
    kind.draw(drawing, from, to, LANE);
  }

  private static double x(int at, Span hours) {
    return LEFT + WIDTH * (at - hours.start()) / (double) hours.seconds();
  }

  private void path(Drawing drawing) {
    svg.append("<path d=\"").append(drawing.path()).append("\"/>");
  }

  private void text(double x, double baseline, int size, String weight, String words) {
    svg.append(
        "<text x=\"%s\" y=\"%s\" font-size=\"%d\" font-weight=\"%s\">%s</text>"
            .formatted(number(x), number(baseline), size, weight, escaped(words)));
  }

  private static String shortened(String name) {
    int longest = 26;
    return name.length() <= longest ? name : name.substring(0, longest - 1) + "…";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
