package rigmorrow.app.runsheet.chart;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rigmorrow.app.print.Drawing;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/** Collects what a rig or an operator does and draws each day of it. */
public final class DayCharts {
  private static final int SECONDS_PER_HOUR = 3600;

  /** Numbers closer than this share of the width would run into each other. */
  private static final double NEAREST_NUMBERS = 0.022;

  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH", Locale.ROOT);
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

  private final TimeText times;
  private final Map<LaneKind, List<Span>> spans = new EnumMap<>(LaneKind.class);
  private final List<Numbered> numbers = new ArrayList<>();

  private record Numbered(int number, int at) {}

  /**
   * @param times of the plan
   */
  public DayCharts(TimeText times) {
    this.times = times;
  }

  /** Adds a span of one kind; one of no length is left out. */
  public void add(LaneKind kind, Span span) {
    if (span.seconds() > 0) {
      spans.computeIfAbsent(kind, key -> new ArrayList<>()).add(span);
    }
  }

  /** A job or task as the list below the chart numbers it. */
  public void number(int number, int at) {
    numbers.add(new Numbered(number, at));
  }

  /** What was collected, drawn. */
  public DayChart chart() {
    PlanClock clock = times.clock();
    List<DayChart.Day> days = new ArrayList<>();
    LocalDate last = lastDay();
    for (LocalDate date = clock.date(); !date.isAfter(last); date = date.plusDays(1)) {
      Span whole =
          new Span(
              clock.secondsAt(date.atStartOfDay()),
              clock.secondsAt(date.plusDays(1).atStartOfDay()));
      Span hours = hours(whole);
      if (hours.seconds() > 0) {
        boolean only = clock.days() == 1 && last.equals(clock.date());
        days.add(day(only ? "" : times.day(date), hours));
      }
    }
    return new DayChart(days);
  }

  /** A plan that breaks rules may go on for years; what is drawn ends the day after its last. */
  private LocalDate lastDay() {
    PlanClock clock = times.clock();
    LocalDate worked = clock.at(lastWork()).toLocalDate();
    LocalDate latest = clock.date().plusDays(clock.days());
    return worked.isAfter(latest) ? latest : worked;
  }

  private int lastWork() {
    return spans.entrySet().stream()
        .filter(entry -> entry.getKey().work())
        .flatMap(entry -> entry.getValue().stream())
        .mapToInt(span -> span.end() - 1)
        .max()
        .orElse(0);
  }

  /** From the hour in which the day's work starts to the hour in which it ends. */
  private Span hours(Span whole) {
    int first = Integer.MAX_VALUE;
    int end = Integer.MIN_VALUE;
    for (Map.Entry<LaneKind, List<Span>> entry : spans.entrySet()) {
      for (Span span : entry.getValue()) {
        if (entry.getKey().work() && span.overlaps(whole)) {
          first = Math.min(first, Math.max(whole.start(), span.start()));
          end = Math.max(end, Math.min(whole.end(), span.end()));
        }
      }
    }
    if (first >= end) {
      return new Span(whole.start(), whole.start());
    }
    int before = (first - whole.start()) / SECONDS_PER_HOUR;
    int hours = (end - whole.start() + SECONDS_PER_HOUR - 1) / SECONDS_PER_HOUR;
    return new Span(
        whole.start() + before * SECONDS_PER_HOUR, whole.start() + hours * SECONDS_PER_HOUR);
  }

  private DayChart.Day day(String title, Span hours) {
    List<DayChart.Lane> lanes = new ArrayList<>();
    for (LaneKind kind : LaneKind.values()) {
      List<Span> bars =
          spans.getOrDefault(kind, List.of()).stream().filter(hours::overlaps).toList();
      if (!bars.isEmpty()) {
        lanes.add(new DayChart.Lane(kind.label(), lane(kind, bars, hours)));
      }
    }
    return new DayChart.Day(title, spoken(title, hours), ticks(hours), numbers(hours), lanes);
  }

  private String spoken(String title, Span hours) {
    String day = title.isEmpty() ? "The day" : title;
    return day + " from " + times.at(hours.start()) + " to " + times.at(hours.end()) + " as bars";
  }

  private List<DayChart.Mark> ticks(Span hours) {
    List<DayChart.Mark> ticks = new ArrayList<>();
    for (int at = hours.start(); at < hours.end(); at += SECONDS_PER_HOUR) {
      var time = times.clock().at(at);
      // Some zones change their clocks by half an hour.
      ticks.add(
          new DayChart.Mark((time.getMinute() == 0 ? HOUR : TIME).format(time), left(at, hours)));
    }
    return ticks;
  }

  private List<DayChart.Mark> numbers(Span hours) {
    List<DayChart.Mark> shown = new ArrayList<>();
    double free = 0;
    for (Numbered numbered : numbers) {
      double place = share(numbered.at, hours);
      if (place >= free && place < 1) {
        shown.add(new DayChart.Mark(String.valueOf(numbered.number), left(numbered.at, hours)));
        free = place + NEAREST_NUMBERS;
      }
    }
    return shown;
  }

  private static String lane(LaneKind kind, List<Span> bars, Span hours) {
    Drawing drawing = new Drawing();
    for (int at = hours.start(); at <= hours.end(); at += SECONDS_PER_HOUR) {
      double x = Math.min(DayChart.WIDTH - 1, share(at, hours) * DayChart.WIDTH);
      drawing.rectangle(x, 0, 1, DayChart.LANE_HEIGHT);
    }
    for (Span bar : bars) {
      double from = Math.max(0, share(bar.start(), hours)) * DayChart.WIDTH;
      double to = Math.min(1, share(bar.end(), hours)) * DayChart.WIDTH;
      kind.draw(drawing, from, to, DayChart.LANE_HEIGHT);
    }
    return drawing.path();
  }

  private static double share(int at, Span hours) {
    return (at - hours.start()) / (double) hours.seconds();
  }

  private static String left(int at, Span hours) {
    return String.format(Locale.ROOT, "%.2f%%", 100 * share(at, hours));
  }
}
