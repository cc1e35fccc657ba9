package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.BoardView.BreachView;
import rigmorrow.app.board.view.JobView.PlacingView;

/**
 * What a touch would come to; decoded, not kept.
 *
 * @param allowed false when it cannot be done at all
 * @param refusals why not, with figures; empty when it is allowed
 * @param sentence the touch in words
 * @param before figures of the plan as it is
 * @param after figures with the touch; null when it is not allowed
 * @param costs what becomes better or worse, in sentences with figures
 * @param standing BETTER, EQUAL or WORSE than before; EQUAL when it is not allowed
 * @param breaches hard rules that would be broken
 * @param placings of every planned job whose rig, place or times would be others
 * @param leftOut ids of the jobs that would be left out
 */
public record TriedView(
    long revision,
    boolean allowed,
    List<String> refusals,
    String sentence,
    FiguresView before,
    @Nullable FiguresView after,
    List<String> costs,
    String standing,
    List<BreachView> breaches,
    List<PlacingView> placings,
    List<String> leftOut) {}
