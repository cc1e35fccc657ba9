package rigmorrow.app.runsheet.text;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.Locale;
import rigmorrow.app.report.Durations;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * Writes seconds of the plan as floor time. A time on another day than the first carries its date;
 * where the clock changes within the plan every time carries the zone's abbreviation, since an hour
 * may come twice.
 */
public final class TimeText {

  private static final DateTimeFormatter TIME = format("HH:mm");
  private static final DateTimeFormatter DATE = format("EEE\u00a0d\u00a0MMM");
  private static final DateTimeFormatter LONG_DATE = format("EEEE d MMMM yyyy");
  private static final DateTimeFormatter ABBREVIATION = format("z");
  private static final DateTimeFormatter OFFSET = format("xxx");

  /** Keeps a number and its unit on one line. */
  public static final char NO_BREAK = '\u00a0';

  private final PlanClock clock;
  private final boolean clockChanges;

  /**
   * @param clock of the plan
   */
  public TimeText(PlanClock clock) {
    this.clock = clock;
    this.clockChanges = !offset(clock.at(0)).equals(offset(clock.at(clock.horizonSeconds())));
  }

  private static DateTimeFormatter format(String pattern) {
    return DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH);
  }

  /** All seconds of the plan. */
  public Span plan() {
    return new Span(0, clock.horizonSeconds());
  }

  /** The clock of the plan. */
  public PlanClock clock() {
    return clock;
  }

  /** A closure in seconds of the plan. */
  public Span span(Closure closure) {
    return new Span(clock.secondsAt(closure.from()), clock.secondsAt(closure.to()));
  }

  /** The days of the plan in words. */
  public String dates(int days) {
    String first = LONG_DATE.format(clock.date());
    return days == 1 ? first : first + " to " + LONG_DATE.format(clock.date().plusDays(days - 1L));
  }

  /** A day of the plan, in short. */
  public String day(LocalDate date) {
    return DATE.format(date);
  }

  /** The zone with its abbreviation and offset, and when they change. */
  public String zone() {
    ZonedDateTime start = clock.at(0);
    String first = clock.zone().getId() + ", " + offset(start);
    if (!clockChanges) {
      return first;
    }
    ZoneOffsetTransition change = clock.zone().getRules().nextTransition(start.toInstant());
    ZonedDateTime after = change.getInstant().atZone(clock.zone());
    return first
        + " until "
        + date(after.toLocalDate())
        + TIME.format(change.getDateTimeBefore())
        + ", then "
        + offset(after)
        + " from "
        + TIME.format(after);
  }

  /** A second of the plan. */
  public String at(int seconds) {
    ZonedDateTime time = clock.at(seconds);
    return date(time.toLocalDate()) + TIME.format(time) + abbreviation(time);
  }

  /** A local time of the floor file or the shot list. */
  public String local(LocalDateTime time) {
    return at(clock.secondsAt(time));
  }

  /**
   * A span; the end carries a date only where it differs from the start's. A line may end where the
   * text has a line feed, and nowhere else.
   */
  public String span(Span span) {
    ZonedDateTime start = clock.at(span.start());
    ZonedDateTime end = clock.at(span.end());
    boolean sameDay = start.toLocalDate().equals(end.toLocalDate());
    boolean sameOffset = start.getOffset().equals(end.getOffset());
    return date(start.toLocalDate()).replace(' ', '\n')
        + TIME.format(start)
        + (sameOffset && sameDay ? "" : abbreviation(start))
        + (sameDay ? "–" : " –\n" + DATE.format(end) + "\n")
        + TIME.format(end)
        + abbreviation(end);
  }

  /** How long after its promise the pictures of a job are taken, in seconds; 0 when kept. */
  public int lateSeconds(ShotJob job, PlannedJob planned) {
    Promise promise = job.promise();
    return promise == null
        ? 0
        : Math.max(0, planned.capture().end() - clock.secondsAt(promise.dueAt()));
  }

  /** A length of time, as everywhere for people; never broken over two lines. */
  public static String duration(int seconds) {
    return unbroken(Durations.of(seconds));
  }

  /** How long a span is whose ends stand beside it; never broken over two lines. */
  public static String beside(Span span) {
    return unbroken(Durations.beside(span.start(), span.end()));
  }

  /** How late; never broken over two lines. */
  public static String late(int seconds) {
    return unbroken(Durations.late(seconds));
  }

  /** What there is to spare; never broken over two lines. */
  public static String available(int seconds) {
    return unbroken(Durations.available(seconds));
  }

  /** To the second, for a single step; never broken over two lines. */
  public static String exact(int seconds) {
    return unbroken(Durations.exact(seconds));
  }

  private static String unbroken(String text) {
    return text.replace(' ', NO_BREAK);
  }

  private String date(LocalDate date) {
    return date.equals(clock.date()) ? "" : DATE.format(date) + " ";
  }

  private String abbreviation(ZonedDateTime time) {
    return clockChanges ? NO_BREAK + ABBREVIATION.format(time) : "";
  }

  private static String offset(ZonedDateTime time) {
    return ABBREVIATION.format(time) + " (UTC" + OFFSET.format(time) + ")";
  }
}
