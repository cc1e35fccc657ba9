package rigmorrow.app.board.whatif;

import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.scenario.ScenarioDocument;
import rigmorrow.app.whatif.RunSettings;

/**
 * All there is to see of what a board compares, of one moment.
 *
 * @param change grows with everything but the progress; begins anew with the program
 * @param days that are compared on
 * @param document the scenarios; null while there are none
 * @param settings how they were compared last, or the usual
 * @param note what there is to say of scenarios that were chosen before, or of their plans; mostly
 *     empty
 * @param progress of the comparison
 */
public record Look(
    long change,
    DayReading.Days days,
    @Nullable ScenarioDocument document,
    RunSettings settings,
    String note,
    ComparisonProgress progress) {}
