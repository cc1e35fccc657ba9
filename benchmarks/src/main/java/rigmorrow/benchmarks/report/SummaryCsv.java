package rigmorrow.benchmarks.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.benchmarks.compare.Interval;
import rigmorrow.benchmarks.compare.PeerSummary;

/** A line for each peer, numbers as they were worked out. */
final class SummaryCsv {
  private static final List<String> HEADS =
      List.of(
          "peer",
          "cells",
          "unworkable",
          "without_gap",
          "mean_gap_percent",
          "ours_wins",
          "ties",
          "ours_loses",
          "ratio_ours_to_peer",
          "ratio_low",
          "ratio_high",
          "ratio_instances",
          "over_time");
  private static final ObjectWriter WRITER =
      new CsvMapper().writer(CsvSchema.emptySchema().withLineSeparator("\n"));

  private SummaryCsv() {}

  static String of(List<PeerSummary> summaries) {
    StringBuilder text = new StringBuilder(line(HEADS));
    for (PeerSummary one : summaries) {
      Interval ratio = one.ratio();
      text.append(
          line(
              List.of(
                  one.peer(),
                  "" + one.cells(),
                  "" + one.unworkable(),
                  "" + one.withoutGap(),
                  orEmpty(one.meanGapPercent()),
                  one.ours() ? "" : "" + one.wins(),
                  one.ours() ? "" : "" + one.ties(),
                  one.ours() ? "" : "" + one.losses(),
                  orEmpty(ratio == null ? null : ratio.mean()),
                  orEmpty(ratio == null ? null : ratio.low()),
                  orEmpty(ratio == null ? null : ratio.high()),
                  ratio == null ? "0" : "" + ratio.count(),
                  "" + one.overTime())));
    }
    return text.toString();
  }

  private static String orEmpty(@Nullable Double value) {
    return value == null ? "" : value.toString();
  }

  private static String line(List<String> cells) {
    try {
      return WRITER.writeValueAsString(cells);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("texts can be written", e);
    }
  }
}
