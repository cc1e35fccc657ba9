package rigmorrow.app.runsheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.print.PdfPages;
import rigmorrow.app.print.PrintableText;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.explain.Wait;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.solver.FloorSolver;

/**
 * Writes the run sheets of a plan: a front page, then a sheet for each rig and each operator, each
 * starting on a new page when printed.
 *
 * <p>The plan is held against every rule first. Sheets of a plan that breaks one say so on every
 * sheet and at every job concerned, so that nobody works from them by mistake. The same plan gives
 * the same bytes.
 */
public final class RunSheets {

  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rigmorrow.app");

  private final Batch batch;
  private final Plan plan;
  private final PlanStamp stamp;
  private final Paper paper;
  private final SheetChoice choice;
  private final JobBreaches breaches;
  private final Map<String, List<Wait>> waits;

  /**
   * @param batch the floor and the shot list that were planned
   * @param plan a plan of that batch, workable or not
   * @param stamp which plan it is; stands on every page
   * @param paper to print on
   * @param choice whose sheets; the front page is left out where not all are meant
   * @throws IllegalArgumentException when the plan is of another floor or day
   */
  public RunSheets(Batch batch, Plan plan, PlanStamp stamp, Paper paper, SheetChoice choice) {
    this(batch, plan, stamp, paper, choice, new JobBreaches(PlanChecker.check(batch, plan)));
  }

  /** The same with what the check found. */
  RunSheets(
      Batch batch,
      Plan plan,
      PlanStamp stamp,
      Paper paper,
      SheetChoice choice,
      JobBreaches breaches) {
    this.batch = batch;
    this.plan = plan;
    this.stamp = stamp;
    this.paper = paper;
    this.choice = choice;
    this.breaches = breaches;
    this.waits = FloorSolver.waits(batch, plan);
  }

  /**
   * One HTML file that needs neither network nor script.
   *
   * @return an HTML document; encode it as UTF-8
   * @throws IllegalArgumentException when the plan names a rig or a job that the batch does not
   *     have
   */
  public String html() {
    return page(false);
  }

  /**
   * One PDF file.
   *
   * @throws IllegalArgumentException when the plan names a rig or a job that the batch does not
   *     have
   */
  public PdfFile pdf() {
    return PdfPages.of(page(true));
  }

  private String page(boolean forPdf) {
    TimeText times = new TimeText(PlanClock.of(batch));
    Names names = new Names(batch);
    JobCards cards = new JobCards(batch, plan, names, times, breaches);
    RigSheets rigSheets = new RigSheets(waits, names, cards, times);
    OperatorSheets operatorSheets = new OperatorSheets(plan, names, cards, times);
    List<RigSheet> rigs = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      if (choice.rig(rig.rig())) {
        rigs.add(rigSheets.of(rig, "rig-" + (rigs.size() + 1)));
      }
    }
    List<OperatorSheet> operators = new ArrayList<>();
    for (Operator operator : batch.floor().crew()) {
      if (choice.operator(operator.id())) {
        operators.add(operatorSheets.of(operator, "operator-" + (operators.size() + 1)));
      }
    }
    FrontPage front = choice.all() ? FrontPages.of(plan, names, times, breaches) : null;
    SheetDocument.Heading heading =
        new SheetDocument.Heading(
            plan.floor(), times.dates(plan.days()), stamp, breaches.warning());
    StringOutput output = new StringOutput();
    TEMPLATES.render(
        "runsheet/sheets.jte",
        new SheetDocument(heading, front, rigs, operators, paper, forPdf),
        output);
    return PrintableText.forXml(output.toString());
  }
}
