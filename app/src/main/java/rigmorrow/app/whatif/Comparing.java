package rigmorrow.app.whatif;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.app.report.Counted;
import rigmorrow.app.terminal.Session;
import rigmorrow.app.terminal.StatusLine;
import rigmorrow.data.cells.CellFile;
import rigmorrow.data.cells.RunHead;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.comparison.Cells;
import rigmorrow.model.outcome.Cell;
import rigmorrow.model.scenario.Study;
import rigmorrow.solver.FloorSolver;
import rigmorrow.solver.whatif.Arm;
import rigmorrow.solver.whatif.Past;
import rigmorrow.solver.whatif.WhatIf;

/** Plans the cells that are not there yet, keeps each, and shows how far it is. */
public final class Comparing {
  private final Session session;
  private final String program;

  /**
   * @param session tells when to stop
   * @param program name and version
   */
  public Comparing(Session session, String program) {
    this.session = session;
    this.program = program;
  }

  /**
   * Compares; Ctrl-C ends it early and keeps every finished cell.
   *
   * @param file for the cells, in a folder that is there
   * @throws InputException when the file is of another run
   */
  public Compared run(Study study, List<Past> days, RunSettings settings, Path file)
      throws IOException, InputException {
    List<Arm> arms = Compared.arms(study, days.get(0).batch().floor(), settings);
    WhatIf run =
        FloorSolver.whatIf(
            arms, days, settings.seeds(), settings.cores(), settings.limits(), study.terms().pay());
    RunHead head =
        RunHead.of(
            program,
            study,
            days.stream().map(Past::name).toList(),
            days.stream().map(Past::batch).toList(),
            settings.effortOfRun());
    Set<Cell.Key> wanted = new HashSet<>(run.keys());
    try (CellFile cells = CellFile.open(file, head)) {
      List<Cell> all = new ArrayList<>(cells.cells());
      all.removeIf(cell -> !wanted.contains(cell.key()));
      begin(arms.size(), days.size(), settings, all.size(), wanted.size());
      StatusLine line = new StatusLine(session.console());
      try {
        CellProgress progress = new CellProgress(line, session.stop(), cells, all);
        Set<Cell.Key> known = new HashSet<>();
        all.forEach(cell -> known.add(cell.key()));
        if (settings.time() != null && known.size() < wanted.size()) {
          line.draw("warming up");
          run.warmUp(progress);
        }
        run.run(known, progress);
      } finally {
        line.clear();
      }
      return new Compared(study, days, settings, new Cells(all), wanted.size(), program);
    }
  }

  private void begin(int arms, int days, RunSettings settings, int known, int all) {
    String what =
        Counted.of(all, "plan")
            + " of "
            + settings.effort()
            + ": "
            + Counted.of(arms, "floor and demand", "floors and demands")
            + " on "
            + Counted.of(days, "day")
            + " with "
            + Counted.of(settings.seeds(), "seed");
    long seconds = settings.wholeSeconds(all - known);
    String time = seconds == 0 ? "" : ", about " + CellProgress.time(seconds);
    session.note(what + time + "; Ctrl-C keeps what is finished");
    if (known > 0) {
      session.note(known + " of " + all + " plans were there already");
      session.stop().searchBegins();
    }
  }
}
