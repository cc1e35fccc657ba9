package rigmorrow.solver.explain;

import rigmorrow.model.fit.JobFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.JobWork;
import rigmorrow.solver.timeline.JobFacts;

/**
 * Facts in which one job takes every rig as it stands. Its times stay: what a recipe without a
 * setup would do to them is another question.
 *
 * @param known all other facts
 * @param job id of the job that asks for no setup
 */
record NoSetup(JobFacts known, String job) implements JobFacts {
  @Override
  public JobFit fit(ShotJob one) {
    return known.fit(one);
  }

  @Override
  public JobWork work(ShotJob one, Rig rig) {
    JobWork work = known.work(one, rig);
    return !one.id().equals(job)
        ? work
        : new JobWork(
            work.job(),
            work.rig(),
            Setup.ANY,
            work.kits(),
            work.load(),
            work.captureSeconds(),
            work.attendedCapture(),
            work.unload(),
            work.turns(),
            work.terms(),
            work.cautions());
  }
}
