package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.terminal.TextTable;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** The day of one rig, one line for each job. */
final class RigText {
  private static final int NAME_COLUMN = 2;

  private final Batch batch;
  private final Map<String, ShotJob> jobs;
  private final Times times;
  private final Console console;

  RigText(Batch batch, Map<String, ShotJob> jobs, Times times, Console console) {
    this.batch = batch;
    this.jobs = jobs;
    this.times = times;
    this.console = console;
  }

  List<String> lines(RigPlan rig) {
    List<String> lines = new ArrayList<>();
    lines.add(heading(rig));
    TextTable table = new TextTable(NAME_COLUMN, List.of("", "", "", "", ""));
    for (PlannedJob planned : rig.jobs()) {
      ShotJob job = jobs.get(planned.job());
      table.row(
          times.span(planned.whole().start(), planned.whole().end()),
          planned.job(),
          job == null ? "" : job.name(),
          changeover(planned),
          planned.lateSeconds() == 0 ? "" : "late " + Durations.late(planned.lateSeconds()));
    }
    table.lines("  ", console.columns()).forEach(lines::add);
    return lines;
  }

  private String heading(RigPlan rig) {
    String name = batch.floor().rig(rig.rig()).map(Rig::name).orElse("");
    long seconds = rig.jobs().stream().mapToLong(RigText::changeoverSeconds).sum();
    String summary =
        rig.jobs().isEmpty()
            ? "no jobs"
            : Counted.of(rig.jobs().size(), "job") + ", changeovers " + Durations.of(seconds);
    String title = name.isEmpty() || name.equals(rig.rig()) ? rig.rig() : rig.rig() + " " + name;
    int room = console.columns() - Text.columns(summary) - 2;
    return console.bold(Text.cut(title, room)) + ": " + summary;
  }

  /** A mark and the hands-on minutes, so that the changes stand out in a long list. */
  private static String changeover(PlannedJob planned) {
    return planned.changeover() == null
        ? ""
        : "* setup " + Durations.of(changeoverSeconds(planned));
  }

  private static long changeoverSeconds(PlannedJob planned) {
    return planned.changeover() == null ? 0 : planned.changeover().span().seconds();
  }
}
