package rigmorrow.app.calendar;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import biweekly.io.ParseWarning;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rigmorrow.app.runsheet.SampleDay;
import rigmorrow.app.runsheet.SamplePlan;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.Span;

/** The files are read back with another library than the one that writes them (RFC 5545). */
class CalendarsTest {
  private static final PlanStamp WHICH = new PlanStamp("Version 3 of the board", "before lunch");
  private static final Instant STAMP = Instant.parse("2026-03-03T10:00:00.123Z");
  private static final String ODD =
      "Comma, semicolon; back\\slash \"quotes\": æøåÆØÅ äöü ß 漢字 🏺 \\n";

  private final Batch batch = SampleDay.batch(SampleDay.SUMMER);
  private final Plan plan = SamplePlan.of(batch);

  @ParameterizedTest
  @CsvSource({
    "2026-03-29, Europe/Copenhagen",
    "2026-10-25, Europe/Copenhagen",
    "2026-06-01, Europe/Copenhagen",
    "2026-10-25, +05:30",
    "2026-10-25, Etc/GMT+9",
    "2026-04-05, Australia/Lord_Howe"
  })
  void everyEventStartsAndEndsAsPlanned(LocalDate date, ZoneId zone) {
    Batch day = SampleDay.batch(date, zone);
    Plan night = SamplePlan.withNightJob(day, 2 * 3600 - 60);
    Instant origin = date.atStartOfDay(zone).toInstant();
    List<CalendarFile> files = new Calendars(day, night, WHICH, STAMP).files(SheetChoice.ALL);

    for (int i = 0; i < night.rigs().size(); i++) {
      List<Span> jobs = night.rigs().get(i).jobs().stream().map(PlannedJob::whole).toList();
      assertThat(spans(read(files.get(i)))).isEqualTo(instants(origin, jobs));
    }
    for (int i = 0; i < day.floor().crew().size(); i++) {
      List<Span> tasks = tasks(night, day.floor().crew().get(i).id());
      assertThat(spans(read(files.get(night.rigs().size() + i))))
          .containsExactlyInAnyOrderElementsOf(instants(origin, tasks));
    }
  }

  @Test
  void theSecondHalfPastTwoIsOneHourAfterTheFirst() {
    Batch autumn = SampleDay.batch(LocalDate.of(2026, 10, 25), ZoneId.of("Europe/Copenhagen"));
    Plan night = SamplePlan.withNightJob(autumn, 3 * 3600 + 1800);

    ICalendar rig = read(new Calendars(autumn, night, WHICH, STAMP).files(SheetChoice.ALL).get(2));

    assertThat(rig.getEvents().get(0).getDateStart().getValue().toInstant())
        .isEqualTo("2026-10-25T01:30:00Z");
    assertThat(rig.getEvents().get(0).getDescription().getValue()).contains("Load 02:30–02:32 CET");
  }

  @Test
  void everyFileIsValidAndComplete() {
    for (CalendarFile file : files(batch)) {
      ICalendar calendar = read(file);

      assertThat(file.text())
          .startsWith("BEGIN:VCALENDAR\r\nPRODID:")
          .contains("\r\nVERSION:2.0\r\n");
      // The library does not count a time zone as a component, RFC 5545 (3.6) does.
      if (!calendar.getEvents().isEmpty()) {
        assertThat(calendar.validate(ICalVersion.V2_0).getWarnings()).as(file.name()).isEmpty();
      }
      assertThat(calendar.getEvents()).allMatch(event -> event.getDateTimeStamp() != null);
    }
  }

  @Test
  void aCalendarWithoutEventsStillHasAComponent() {
    CalendarFile spare = files(batch).get(2);

    assertThat(spare.name()).isEqualTo("rig-R3.ics");
    assertThat(spare.text()).doesNotContain("BEGIN:VEVENT");
    assertThat(read(spare).getTimezoneInfo().getComponents()).hasSize(1);
  }

  @Test
  void linesEndInCrLfAndHaveSeventyFiveOctetsAtMost() throws CharacterCodingException {
    for (CalendarFile file : files(odd(batch))) {
      assertThat(file.text().replace("\r\n", "")).doesNotContain("\r").doesNotContain("\n");
      for (String line : file.text().split("\r\n")) {
        byte[] octets = line.getBytes(UTF_8);
        assertThat(octets.length).as(line).isLessThanOrEqualTo(75);
        // A character that was torn in two would not survive this.
        assertThat(UTF_8.newDecoder().decode(ByteBuffer.wrap(octets)).toString()).isEqualTo(line);
      }
    }
  }

  @Test
  void everyTextComesBackAsItWas() {
    ICalendar rig = read(files(odd(batch)).get(0));

    assertThat(rig.getEvents().get(0).getSummary().getValue())
        .isEqualTo("DO NOT WORK FROM THIS PLAN: " + ODD + " (job J1)");
    assertThat(rig.getEvents().get(0).getDescription().getValue())
        .contains("Note: " + ODD)
        .contains("\nA plan is advice: local rules and qualified people decide;");
    assertThat(rig.getEvents().get(0).getLocation().getValue()).isEqualTo("Table one (R1)");
  }

