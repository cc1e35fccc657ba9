package rigmorrow.solver.timeline;

import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.WorkModel;

/**
 * Tells the compiler which rigs can take a job and what it asks for there. Working that out is most
 * of what compiling costs, so whoever compiles many batches that are alike may remember it.
 */
public interface JobFacts {
  /** The answers of the rigs; one that is not among them is taken to refuse the job. */
  JobFit fit(ShotJob job);

  /** What a job asks for on a rig that can take it. */
  JobWork work(ShotJob job, Rig rig);

  /** Works everything out anew. */
  static JobFacts of(Floor floor) {
    FitCheck check = new FitCheck(floor);
    WorkModel model = new WorkModel(floor);
    return new JobFacts() {
      @Override
      public JobFit fit(ShotJob job) {
        return check.of(job);
      }

      @Override
      public JobWork work(ShotJob job, Rig rig) {
        return model.of(job, rig);
      }
    };
  }
}
