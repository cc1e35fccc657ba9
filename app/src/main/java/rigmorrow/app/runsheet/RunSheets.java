package rigmorrow.app.runsheet;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.verify.PlanChecker;

/** Writes the run sheets of a plan as one HTML file that needs neither network nor script. */
public final class RunSheets {

  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rigmorrow.app");

  private RunSheets() {}

  /**
   * A front page, then a sheet for each rig and each operator, each starting on a new page when
   * printed.
   *
   * <p>The plan is held against every rule first. Sheets of a plan that breaks one say so on every
   * sheet and at every job concerned, so that nobody works from them by mistake.
   *
   * @param batch the floor and the shot list that were planned
   * @param plan a plan of that batch, workable or not
   * @return an HTML document; encode it as UTF-8
   * @throws IllegalArgumentException when the plan is of another floor or day, or names a rig or a
   *     job that the batch does not have
   */
  public static String html(Batch batch, Plan plan) {
    return html(batch, plan, new JobBreaches(PlanChecker.check(batch, plan)));
  }

  /** The same with what the check found. */
  static String html(Batch batch, Plan plan, JobBreaches breaches) {
    TimeText times = new TimeText(PlanClock.of(batch));
    Names names = new Names(batch);
    JobCards cards = new JobCards(batch, names, times, breaches);
    RigSheets rigSheets = new RigSheets(names, cards, times);
    OperatorSheets operatorSheets = new OperatorSheets(plan, names, cards, times);
    List<RigSheet> rigs = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      rigs.add(rigSheets.of(rig, "rig-" + (rigs.size() + 1)));
    }
    List<OperatorSheet> operators = new ArrayList<>();
    for (Operator operator : batch.floor().crew()) {
      operators.add(operatorSheets.of(operator, "operator-" + (operators.size() + 1)));
    }
    FrontPage front = FrontPages.of(plan, names, times, breaches);
    StringOutput output = new StringOutput();
    TEMPLATES.render("runsheet/sheets.jte", new SheetDocument(front, rigs, operators), output);
    return withoutControls(output.toString());
  }

  /** Control characters in a product name are no text and may not stand in HTML. */
  private static String withoutControls(String html) {
    return html.replaceAll("[\\p{Cntrl}&&[^\\n]]", " ");
  }
}