  @Test
  void aLaterPlanKeepsTheIdentifiersAndCarriesALaterStamp() {
    Plan later = SamplePlan.withNightJob(batch, 100);
    Instant stamp = STAMP.plusSeconds(60);

    List<CalendarFile> before = files(batch);
    List<CalendarFile> after = new Calendars(batch, later, WHICH, stamp).files(SheetChoice.ALL);

    for (int i = 0; i < before.size(); i++) {
      assertThat(uids(read(after.get(i)))).containsAll(uids(read(before.get(i))));
    }
    assertThat(read(after.get(0)).getEvents().get(0).getDateTimeStamp().getValue().toInstant())
        .isEqualTo("2026-03-03T10:01:00Z");
  }

  @Test
  void noTwoEventsShareAnIdentifier() {
    List<String> all = new ArrayList<>();
    files(batch).forEach(file -> all.addAll(uids(read(file))));

    assertThat(all).hasSizeGreaterThan(20).doesNotHaveDuplicates();
  }

  @Test
  void anotherDayHasOtherIdentifiers() {
    Batch next = SampleDay.batch(SampleDay.SUMMER.plusDays(1));
    List<CalendarFile> other =
        new Calendars(next, SamplePlan.of(next), WHICH, STAMP).files(SheetChoice.ALL);

    assertThat(uids(read(other.get(0))))
        .doesNotContainAnyElementsOf(uids(read(files(batch).get(0))));
  }

  @Test
  void stepsAndCautionsAreInTheEvent() {
    VEvent bag = read(files(batch).get(1)).getEvents().get(0);

    assertThat(bag.getDescription().getValue())
        .contains(
            "- Fetch Rotator head (RH-1) from Shelf A, mount, align and test (3 min, 2 people)")
        .contains("Mind: Hanging load of 0.4 kg: check strings and hooks")
        .contains("Mind: Moving arm and turning plate")
        .contains("Changeover 08:00–08:03, Ada L. and Ben <B>");
  }

  @Test
  void onlyThoseAskedForGetAFile() {
    SheetChoice choice = new SheetChoice(Set.of("R2"), Set.of("cyn"));

    assertThat(
            new Calendars(batch, plan, WHICH, STAMP).files(choice).stream().map(CalendarFile::name))
        .containsExactly("rig-R2.ics", "operator-cyn.ics");
  }

  private List<CalendarFile> files(Batch day) {
    return new Calendars(day, plan, WHICH, STAMP).files(SheetChoice.ALL);
  }

  private static ICalendar read(CalendarFile file) {
    List<List<ParseWarning>> warnings = new ArrayList<>();
    List<ICalendar> calendars = Biweekly.parse(file.text()).warnings(warnings).all();
    assertThat(warnings.stream().flatMap(List::stream)).as(file.name()).isEmpty();
    assertThat(calendars).hasSize(1);
    return calendars.get(0);
  }

  /** What a calendar program takes an event for: one without an end ends as it starts. */
  private static List<List<Instant>> spans(ICalendar calendar) {
    return calendar.getEvents().stream()
        .map(
            event -> {
              Instant start = event.getDateStart().getValue().toInstant();
              Instant end =
                  event.getDateEnd() == null ? start : event.getDateEnd().getValue().toInstant();
              return List.of(start, end);
            })
        .toList();
  }

  private static List<List<Instant>> instants(Instant origin, List<Span> spans) {
    return spans.stream()
        .map(span -> List.of(origin.plusSeconds(span.start()), origin.plusSeconds(span.end())))
        .toList();
  }

  private static List<Span> tasks(Plan plan, String operator) {
    return plan.rigs().stream()
        .map(RigPlan::jobs)
        .flatMap(List::stream)
        .flatMap(CalendarsTest::parts)
        .filter(part -> part.operators().contains(operator))
        .map(Attended::span)
        .toList();
  }

  private static Stream<Attended> parts(PlannedJob job) {
    return Stream.of(
            Stream.ofNullable(job.changeover()),
            Stream.of(job.load(), new Attended(job.capture(), job.captureOperators())),
            Stream.of(job.unload()))
        .flatMap(part -> part);
  }

  private static List<String> uids(ICalendar calendar) {
    return calendar.getEvents().stream().map(event -> event.getUid().getValue()).toList();
  }

  private static Batch odd(Batch plain) {
    List<ShotJob> jobs = plain.shotList().jobs().stream().map(CalendarsTest::odd).toList();
    ShotList list = plain.shotList();
    return new Batch(plain.floor(), new ShotList(list.date(), list.days(), jobs, list.pins()));
  }

  private static ShotJob odd(ShotJob job) {
    return new ShotJob(
        job.id(),
        job.article(),
        job.gtin(),
        ODD,
        job.sample(),
        job.recipe(),
        job.item(),
        job.setup(),
        job.arrivesAt(),
        job.leavesAt(),
        job.promise(),
        job.weight(),
        ODD);
  }
}
