package rigmorrow.app.report;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.terminal.TextTable;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.ShotJob;

/** The fit check as text for a terminal: a table of jobs and rigs, then every reason. */
public final class FitText {
  private static final int NAME_COLUMNS = 20;
  private static final int LONGEST_ID = 12;
  private static final int LONGEST_RIG = 12;
  private static final int WIDEST_CELL = "no (9)".length();

  private final List<ShotJob> jobs;
  private final List<JobFit> fits;
  private final List<Rig> rigs;
  private final Console console;
  private final List<String> lines = new ArrayList<>();

  /**
   * @param jobs that were asked about
   * @param fits the answers, in the same order
   * @param rigs of the floor
   * @param console how wide and whether in colour
   */
  public FitText(List<ShotJob> jobs, List<JobFit> fits, List<Rig> rigs, Console console) {
    this.jobs = jobs;
    this.fits = fits;
    this.rigs = rigs;
    this.console = console;
  }

  /** The text, line by line. */
  public List<String> lines() {
    headline();
    int idColumns = columns(jobs.stream().map(ShotJob::id).toList(), LONGEST_ID);
    int rigColumns = columns(rigs.stream().map(Rig::id).toList(), LONGEST_RIG);
    int room = console.columns() - idColumns - NAME_COLUMNS - 4;
    int rigsAtOnce = Math.max(1, room / (Math.max(rigColumns, WIDEST_CELL) + 2));
    for (int first = 0; first < rigs.size(); first += rigsAtOnce) {
      table(rigs.subList(first, Math.min(rigs.size(), first + rigsAtOnce)), idColumns);
    }
    legend();
    needsMeasuring();
    reasons("fits nowhere", true);
    reasons("why not on some rigs", false);
    return List.copyOf(lines);
  }

  private static int columns(List<String> ids, int most) {
    return Math.min(most, ids.stream().mapToInt(Text::columns).max().orElse(0));
  }

  private void headline() {
    long somewhere = fits.stream().filter(JobFit::fitsSomewhere).count();
    long unmeasured = fits.stream().filter(JobFit::needsMeasuring).count();
    long estimated = fits.stream().filter(JobFit::estimated).count();
    String text =
        "%s and %s: %d fit somewhere, %d fit nowhere, %d need measuring"
            .formatted(
                Counted.of(jobs.size(), "job"),
                Counted.of(rigs.size(), "rig"),
                somewhere,
                jobs.size() - somewhere - unmeasured,
                unmeasured);
    lines.addAll(Text.wrap("", "", text, console.columns()));
    if (estimated > 0) {
      String marked = " (marked ~): size or mass is the planner's estimate.";
      lines.addAll(
          Text.wrap("", "", Counted.of(estimated, "estimate") + marked, console.columns()));
    }
  }

  private void table(List<Rig> some, int idColumns) {
    List<String> heads = new ArrayList<>(List.of("job", "name"));
    some.forEach(rig -> heads.add(Text.cut(rig.id(), LONGEST_RIG)));
    TextTable table = new TextTable(1, heads);
    for (int i = 0; i < jobs.size(); i++) {
      JobFit fit = fits.get(i);
      List<String> cells = new ArrayList<>();
      cells.add(Text.cut(jobs.get(i).id(), idColumns));
      cells.add(Text.cut((fit.estimated() ? "~ " : "") + jobs.get(i).name(), NAME_COLUMNS));
      some.forEach(rig -> cells.add(fit.on(rig.id()).map(FitText::cell).orElse("?")));
      table.row(cells.toArray(String[]::new));
    }
    lines.add("");
    lines.addAll(table.lines("", console.columns()));
  }

  private void legend() {
    boolean some = fits.stream().flatMap(fit -> fit.rigs().stream()).anyMatch(rig -> !rig.fits());
    if (some) {
      lines.add("");
      lines.add("no (2): two reasons why not; all of them stand below.");
    }
  }

  private static String cell(RigFit fit) {
    return fit.fits() ? "yes" : "no (" + fit.reasons().size() + ")";
  }

  private void needsMeasuring() {
    List<JobFit> unmeasured = fits.stream().filter(JobFit::needsMeasuring).toList();
    if (!unmeasured.isEmpty()) {
      lines.add("");
      lines.add(console.warning("needs measuring"));
      for (JobFit fit : unmeasured) {
        wrapped("  ", title(fit) + ": " + String.join(", ", fit.unmeasured()) + " missing");
      }
    }
  }

  private void reasons(String heading, boolean nowhere) {
    List<JobFit> some =
        fits.stream()
            .filter(fit -> !fit.needsMeasuring() && fit.fitsSomewhere() != nowhere)
            .filter(fit -> fit.rigs().stream().anyMatch(rig -> !rig.fits()))
            .toList();
    if (some.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(nowhere ? console.warning(heading) : console.bold(heading));
    for (JobFit fit : some) {
      lines.add(Text.cut("  " + title(fit), console.columns()));
      String nearest = fit.nearestMiss().map(RigFit::rig).orElse("");
      for (RigFit rig : fit.rigs()) {
        String mark = rig.rig().equals(nearest) ? " (nearest miss)" : "";
        rig.reasons().forEach(reason -> wrapped("    ", rig.rig() + mark + ": " + line(reason)));
      }
    }
  }

  /** One reason with the figure needed and the figure offered. */
  public static String line(FitReason reason) {
    String offered = reason.offered().isEmpty() ? "nothing" : reason.offered();
    return reason.rule().word() + ": needed " + reason.needed() + ", offered " + offered;
  }

  private String title(JobFit fit) {
    ShotJob job = jobs.get(fits.indexOf(fit));
    return job.id() + " " + job.name() + (fit.estimated() ? " (estimate)" : "");
  }

  private void wrapped(String indent, String text) {
    lines.addAll(Text.wrap(indent, indent + "  ", text, console.columns()));
  }
}
