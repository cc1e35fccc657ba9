package rigmorrow.app.board.make;

import java.util.List;
import rigmorrow.app.board.view.BoardView.SpanView;
import rigmorrow.model.time.Span;

/** Spans, for the page. */
final class Spans {
  private Spans() {}

  static SpanView of(Span span) {
    return new SpanView(span.start(), span.end());
  }

  static List<SpanView> of(List<Span> spans) {
    return spans.stream().map(Spans::of).toList();
  }
}
