package rigmorrow.app.board.make;

import java.util.List;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.view.TroublesView;
import rigmorrow.app.board.view.TroublesView.TroubleView;
import rigmorrow.app.board.view.WhyView;
import rigmorrow.app.board.view.WhyView.RigAnswerView;
import rigmorrow.app.board.view.WhyView.SectionView;
import rigmorrow.app.explain.ExplainSentences;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.Move;
import rigmorrow.model.explain.RigAnswer;
import rigmorrow.model.explain.Trouble;

/** Answers to "why", for the page. */
public final class Whys {
  private final long revision;
  private final ExplainSentences sentences;

  /**
   * @param state the plan that is asked about
   */
  public Whys(BoardState state) {
    this.revision = state.revision();
    this.sentences = new ExplainSentences(state.batch(), state.plan().origin());
  }

  /** The answer about one job. */
  public WhyView of(Explanation answer) {
    List<SectionView> sections =
        sentences.about(answer).stream()
            .map(section -> new SectionView(section.heading(), section.sentences()))
            .toList();
    return new WhyView(
        revision,
        answer.job().id(),
        answer.job().name(),
        sections,
        answer.rigs().stream().map(rig -> rig(answer, rig)).toList());
  }

  /** Jobs that are late or left out, a sentence each. */
  public TroublesView of(List<Trouble> troubles) {
    return new TroublesView(revision, troubles.stream().map(this::trouble).toList());
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }

  private TroubleView trouble(Trouble trouble) {
    Move best = trouble.times() == null ? null : trouble.best();
    return new TroubleView(
        trouble.job().id(),
        trouble.job().name(),
        capital(sentences.withoutName(trouble)),
        best == null ? null : best.times().rig(),
        best == null ? null : best.times().place());
  }

  private RigAnswerView rig(Explanation answer, RigAnswer rig) {
    Move best = rig.best();
    return new RigAnswerView(
        rig.rig(),
        rig.kind().name(),
        best == null ? null : best.times().place(),
        best == null ? null : best.standing().name(),
        sentences.of(answer, rig));
  }
}
