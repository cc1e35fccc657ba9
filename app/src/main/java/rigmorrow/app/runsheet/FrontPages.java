package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Fills the first page. */
final class FrontPages {

  private FrontPages() {}

  static FrontPage of(Plan plan, Names names, TimeText times) {
    return new FrontPage(
        plan.floor(),
        times.dates(plan.days()),
        plan.figures().hard() == 0
            ? ""
            : "This plan breaks hard rules: it must be mended before anyone works to it.",
        facts(plan, times),
        late(plan, names, times),
        plan.leftOut().stream().map(left -> left(left, names, times)).toList());
  }

  private static List<SheetDocument.Fact> facts(Plan plan, TimeText times) {
    PlanFigures figures = plan.figures();
    return List.of(
        new SheetDocument.Fact("Time zone", times.zone()),
        new SheetDocument.Fact(
            "Last job ends", figures.planned() == 0 ? "no job" : times.at(figures.finishedAt())),
        new SheetDocument.Fact("Jobs planned", String.valueOf(figures.planned())),
        new SheetDocument.Fact("Jobs late", String.valueOf(figures.lateJobs())),
        new SheetDocument.Fact("Jobs left out", String.valueOf(figures.leftOut())),
        new SheetDocument.Fact(
            "Changeover work", TimeText.duration(Math.toIntExact(figures.changeoverSeconds()))));
  }

  private static List<FrontPage.Late> late(Plan plan, Names names, TimeText times) {
    record LateOnRig(PlannedJob job, String rig) {}
    List<LateOnRig> late = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        if (job.lateSeconds() > 0) {
          late.add(new LateOnRig(job, rig.rig()));
        }
      }
    }
    return late.stream()
        .sorted(Comparator.comparingInt((LateOnRig line) -> line.job.lateSeconds()).reversed())
        .map(
            line ->
                new FrontPage.Late(
                    JobCard.Label.of(names.job(line.job.job())),
                    names.place(line.rig),
                    promise(names.job(line.job.job()), times),
                    TimeText.duration(line.job.lateSeconds())))
        .toList();
  }

  private static FrontPage.Left left(LeftOut left, Names names, TimeText times) {
    ShotJob job = names.job(left.job());
    String cause =
        switch (left.cause()) {
          case NEEDS_MEASURING -> "Needs measuring";
          case NO_RIG -> "No rig can take it";
          case NO_ROOM -> "No room in the plan";
        };
    return new FrontPage.Left(JobCard.Label.of(job), promise(job, times), cause, left.sentences());
  }

  private static String promise(ShotJob job, TimeText times) {
    Promise promise = job.promise();
    if (promise == null) {
      return "none";
    }
    return times.local(promise.dueAt()) + (promise.must() ? " (must)" : "");
  }
}
