package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.change.ChangeProblem;
import rigmorrow.model.change.ScenarioMaker;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.Scenario;
import rigmorrow.model.scenario.SmallChanges;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.whatif.Past;

/** Reads the days that scenarios are compared on. */
public final class PastDays {
  private PastDays() {}

  /**
   * Every day of a folder, in the order of their names.
   *
   * @param floor that every day takes in place of its own; null for its own
   * @throws InputException with everything that is wrong with any of them
   */
  public static List<Past> read(Path folder, @Nullable Floor floor)
      throws IOException, InputException {
    BatchFolder.Reading reading = BatchFolder.read(folder, floor);
    List<InputProblem> problems = new ArrayList<>();
    reading.refused().forEach(refused -> problems.addAll(refused.problems()));
    List<Past> days =
        reading.days().stream().map(day -> new Past(day.name(), day.batch())).toList();
    for (Past day : days) {
      String first = days.get(0).batch().floor().costs().currency();
      String currency = day.batch().floor().costs().currency();
      if (!currency.equals(first)) {
        problems.add(problem(folder, day, "currency", currency, first + ", as on the first day"));
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
    return days;
  }

  /**
   * Looks whether every small change can be made on every day: they are taken from the first day's
   * floor.
   *
   * @param asked what they are called where they were asked for
   * @throws InputException with the days on which one cannot
   */
  public static void checkSmallChanges(Path folder, List<Past> days, Study study, String asked)
      throws InputException {
    Floor floor = days.get(0).batch().floor();
    List<InputProblem> problems = new ArrayList<>();
    for (Scenario scenario : SmallChanges.of(floor, study.prices())) {
      for (Past day : days) {
        String problem = problem(day.batch(), scenario);
        if (problem != null) {
          problems.add(
              problem(
                  folder,
                  day,
                  asked,
                  problem,
                  "days that have all rigs, operators and kit of the first"));
        }
      }
    }
    if (!problems.isEmpty()) {
      throw new InputException(problems);
    }
  }

  private static @Nullable String problem(Batch batch, Scenario scenario) {
    List<ChangeProblem> problems = ScenarioMaker.of(batch, scenario.changes()).problems();
    return problems.isEmpty() ? null : scenario.title() + ": " + problems.get(0).value();
  }

  private static InputProblem problem(
      Path folder, Past day, String field, String value, String accepted) {
    return new InputProblem(folder.toString(), day.name(), field, value, accepted);
  }
}
