package rigmorrow.app.board.scenario;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.Formats;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.Investment;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.whatif.Past;

/**
 * Makes scenario documents. Whatever is changed by hand is written down and read again, so that it
 * is held to the same rules as a file.
 */
public final class ScenarioEdits {
  /** What scenarios are called that came from no file. */
  private static final String MADE_HERE = "made on the board";

  private static final String CHANGED = ", changed";

  private final List<Batch> batches;

  /**
   * @param days on which everything must be possible; at least one
   */
  public ScenarioEdits(List<Past> days) {
    this.batches = days.stream().map(Past::batch).toList();
  }

  /**
   * The document of a file.
   *
   * @param number of the document
   * @param name of it, to be shown
   * @throws InputException with everything that is wrong with it
   */
  public ScenarioDocument read(long number, String name, InputFile file) throws InputException {
    return ScenarioDocument.of(number, name, Formats.readScenarioFile(file, batches));
  }

  /**
   * A document with one scenario more.
   *
   * @param before null to begin with nothing
   * @param purchase null where nothing is bought
   * @throws InputException when it cannot be made on every day
   * @throws IllegalArgumentException when a number is outside its bounds, or a name unknown
   */
  public ScenarioDocument with(
      long number,
      @Nullable ScenarioDocument before,
      UsualChange change,
      @Nullable Investment purchase)
      throws InputException {
    Study more = study(before).with(change, purchase);
    return again(number, before, more, interest(before, purchase));
  }

  /**
   * A document with one scenario less.
   *
   * @throws IllegalArgumentException when there is none of that name
   */
  public ScenarioDocument without(long number, ScenarioDocument before, String scenario)
      throws InputException {
    return again(number, before, study(before).without(scenario), before.interestPercent());
  }

  /** A purchase has its own interest; only scenarios that begin with one have theirs from it. */
  private static double interest(@Nullable ScenarioDocument before, @Nullable Investment purchase) {
    if (before != null) {
      return before.interestPercent();
    }
    return purchase == null ? UsualStudy.INTEREST_PERCENT : purchase.interestPercent();
  }

  private UsualStudy study(@Nullable ScenarioDocument before) {
    Floor floor = batches.get(0).floor();
    return new UsualStudy(floor, before == null ? null : before.study());
  }

  private ScenarioDocument again(
      long number, @Nullable ScenarioDocument before, Study study, double interest)
      throws InputException {
    byte[] text = ScenarioDocument.text(study, interest).getBytes(StandardCharsets.UTF_8);
    InputFile file = new InputFile("scenarios.yaml", text);
    return ScenarioDocument.of(number, name(before), Formats.readScenarioFile(file, batches));
  }

  private static String name(@Nullable ScenarioDocument before) {
    if (before == null) {
      return MADE_HERE;
    }
    String name = before.name();
    return name.equals(MADE_HERE) || name.endsWith(CHANGED) ? name : name + CHANGED;
  }
}
