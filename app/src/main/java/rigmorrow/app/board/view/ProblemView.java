package rigmorrow.app.board.view;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.view.BoardView.BreachView;

/**
 * Why a request was not done. Sent with every status from 400 on.
 *
 * @param message one sentence
 * @param revision of the board as it is now; null where none was asked about
 * @param since what happened since the revision that the request named, in sentences
 * @param breaches hard rules, where they are the reason
 */
public record ProblemView(
    String message, @Nullable Long revision, List<String> since, List<BreachView> breaches) {}
