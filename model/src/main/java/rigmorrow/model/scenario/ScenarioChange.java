package rigmorrow.model.scenario;

/** One thing that is otherwise in a scenario. */
public sealed interface ScenarioChange permits FloorChange, DemandChange {}
