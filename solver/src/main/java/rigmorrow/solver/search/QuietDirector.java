package rigmorrow.solver.search;

import org.optaplanner.core.api.score.director.ScoreDirector;

/** Lets moves be tried outside a solver: nobody needs to hear what changes. */
final class QuietDirector implements ScoreDirector<FloorSchedule> {
  private final FloorSchedule schedule;

  QuietDirector(FloorSchedule schedule) {
    this.schedule = schedule;
  }

  @Override
  public FloorSchedule getWorkingSolution() {
    return schedule;
  }

  @Override
  public void beforeVariableChanged(Object entity, String variable) {}

  @Override
  public void afterVariableChanged(Object entity, String variable) {}

  @Override
  public void beforeListVariableElementAssigned(Object entity, String variable, Object element) {}

  @Override
  public void afterListVariableElementAssigned(Object entity, String variable, Object element) {}

  @Override
  public void beforeListVariableElementUnassigned(Object entity, String variable, Object element) {}

  @Override
  public void afterListVariableElementUnassigned(Object entity, String variable, Object element) {}

  @Override
  public void beforeListVariableChanged(Object entity, String variable, int from, int to) {}

  @Override
  public void afterListVariableChanged(Object entity, String variable, int from, int to) {}

  @Override
  public void triggerVariableListeners() {}

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {}

  @Override
  public void beforeEntityRemoved(Object entity) {}

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public void beforeProblemFactAdded(Object fact) {}

  @Override
  public void afterProblemFactAdded(Object fact) {}

  @Override
  public void beforeProblemPropertyChanged(Object factOrEntity) {}

  @Override
  public void afterProblemPropertyChanged(Object factOrEntity) {}

  @Override
  public void beforeProblemFactRemoved(Object fact) {}

  @Override
  public void afterProblemFactRemoved(Object fact) {}

  @Override
  public <E> E lookUpWorkingObject(E externalObject) {
    return externalObject;
  }

  @Override
  public <E> E lookUpWorkingObjectOrReturnNull(E externalObject) {
    return externalObject;
  }
}
