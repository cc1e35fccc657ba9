package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.FitView;
import rigmorrow.app.board.view.FitView.FitCellView;
import rigmorrow.app.board.view.FitView.FitJobView;
import rigmorrow.app.board.view.FitView.FitRigView;
import rigmorrow.app.report.FitText;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/**
 * The fit check of a shot list. A job that stays as it was is not asked about again, since a board
 * is shown after every touch and the check takes far longer than the rest. For any thread.
 */
public final class FitBook {
  private Map<ShotJob, JobFit> known = Map.of();
  private @Nullable Floor floor;

  /** The answers for every job, in shot list order. */
  public synchronized List<JobFit> of(Batch batch) {
    if (!batch.floor().equals(floor)) {
      floor = batch.floor();
      known = Map.of();
    }
    FitCheck check = new FitCheck(batch.floor());
    Map<ShotJob, JobFit> fits = new HashMap<>();
    for (ShotJob job : batch.shotList().jobs()) {
      JobFit before = known.get(job);
      fits.put(job, before == null ? check.of(job) : before);
    }
    known = fits;
    return batch.shotList().jobs().stream().map(fits::get).toList();
  }

  /** The answers as a table of jobs and rigs. */
  public FitView view(Batch batch) {
    List<JobFit> fits = of(batch);
    List<FitRigView> rigs =
        batch.floor().rigs().stream().map(rig -> new FitRigView(rig.id(), rig.name())).toList();
    List<ShotJob> jobs = batch.shotList().jobs();
    List<FitJobView> rows = new ArrayList<>();
    for (int i = 0; i < jobs.size(); i++) {
      JobFit fit = fits.get(i);
      rows.add(
          new FitJobView(
              fit.job(),
              jobs.get(i).name(),
              fit.fitsSomewhere(),
              fit.estimated(),
              fit.unmeasured(),
              fit.rigs().stream().map(FitBook::cell).toList()));
    }
    return new FitView(rigs, rows);
  }

  private static FitCellView cell(RigFit fit) {
    return new FitCellView(fit.fits(), fit.reasons().stream().map(FitText::line).toList());
  }
}
