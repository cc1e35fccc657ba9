package rigmorrow.data.samples;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanBounds;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlanOrigin;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.time.Span;

/** Plans put together by hand; their times are not those of any decoder. */
public final class SamplePlans {
  private SamplePlans() {}

  /** A plan of the small floor that gives every field of a plan file at least once. */
  public static Plan tiny(LocalDate date) {
    PlannedJob first =
        new PlannedJob(
            "bag-spin",
            List.of(new ChangeoverStep("Hang white", 240, 120, 2, Set.of("plates", "hanging"))),
            new Attended(new Span(7_200, 7_440), List.of("ada", "ben")),
            7_560,
            new Attended(new Span(7_440, 7_600), List.of("ada")),
            new Span(7_600, 7_700),
            List.of("ada"),
            new Attended(new Span(7_700, 7_745), List.of("ben")),
            List.of(new KitUse("rotator", "rotator-1", "shelf")),
            61);
    PlannedJob second =
        new PlannedJob(
            "lamp-stills",
            List.of(),
            null,
            10_800,
            new Attended(new Span(10_800, 10_900), List.of("ada")),
            new Span(10_900, 90_000),
            List.of(),
            new Attended(new Span(90_000, 90_000), List.of("ada")),
            List.of(),
            0);
    return new Plan(
        "Two tables",
        ZoneId.of("Europe/Berlin"),
        date,
        2,
        List.of(new RigPlan("t1", List.of(first, second)), new RigPlan("t2", List.of())),
        List.of(
            new LeftOut(
                "unknown-size",
                LeftOut.Cause.NEEDS_MEASURING,
                List.of("Length is not known.", "Mass is not known."))),
        new PlanFigures(0, 1, 51, 16, 1_500, 2, 1, 1, 61, 240, 90_000),
        new PlanBounds(1, 0, 12, 1_400),
        new PlanOrigin("search", -7, 2, 3_000_000_000L, "steps"));
  }
}
