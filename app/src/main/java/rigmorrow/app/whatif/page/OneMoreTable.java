package rigmorrow.app.whatif.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.MoneyText;
import rigmorrow.app.whatif.ResultSentences;
import rigmorrow.model.comparison.SmallChange;

/** What one more of each thing buys, best for its money first. */
final class OneMoreTable {
  private OneMoreTable() {}

  static ReportDocument.@Nullable OneMore of(Compared compared, SavingCharts charts) {
    List<SmallChange> changes = compared.smallChanges();
    if (changes.isEmpty() || !compared.hasMoney()) {
      return null;
    }
    MoneyText money = new MoneyText(compared.costs().currency());
    List<SavingCharts.Named> lanes = new ArrayList<>();
    List<List<String>> rows = new ArrayList<>();
    for (SmallChange change : changes) {
      String title = ResultSentences.shortTitle(change);
      lanes.add(new SavingCharts.Named(title, change.boughtPerDay()));
      OptionalDouble ratio = change.perMoney();
      rows.add(
          List.of(
              title,
              money.interval(change.boughtPerDay()),
              change.priced() ? money.amount(change.spentPerDay()) : "no price given",
              (ratio.isPresent() ? MoneyText.ratio(ratio.getAsDouble()) : "-")
                  + (change.sure() ? "" : ", may be luck")));
    }
    ResultSentences sentences = new ResultSentences(compared.costs().currency(), true);
    return new ReportDocument.OneMore(
        sentences.best(changes),
        charts.intervals("What one more of each buys in a day", lanes),
        new ReportDocument.FigureTable(
            List.of("One more", "Buys a day", "Spends a day", "Bought for each 1 spent"), rows));
  }
}
