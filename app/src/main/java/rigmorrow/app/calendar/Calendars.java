package rigmorrow.app.calendar;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.Duty;
import rigmorrow.app.runsheet.JobCard;
import rigmorrow.app.runsheet.JobCards;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.verify.PlanChecker;

/**
 * Writes a plan as calendars: a rig's has an event for each job, an operator's one for each part of
 * a job that they do. The same piece of work keeps its identifier from plan to plan of a batch, so
 * that reading a later plan moves what an earlier one put there.
 */
public final class Calendars {
  private static final String ENDING = ".ics";

  private final Batch batch;
  private final Plan plan;
  private final Instant stamp;
  private final TimeText times;
  private final Names names;
  private final JobCards cards;
  private final EventText text;
  private final List<Duty> duties;
  private final Map<String, List<String>> generalByRig = new HashMap<>();

  /**
   * @param batch the floor and the shot list that were planned
   * @param plan a plan of that batch; events of one that breaks rules say so
   * @param which plan it is; every event says so
   * @param stamp when the calendars are made; a later one counts more
   * @throws IllegalArgumentException when the plan is not of the batch
   */
  public Calendars(Batch batch, Plan plan, PlanStamp which, Instant stamp) {
    JobBreaches breaches = new JobBreaches(PlanChecker.check(batch, plan));
    this.batch = batch;
    this.plan = plan;
    this.stamp = stamp.truncatedTo(ChronoUnit.SECONDS);
    this.times = new TimeText(PlanClock.of(batch));
    this.names = new Names(batch);
    this.cards = new JobCards(batch, plan, names, times, breaches);
    this.text = new EventText(breaches.warning(), times.zone(), which.whole());
    this.duties = Duty.of(plan, cards);
    plan.rigs().forEach(rig -> generalByRig.put(rig.rig(), cards.generalCautions(rig)));
  }

  /** The files, rigs first, in floor order. Names do not depend on whose are asked for. */
  public List<CalendarFile> files(SheetChoice choice) {
    FileNames rigFiles =
        new FileNames("rig-", batch.floor().rigs().stream().map(Rig::id).toList(), ENDING);
    FileNames operatorFiles =
        new FileNames(
            "operator-", batch.floor().crew().stream().map(Operator::id).toList(), ENDING);
    List<CalendarFile> files = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      if (choice.rig(rig.rig())) {
        String content = CalendarText.of(names.place(rig.rig()), jobs(rig), stamp);
        files.add(new CalendarFile(rigFiles.of(rig.rig()), content));
      }
    }
    for (Operator operator : batch.floor().crew()) {
      if (choice.operator(operator.id())) {
        String content = CalendarText.of(operator.name(), tasks(operator.id()), stamp);
        files.add(new CalendarFile(operatorFiles.of(operator.id()), content));
      }
    }
    return files;
  }

  private List<Event> jobs(RigPlan rig) {
    List<Event> events = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (PlannedJob job : rig.jobs()) {
      JobCard card = cards.of(job);
      String description = text.job(card, parts(job), general(rig.rig()));
      String summary = text.summary("", card);
      events.add(event(uid(taken, job.job(), "job"), job.whole(), summary, rig.rig(), description));
    }
    return events;
  }

  private List<Event> tasks(String operator) {
    List<Event> events = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    for (Duty duty : duties) {
      List<String> people = duty.attended().operators();
      if (people.contains(operator)) {
        String with = people.size() > 1 ? "Together: " + names.people(people) : "";
        String uid = uid(taken, duty.card().label().id(), duty.kind().name(), operator);
        String summary = text.summary(duty.what() + ": ", duty.card());
        String description = text.task(duty, with, general(duty.rig()));
        events.add(event(uid, duty.span(), summary, duty.rig(), description));
      }
    }
    return events;
  }

  private List<String> general(String rig) {
    return generalByRig.getOrDefault(rig, List.of());
  }

  private Event event(String uid, Span span, String summary, String rig, String description) {
    PlanClock clock = times.clock();
    return new Event(
        uid,
        clock.at(span.start()).toInstant(),
        clock.at(span.end()).toInstant(),
        summary,
        names.place(rig),
        description);
  }

  private List<String> parts(PlannedJob job) {
    List<String> parts = new ArrayList<>();
    Attended changeover = job.changeover();
    if (changeover != null) {
      parts.add(part("Changeover", changeover));
    }
    parts.add(part("Load", job.load()));
    parts.add(part("Capture", new Attended(job.capture(), job.captureOperators())));
    parts.add(part("Unload", job.unload()));
    return parts;
  }

  private String part(String what, Attended part) {
    String who = names.people(part.operators());
    return what + " " + times.span(part.span()) + (who.isEmpty() ? "" : ", " + who);
  }

  /** A job that a broken plan does twice gets an identifier for each. */
  private String uid(Set<String> taken, String... parts) {
    String key = batch.floor().name() + "\n" + plan.date() + "\n" + String.join("\n", parts);
    String unique = key;
    for (int next = 2; !taken.add(unique); next++) {
      unique = key + "\n" + next;
    }
    return UUID.nameUUIDFromBytes(unique.getBytes(StandardCharsets.UTF_8)).toString();
  }
}
