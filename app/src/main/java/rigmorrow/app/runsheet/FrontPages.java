package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.Fact;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.LeftOut;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;

/** Fills the first page. */
final class FrontPages {

  private FrontPages() {}

  static FrontPage of(Plan plan, Names names, TimeText times, JobBreaches breaches) {
    List<LateOnRig> late = late(plan, names, times);
    return new FrontPage(
        breaches.sentences(),
        facts(plan, late.size(), times),
        late.stream().map(line -> line(line, names, times)).toList(),
        plan.leftOut().stream().map(left -> left(left, names, times)).toList());
  }

  /** From the times alone: what a plan states of itself may be wrong. */
  private static List<Fact> facts(Plan plan, int late, TimeText times) {
    List<PlannedJob> jobs = plan.rigs().stream().flatMap(rig -> rig.jobs().stream()).toList();
    int end = jobs.stream().mapToInt(job -> job.whole().end()).max().orElse(0);
    int changeover = jobs.stream().mapToInt(FrontPages::changeoverSeconds).sum();
    return List.of(
        new Fact("Time zone", times.zone()),
        new Fact("Last job ends", jobs.isEmpty() ? "no job" : times.at(end)),
        new Fact("Jobs planned", String.valueOf(jobs.size())),
        new Fact("Jobs late", String.valueOf(late)),
        new Fact("Jobs left out", String.valueOf(plan.leftOut().size())),
        new Fact("Changeover work", TimeText.duration(changeover)));
  }

  private static int changeoverSeconds(PlannedJob job) {
    Attended changeover = job.changeover();
    return changeover == null ? 0 : changeover.span().seconds();
  }

  private record LateOnRig(PlannedJob job, String rig, int seconds) {}

  private static List<LateOnRig> late(Plan plan, Names names, TimeText times) {
    List<LateOnRig> late = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        int seconds = times.lateSeconds(names.job(job.job()), job);
        if (seconds > 0) {
          late.add(new LateOnRig(job, rig.rig(), seconds));
        }
      }
    }
    late.sort(Comparator.comparingInt(LateOnRig::seconds).reversed());
    return late;
  }

  private static FrontPage.Late line(LateOnRig late, Names names, TimeText times) {
    ShotJob job = names.job(late.job.job());
    return new FrontPage.Late(
        JobCard.Label.of(job),
        names.place(late.rig),
        promise(job, times),
        TimeText.late(late.seconds));
  }

  private static FrontPage.Left left(LeftOut left, Names names, TimeText times) {
    ShotJob job = names.job(left.job());
    String cause =
        switch (left.cause()) {
          case NEEDS_MEASURING -> "Needs measuring";
          case NO_RIG -> "No rig can take it";
          case HELD_BACK -> "Left out by hand";
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
