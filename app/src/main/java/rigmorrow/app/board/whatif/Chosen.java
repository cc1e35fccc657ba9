package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.SecureRandom;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.scenario.ScenarioDocument;
import rigmorrow.app.board.scenario.ScenarioEdits;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.solver.whatif.Past;

/** The scenarios that were chosen and how they are compared; kept before they are here. */
final class Chosen {
  private static final Logger LOG = LoggerFactory.getLogger(Chosen.class);
  private static final int FIRST_NUMBERS = 1_000_000_000;

  private final ComparisonStore store;
  private final int cores = Runtime.getRuntime().availableProcessors();
  private @Nullable ScenarioDocument document;
  private RunSettings settings = RunSettings.usual(cores);
  private String note = "";

  /** A page that knows the documents of an earlier program takes none for another. */
  private long number = 1L + new SecureRandom().nextInt(FIRST_NUMBERS);

  Chosen(ComparisonStore store) {
    this.store = store;
  }

  /** The scenarios; null while there are none. */
  synchronized @Nullable ScenarioDocument document() {
    return document;
  }

  /** How they were compared last, or the usual. */
  synchronized RunSettings settings() {
    return settings;
  }

  /** What there is to say of scenarios that were chosen before, or of their plans; mostly empty. */
  synchronized String note() {
    return note;
  }

  /** Says something of the plans of these scenarios, until others are taken. */
  synchronized void say(String sentence) {
    note = sentence;
  }

  /** A number for the next document. */
  synchronized long next() {
    return number++;
  }

  /**
   * The scenarios, if they are those that a wish is about.
   *
   * @param asked 0 where there are none
   * @throws OtherScenariosException when they are others
   */
  synchronized @Nullable ScenarioDocument fresh(long asked) {
    ScenarioDocument known = document;
    if ((known == null ? 0 : known.number()) != asked) {
      throw new OtherScenariosException();
    }
    return known;
  }

  /** The same, where there must be some. */
  ScenarioDocument required(long asked) {
    ScenarioDocument known = fresh(asked);
    if (known == null) {
      throw ComparisonMaker.refused("There are no scenarios to compare yet.");
    }
    return known;
  }

  /** Takes scenarios and settings. */
  synchronized void choose(ScenarioDocument next, RunSettings how) {
    try {
      store.keep(next, how);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    document = next;
    settings = how;
    note = "";
  }

  /**
   * Takes what was chosen when the program ended, however it ended.
   *
   * @param source may bring scenarios of its own, where none were ever chosen
   */
  synchronized void restore(DaySource source, List<Past> days) {
    try {
      Optional<InputFile> kept = store.scenarios();
      Optional<InputFile> file = kept.isPresent() ? kept : source.scenarios();
      if (file.isPresent()) {
        String name = kept.isPresent() ? store.name() : file.get().name();
        document = new ScenarioEdits(days).read(next(), name, file.get());
        settings = store.settings(cores).orElse(settings);
      }
    } catch (InputException e) {
      String first = e.problems().get(0).line();
      note = "The scenarios that were chosen last cannot be used with these days. " + first + ".";
    } catch (IOException | RuntimeException e) {
      LOG.warn("The scenarios that were chosen last cannot be read", e);
      note = "The scenarios that were chosen last cannot be read; choose some.";
    }
  }
}
