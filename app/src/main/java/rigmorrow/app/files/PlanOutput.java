package rigmorrow.app.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.runsheet.RunSheets;
import rigmorrow.app.runsheet.SheetChoice;
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

  /** Makes every file before the first is written, so that a fault leaves none. */
  public static void write(Path folder, Batch batch, Plan plan) throws IOException {
    String json = PlanJsonWriter.write(plan);
    String table = PlanCsvWriter.write(plan, batch.shotList());
    RunSheets sheets = new RunSheets(batch, plan, Paper.A4, SheetChoice.ALL);
    String html = sheets.html();
    PdfFile pdf = sheets.pdf();
    OutputFiles.write(folder.resolve(PLAN), json);
    OutputFiles.write(folder.resolve(TABLE), table);
    OutputFiles.write(folder.resolve(SHEETS), html);
    OutputFiles.write(folder.resolve(PRINTED), pdf.bytes());
  }
}
