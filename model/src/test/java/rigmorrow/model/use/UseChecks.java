package rigmorrow.model.use;

import java.time.ZoneOffset;
import java.util.List;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;

/** The use of a rig, worked by hand from the definitions of ISO 22400-2. */
public final class UseChecks {
  static final int OPENING = 7 * 3600;

  static final PlanClock CLOCK = new PlanClock(ZoneOffset.UTC, FloorFixtures.MONDAY, 1);

  private static final String SOURCE =
      "ISO 22400-2:2014, as told by Kang, Zhao, Li, Horst (2016), worked by hand";

  private UseChecks() {}

  /** The list. */
  public static List<OutsideCheck> all() {
    return List.of(
        OutsideCheck.of(
            "Use of a rig open 11 h with two jobs: time elements, s",
            SOURCE,
            RigUseTest.class,
            () -> {
              RigUse use = day();
              return List.of(
                  Figure.equal("PBT", 39_600, use.plannedBusySeconds()),
                  Figure.equal("AUBT", 4_200, use.unitBusySeconds()),
                  Figure.equal("AUST", 900, use.unitSetupSeconds()),
                  Figure.equal("APT", 2_400, use.productionSeconds()));
            }),
        OutsideCheck.of(
            "Use of a rig open 11 h with two jobs: indicators, %",
            SOURCE,
            RigUseTest.class,
            () -> {
              RigUse use = day();
              return List.of(
                  Figure.rounded("AE = AUBT / PBT", "10.6061", use.allocationEfficiencyPercent()),
                  Figure.rounded("UE = APT / AUBT", "57.1429", use.utilisationEfficiencyPercent()),
                  Figure.rounded("SeR = AUST / AUPT", "27.2727", use.setupRatioPercent()));
            }));
  }

  /**
   * A job with 10 min of changeover, 5 min of warm-up in which it is loaded, 20 min of capture, a
   * wait of 100 s and 200 s of unloading; and one without a changeover: 5, 20 and 5 min.
   */
  static RigUse day() {
    PlannedJob first =
        job("J1", at(0, 600), 900, at(600, 900), new Span(900, 2_100), at(2_200, 2_400));
    PlannedJob second =
        job("J2", null, 0, at(3_600, 3_900), new Span(3_900, 5_100), at(5_100, 5_400));
    return RigUse.of(new RigBuilder("R1").build(), List.of(first, second), CLOCK);
  }

  static Attended at(int start, int end) {
    return new Attended(new Span(OPENING + start, OPENING + end), List.of("ann"));
  }

  static PlannedJob job(
      String id, Attended changeover, int warm, Attended load, Span capture, Attended unload) {
    Span later = new Span(OPENING + capture.start(), OPENING + capture.end());
    return new PlannedJob(
        id, List.of(), changeover, OPENING + warm, load, later, List.of(), unload, List.of(), 0);
  }
}
