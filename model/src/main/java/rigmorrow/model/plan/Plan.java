package rigmorrow.model.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.Batch;

/**
 * For each rig a sequence of jobs with times and people; and what was left out, with reasons. A
 * plan is advice to qualified people, never a release to operate.
 *
 * @param floor name of the floor
 * @param zone time zone of the floor
 * @param date first day; its first instant is second 0
 * @param days how many days
 * @param rigs every rig of the floor, in floor order
 * @param leftOut jobs that are not done
 * @param figures what it comes to
 * @param bounds what no plan of the batch can be below; null where nobody worked it out
 * @param origin how it was made
 */
public record Plan(
    String floor,
    ZoneId zone,
    LocalDate date,
    int days,
    List<RigPlan> rigs,
    List<LeftOut> leftOut,
    PlanFigures figures,
    @Nullable PlanBounds bounds,
    PlanOrigin origin) {
  public Plan {
    rigs = List.copyOf(rigs);
    leftOut = List.copyOf(leftOut);
  }

  /** A plan whose bounds nobody worked out. */
  public Plan(
      String floor,
      ZoneId zone,
      LocalDate date,
      int days,
      List<RigPlan> rigs,
      List<LeftOut> leftOut,
      PlanFigures figures,
      PlanOrigin origin) {
    this(floor, zone, date, days, rigs, leftOut, figures, null, origin);
  }

  /** This plan with bounds beside its figures. */
  public Plan withBounds(PlanBounds known) {
    return new Plan(floor, zone, date, days, rigs, leftOut, figures, known, origin);
  }

  /**
   * Holds the plan's floor, zone and days against a batch's.
   *
   * @throws IllegalArgumentException when they differ, so that the plan's seconds mean something
   *     else
   */
  public void requireDaysOf(Batch batch) {
    String expected =
        describe(
            batch.floor().name(),
            batch.floor().zone(),
            batch.shotList().date(),
            batch.shotList().days());
    String actual = describe(floor, zone, date, days);
    if (!expected.equals(actual)) {
      throw new IllegalArgumentException("plan is of " + actual + "; accepted: " + expected);
    }
  }

  private static String describe(String floor, ZoneId zone, LocalDate date, int days) {
    return "floor " + floor + ", zone " + zone + ", date " + date + ", days " + days;
  }

  /** A planned job by its id. */
  public Optional<PlannedJob> job(String id) {
    return rigs.stream()
        .flatMap(rig -> rig.jobs().stream())
        .filter(job -> job.job().equals(id))
        .findFirst();
  }
}
