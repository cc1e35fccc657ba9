package rigmorrow.app.runsheet.text;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.time.Span;

/**
 * Gives a schedule a few letters: others where a time, person, piece of kit, step or name of a job
 * is another, or why one is left out. Times are those that are planned and those that sheets print
 * beside them: when a job is due, whether it must be, when its sample comes and when it must be off
 * the rig. What an item, a recipe or a note says is no part of it, nor is how the schedule was
 * found, what it comes to and what no plan can be below. A board keeps orders and not times, so a
 * later program that reckons otherwise gives a version other times; by this its papers are known
 * for others.
 */
final class ScheduleMark {
  private static final int BYTES = 4;

  /** Each piece of text or number is followed by it, so that where it ends makes a difference. */
  private static final char END = '\0';

  private final StringBuilder text = new StringBuilder();
  private final Map<String, ShotJob> jobs = new HashMap<>();

  private ScheduleMark(Batch batch) {
    batch.shotList().jobs().forEach(job -> jobs.put(job.id(), job));
  }

  /** Eight hexadecimal digits. Two other schedules share them once in four thousand million. */
  static String of(Batch batch, Plan plan) {
    ScheduleMark mark = new ScheduleMark(batch);
    mark.add(plan.zone(), plan.date(), plan.days());
    plan.rigs().forEach(mark::rig);
    plan.leftOut().forEach(mark::leftOut);
    try {
      byte[] bytes = mark.text.toString().getBytes(StandardCharsets.UTF_8);
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return HexFormat.of().formatHex(hash, 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("SHA-256 is part of every Java", e);
    }
  }

  private void add(Object... parts) {
    for (Object part : parts) {
      text.append(part).append(END);
    }
  }

  private void rig(RigPlan rig) {
    add(rig.rig(), rig.jobs().size());
    rig.jobs().forEach(this::planned);
  }

  private void planned(PlannedJob job) {
    job(job.job());
    add(job.steps().size());
    for (ChangeoverStep step : job.steps()) {
      add(step.text(), step.attendedSeconds(), step.unattendedSeconds(), step.people());
    }
    attended(job.changeover());
    add(job.warmedUpAt());
    attended(job.load());
    span(job.capture());
    people(job.captureOperators());
    attended(job.unload());
    add(job.kit().size());
    for (KitUse kit : job.kit()) {
      add(kit.kit(), kit.unit(), kit.from());
    }
    add(job.lateSeconds());
  }

  private void leftOut(LeftOut job) {
    job(job.job());
    add(job.cause(), job.sentences().size());
    job.sentences().forEach(this::add);
  }

  /** What is printed of a job whenever it is done. */
  private void job(String id) {
    ShotJob job = jobs.get(id);
    add(id, job != null);
    if (job != null) {
      add(job.article(), job.name());
      Promise promise = job.promise();
      add(promise == null ? "" : promise.dueAt(), job.must());
      time(job.arrivesAt());
      time(job.leavesAt());
    }
  }

  private void time(@Nullable LocalDateTime known) {
    add(known == null ? "" : known);
  }

  private void attended(@Nullable Attended part) {
    add(part != null);
    if (part != null) {
      span(part.span());
      people(part.operators());
    }
  }

  private void span(Span span) {
    add(span.start(), span.end());
  }

  private void people(List<String> ids) {
    add(ids.size());
    ids.forEach(this::add);
  }
}
