package rigmorrow.app.board.whatif;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.PastDays;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.plans.PlanNames;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.whatif.Past;

/** Makes comparisons of what was chosen, each with the file that its cells are kept in. */
final class ComparisonMaker {
  private final ComparisonStore store;
  private final String program;
  private final PlanNames names;

  /**
   * @param program name and version
   * @param names of all plans
   */
  ComparisonMaker(ComparisonStore store, String program, PlanNames names) {
    this.store = store;
    this.program = program;
    this.names = names;
  }

  /**
   * A comparison.
   *
   * @throws RefusedException when there is nothing to compare, or too much
   * @throws InputException when one more of something cannot be had on every day
   * @throws IllegalArgumentException when two things to compare have one name
   */
  Comparison of(Study study, List<Past> days, RunSettings settings) throws InputException {
    if (nothing(study, settings)) {
      throw refused("There is no scenario to compare; add one.");
    }
    if (settings.oneMore()) {
      PastDays.checkSmallChanges(Path.of("days"), days, study, "one more of each");
    }
    return new Comparison(study, days, settings, program, names);
  }

  private static boolean nothing(Study study, RunSettings settings) {
    return study.scenarios().isEmpty() && !settings.again() && !settings.oneMore();
  }

  /** Where its cells are kept, in a folder that is there. */
  Path file(Comparison comparison) {
    try {
      return store.cells(comparison);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Names the plans of a comparison where any may be there from before; else it is done when it
   * runs. It takes a while where there are many days, so nobody may hold a lock meanwhile.
   */
  void name(Comparison comparison) {
    if (Files.exists(file(comparison))) {
      comparison.namePlans();
    }
  }

  /**
   * Its cells that are there from before; none of it may run meanwhile. Quick where its plans are
   * named.
   */
  Kept kept(Comparison comparison) {
    Path file = file(comparison);
    return Files.exists(file)
        ? Kept.read(comparison, file)
        : store.byAnotherProgram(comparison).map(Kept::ofAnotherBuild).orElse(Kept.NONE);
  }

  /**
   * Makes a file of cells one that can be gone on with. One that nobody can read is moved out of
   * the way, and of one that is damaged in part a copy is kept: nothing is deleted.
   *
   * @param kept what was found in it
   * @return what there is to say of it, in one sentence; empty where there was nothing to do
   */
  String prepare(Comparison comparison, Path file, Kept kept) {
    return switch (kept.state()) {
      case USABLE, UNREADABLE -> "";
      case OF_ANOTHER_BUILD -> kept.note();
      case PARTLY_DAMAGED -> mended(comparison, file);
      case DAMAGED -> putAside(file, kept);
    };
  }

  private static String mended(Comparison comparison, Path file) {
    try {
      return comparison.mend(file).map(mended -> mended.words() + ".").orElse("");
    } catch (InputException e) {
      return ""; // Somebody writes to it meanwhile: the comparison meets the same, and says so.
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String putAside(Path file, Kept kept) {
    try {
      Path aside = store.putAside(file);
      return kept.fault().replaceFirst("\\.$", "")
          + "; it was put aside as "
          + aside.getFileName()
          + ", and all plans are made anew.";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What earlier comparisons have left.
   *
   * @param run null for nothing
   * @param note what there is to say of it; mostly empty
   */
  record Earlier(@Nullable ComparisonRun run, String note) {}

  /**
   * A comparison whose plans are named, as {@link #name} does.
   *
   * @return null where there is nothing to compare, or too much
   */
  @Nullable Comparison named(Study study, List<Past> days, RunSettings settings) {
    if (nothing(study, settings)) {
      return null;
    }
    try {
      Comparison comparison = new Comparison(study, days, settings, program, names);
      name(comparison);
      return comparison;
    } catch (RefusedException e) {
      // Too large with these settings, so there was none; others may be chosen before it begins.
      return null;
    }
  }

  /**
   * What earlier comparisons in the same way have left of the same plans, whatever else they had.
   *
   * @param comparison null where there can have been none
   */
  Earlier earlier(@Nullable Comparison comparison) {
    if (comparison == null) {
      return new Earlier(null, "");
    }
    Kept kept = kept(comparison);
    ComparisonRun run = kept.cells().isEmpty() ? null : new ComparisonRun(comparison, kept.cells());
    return new Earlier(run, kept.note());
  }

  /** A refusal with nothing but a sentence. */
  static RefusedException refused(String sentence) {
    return new RefusedException(
        sentence, List.of(new InputProblem("", "board", "", "", "scenarios and past days")));
  }
}
