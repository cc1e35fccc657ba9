package rigmorrow.data.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Cursor;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Words;
import rigmorrow.model.change.ChangeProblem;
import rigmorrow.model.change.ScenarioBatch;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.FloorChange;
import rigmorrow.model.scenario.ScenarioChange;
import rigmorrow.model.shot.Batch;

/**
 * Makes a scenario on every batch and tells what cannot be made. Then the changed floors are read
 * again as floor files are, so that a scenario is held to the same rules: those of the first batch,
 * and of all where a rig is new whose parts no floor file has been read with.
 */
final class ScenarioCheck {
  private final PlacedScenario placed;
  private final List<PlacedScenario.Placed> checked;
  private final List<Batch> batches;

  private ScenarioCheck(PlacedScenario placed, List<Batch> batches) {
    this.placed = placed;
    this.checked = placed.toCheck();
    this.batches = batches;
  }

  /** Tells what is wrong with the changes of a scenario, each where nothing was told before. */
  static void tell(PlacedScenario placed, List<Batch> batches) {
    new ScenarioCheck(placed, batches).tell();
  }

  private void tell() {
    List<ScenarioChange> changes = checked.stream().map(PlacedScenario.Placed::change).toList();
    Map<ChangeProblem, List<String>> days = new LinkedHashMap<>();
    Set<Floor> floors = new LinkedHashSet<>();
    for (Batch batch : batches) {
      ScenarioBatch made = ScenarioMaker.of(batch, changes);
      String date = batch.shotList().date().toString();
      for (ChangeProblem problem : made.problems()) {
        days.computeIfAbsent(problem, key -> new ArrayList<>()).add(date);
      }
      floors.add(made.batch().floor());
    }
    boolean whole = days.isEmpty() && placed.sound();
    days.forEach(this::tell);
    if (whole) {
      boolean newRig = changes.stream().anyMatch(FloorChange.NewRig.class::isInstance);
      floors.stream()
          .limit(newRig ? floors.size() : 1)
          .map(ScenarioCheck::problem)
          .flatMap(Optional::stream)
          .findFirst()
          .ifPresent(
              problem ->
                  placed
                      .place()
                      .refuse("changes", "a floor with a problem", "changes without: " + problem));
    }
  }

  private void tell(ChangeProblem problem, List<String> dates) {
    Cursor place = checked.get(problem.change()).object();
    String field = problem.field();
    int dot = field.indexOf('.');
    if (dot > 0) {
      place = place.freeObject(field.substring(0, dot));
      field = field.substring(dot + 1);
    }
    String accepted =
        problem.known().isEmpty()
            ? problem.accepted()
            : problem.accepted() + ": " + Words.choice(problem.known(), problem.value());
    place.refuse(field, problem.value(), accepted + on(dates));
  }

  /** On which days it cannot be made, unless it is all of them. */
  private String on(List<String> dates) {
    if (dates.size() == batches.size()) {
      return "";
    }
    int others = dates.size() - 1;
    String more =
        others == 0 ? "" : " and " + others + (others == 1 ? " other day" : " other days");
    return " (on " + dates.get(0) + more + ")";
  }

  private static Optional<String> problem(Floor floor) {
    try {
      FloorReader.read("floor", FloorWriter.write(floor, Trees.Notation.JSON), Trees.Notation.JSON);
      return Optional.empty();
    } catch (InputException e) {
      return Optional.of(e.problems().get(0).line());
    }
  }
}
