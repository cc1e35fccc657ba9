package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpSolverSolutionCallback;

/** Has every solution decoded. */
final class Decoding extends CpSolverSolutionCallback {
  private final DayModel model;
  private final Incumbent incumbent;

  Decoding(DayModel model, Incumbent incumbent) {
    this.model = model;
    this.incumbent = incumbent;
  }

  @Override
  public void onSolutionCallback() {
    incumbent.offer(model.sequences(this::booleanValue));
  }
}
