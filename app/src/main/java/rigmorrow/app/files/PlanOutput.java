package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.runsheet.RunSheets;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.plan.PlanCsvWriter;
import rigmorrow.data.plan.PlanJsonWriter;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** The files that a plan is written to. */
public final class PlanOutput {
  private static final String PLAN = "plan.json";
  private static final String TABLE = "plan.csv";
  private static final String SHEETS = "run-sheets.html";
  private static final String PRINTED = "run-sheets.pdf";

  private PlanOutput() {}

  /** Names of the files, in the order they are written. */
  public static List<String> names() {
    return List.of(PLAN, TABLE, SHEETS, PRINTED);
  }

  /**
   * Writes every file, the plan first: whatever happens to the sheets, a search is not lost.
   *
   * @param stamp which plan it is
   * @return what the user should know of the sheets; empty when there is nothing
   */
  public static String write(Path folder, Batch batch, Plan plan, PlanStamp stamp)
      throws IOException {
    OutputFiles.write(folder.resolve(PLAN), PlanJsonWriter.write(plan));
    OutputFiles.write(
        folder.resolve(TABLE), PlanCsvWriter.write(plan, batch.shotList(), stamp.whole()));
    RunSheets sheets = new RunSheets(batch, plan, stamp, Paper.A4, SheetChoice.ALL);
    OutputFiles.write(folder.resolve(SHEETS), sheets.html());
    PdfFile pdf = sheets.pdf();
    OutputFiles.write(folder.resolve(PRINTED), pdf.bytes());
    return pdf.note();
  }
}
