package rigmorrow.data.plan;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/**
 * Writes a plan as a table for spreadsheets (RFC 4180), one row for each job, first the planned
 * ones rig by rig, then those left out. Times are floor time.
 */
public final class PlanCsvWriter {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
  private static final List<String> HEADINGS =
      List.of(
          "rig",
          "place",
          "job",
          "article",
          "name",
          "changeoverStart",
          "changeoverEnd",
          "loadStart",
          "loadEnd",
          "captureStart",
          "captureEnd",
          "unloadStart",
          "unloadEnd",
          "operators",
          "kit",
          "promise",
          "must",
          "lateMinutes",
          "reason",
          "plan");

  private final PlanClock clock;
  private final Map<String, ShotJob> jobsById = new HashMap<>();
  private final StringBuilder text = new StringBuilder();
  private final String which;

  private PlanCsvWriter(PlanClock clock, ShotList list, String which) {
    this.clock = clock;
    this.which = which;
    list.jobs().forEach(job -> jobsById.put(job.id(), job));
  }

  /**
   * The text of the table.
   *
   * @param plan what is planned
   * @param list the shot list it was made for, for article, name and promise
   * @param which plan it is, in words, in every row: rows are sorted, cut and pasted; may be empty
   */
  public static String write(Plan plan, ShotList list, String which) {
    PlanClock clock = new PlanClock(plan.zone(), plan.date(), plan.days());
    return new PlanCsvWriter(clock, list, which).table(plan);
  }

  /** The headings of the table, in order. */
  static List<String> headings() {
    return HEADINGS;
  }

  private String table(Plan plan) {
    row(HEADINGS);
    for (RigPlan rig : plan.rigs()) {
      for (int place = 0; place < rig.jobs().size(); place++) {
        planned(rig.rig(), place, rig.jobs().get(place));
      }
    }
    plan.leftOut().forEach(this::leftOut);
    return text.toString();
  }

  private void planned(String rig, int place, PlannedJob job) {
    List<String> cells = new ArrayList<>(List.of(rig, String.valueOf(place + 1)));
    names(cells, job.job());
    Attended changeover = job.changeover();
    times(cells, changeover == null ? null : changeover.span());
    times(cells, job.load().span());
    times(cells, job.capture());
    times(cells, job.unload().span());
    cells.add(String.join(" ", people(job)));
    cells.add(job.kit().stream().map(KitUse::unit).collect(Collectors.joining(" ")));
    promise(cells, job.job());
    cells.add(String.valueOf((job.lateSeconds() + 59) / 60));
    cells.add("");
    cells.add(which);
    row(cells);
  }

  private void leftOut(LeftOut job) {
    List<String> cells = new ArrayList<>(List.of("", ""));
    names(cells, job.job());
    for (int part = 0; part < 4; part++) {
      times(cells, null);
    }
    cells.addAll(List.of("", ""));
    promise(cells, job.job());
    cells.add("");
    cells.add(String.join(" ", job.sentences()));
    cells.add(which);
    row(cells);
  }

  private void names(List<String> cells, String id) {
    ShotJob job = jobsById.get(id);
    cells.add(id);
    cells.add(job == null ? "" : job.article());
    cells.add(job == null ? "" : job.name());
  }

  private void times(List<String> cells, @Nullable Span span) {
    cells.add(span == null ? "" : time(clock.at(span.start()).toLocalDateTime()));
    cells.add(span == null ? "" : time(clock.at(span.end()).toLocalDateTime()));
  }

  private void promise(List<String> cells, String id) {
    ShotJob job = jobsById.get(id);
    Promise promise = job == null ? null : job.promise();
    cells.add(promise == null ? "" : time(promise.dueAt()));
    cells.add(promise == null ? "" : promise.must() ? "yes" : "no");
  }

  private static String time(LocalDateTime time) {
    return TIME.format(time);
  }

  private static Set<String> people(PlannedJob job) {
    Set<String> people = new LinkedHashSet<>();
    Attended changeover = job.changeover();
    if (changeover != null) {
      people.addAll(changeover.operators());
    }
    people.addAll(job.load().operators());
    people.addAll(job.captureOperators());
    people.addAll(job.unload().operators());
    return people;
  }

  private void row(List<String> cells) {
    text.append(cells.stream().map(PlanCsvWriter::cell).collect(Collectors.joining(",")));
    text.append("\r\n");
  }

  /**
   * One cell. A spreadsheet would run a cell that starts like a formula; the apostrophe makes it a
   * text (OWASP, CSV injection). Quotes as in RFC 4180, section 2.
   */
  static String cell(String value) {
    String safe = value.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + value : value;
    return safe.matches("(?s).*[\",\\r\\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
