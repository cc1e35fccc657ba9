package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.print.ReadPdf.squeezed;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.print.ReadPdf;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.work.WorkModel;

/** What is on paper is complete and whole. */
class RunSheetsPdfTest {
  private static final PlanStamp STAMP =
      new PlanStamp(
          "Version 3 of the board, not published, put by 2026-03-18 17:02", "before lunch");

  private static final double SIDE_MARGIN_MM = 10;
  private static final double TOP_MARGIN_MM = 5;
  private static final String LONG_WORD = "Donaudampfschifffahrtsgesellschaftskapitän".repeat(3);
  private static final String LONG_NOTE = "Mind the left hinge, it is loose. ".repeat(9);

  private final Batch batch = odd(SampleDay.batch(SampleDay.SUMMER));
  private final Plan plan = SamplePlan.of(batch);

  @ParameterizedTest
  @EnumSource(Paper.class)
  void printsEveryJobStepAndCaution(Paper paper) {
    String text = read(paper, List.of()).text();
    WorkModel work = new WorkModel(batch.floor());

    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob planned : rig.jobs()) {
        ShotJob job = job(planned.job());
        assertThat(text).contains(squeezed("Article " + job.article() + ", job " + job.id()));
        for (ChangeoverStep step : planned.steps()) {
          assertThat(text).contains(squeezed("☐ " + step.text()));
        }
        for (String caution : work.of(job, batch.floor().rig(rig.rig()).orElseThrow()).cautions()) {
          assertThat(text).contains(squeezed(caution));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void printsLongAndForeignWordsWhole(Paper paper) {
    String text = read(paper, List.of()).text();

    assertThat(text)
        .contains(squeezed(LONG_NOTE), LONG_WORD)
        .contains("Ελληνικόβάζο", "Русскаяваза", "æøåÆØÅäöüß")
        .contains("☐", "×")
        .doesNotContain("#");
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyPageSaysWhoseItIsAndWhichOfHowMany(Paper paper) {
    ReadPdf pdf = read(paper, List.of());
    Pattern foot =
        Pattern.compile("(Overview|(?:Rig|Operator) .+ \\(.+\\)), page (\\d+) of (\\d+)");
    int expected = 1;
    int last = 0;
    List<String> whose = new ArrayList<>();

    for (String page : pdf.pages()) {
      Matcher found = foot.matcher(page);
      assertThat(found.find()).as(page).isTrue();
      assertThat(page).contains("Monday 1 June 2026");
      assertThat(page).contains("local rules and qualified people decide");
      if (expected > last) {
        expected = 1;
        whose.add(found.group(1));
      }
      assertThat(found.group(2)).isEqualTo(String.valueOf(expected++));
      last = Integer.parseInt(found.group(3));
      assertThat(found.find()).as("a second foot on one page").isFalse();
    }
    assertThat(expected).as("the last sheet is complete").isEqualTo(last + 1);
    assertThat(whose)
        .containsExactly(
            "Overview",
            "Rig Table one (R1)",
            "Rig Platform (R2)",
            "Rig Spare (R3)",
            "Operator Ada L. (ada)",
            "Operator Ben <B> (ben)",
            "Operator Cyn (cyn)");
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void noLetterIsOutsideThePagesMargins(Paper paper) {
    ReadPdf pdf = read(paper, List.of());

    assertThat(pdf.sizes())
        .containsOnly(Math.round(paper.widthMm()) + " x " + Math.round(paper.heightMm()));
    assertThat(pdf.letters())
        .filteredOn(letters -> !letters.text().isBlank())
        .hasSizeGreaterThan(3000)
        .allMatch(letters -> letters.leftMm() > SIDE_MARGIN_MM - 0.1)
        .allMatch(letters -> letters.rightMm() < paper.widthMm() - SIDE_MARGIN_MM + 0.1)
        .allMatch(letters -> letters.topMm() > TOP_MARGIN_MM)
        .allMatch(letters -> letters.bottomMm() < paper.heightMm() - TOP_MARGIN_MM);
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void noJobIsTornApartByAPageBreak(Paper paper) {
    for (String page : read(paper, List.of()).pages()) {
      if (page.startsWith("Rig ")) {
        long heads = Pattern.compile("Article\\s").matcher(page).results().count();
        long ends = Pattern.compile("☐\\s+Done").matcher(page).results().count();
        assertThat(heads).as(page).isEqualTo(ends);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyPageOfAPlanThatBreaksRulesForbidsToWorkFromIt(Paper paper) {
    Breach breach = new Breach(FloorRule.JOB_ORDER, "J3", 1, "Capture of J3 starts too early.");

    ReadPdf pdf = read(paper, List.of(breach));

    assertThat(pdf.pages())
        .allMatch(page -> page.contains("This plan breaks 1 rule. Do not work from it."));
    assertThat(pdf.text()).contains(squeezed("Breaks a rule: Capture of J3 starts too early."));
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void saysOnEveryPageWhichPlanItIs(Paper paper) {
    assertThat(read(paper, List.of()).pages())
        .hasSizeGreaterThan(3)
        .allMatch(page -> page.contains(STAMP.line()));
  }

  @Test
  void theSamePlanGivesTheSameBytes() {
    assertThat(sheets(Paper.A4, List.of()).pdf().bytes())
        .isEqualTo(sheets(Paper.A4, List.of()).pdf().bytes());
  }

  @Test
  void tellsWhichLettersItCannotShow() {
    PdfFile pdf = sheets(Paper.A4, List.of()).pdf();

    assertThat(pdf.unprintable()).containsExactlyInAnyOrder("🏺", "壺");
    assertThat(pdf.note()).contains("🏺", "壺", "empty box");
    assertThat(new ReadPdf(pdf.bytes()).text()).contains("□");
  }

  @Test
  void oneRigAndOneOperatorGetTheirSheetsOnly() {
    SheetChoice choice = new SheetChoice(Set.of("R2"), Set.of("cyn"));
    JobBreaches none = new JobBreaches(List.of());

    ReadPdf pdf =
        new ReadPdf(new RunSheets(batch, plan, STAMP, Paper.A4, choice, none).pdf().bytes());

    assertThat(pdf.pages().get(0)).startsWith("Rig Platform (R2)");
    assertThat(pdf.pages().get(pdf.pages().size() - 1)).contains("Operator Cyn (cyn), page 1 of 1");
    assertThat(pdf.text()).doesNotContain("Overview", squeezed("Rig Table one"), "OperatorAda");
  }

  private ReadPdf read(Paper paper, List<Breach> breaches) {
    return new ReadPdf(sheets(paper, breaches).pdf().bytes());
  }

  private RunSheets sheets(Paper paper, List<Breach> breaches) {
    return new RunSheets(batch, plan, STAMP, paper, SheetChoice.ALL, new JobBreaches(breaches));
  }

  private ShotJob job(String id) {
    return batch.shotList().jobs().stream()
        .filter(job -> job.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The same day with names and notes that are hard to print. */
  private static Batch odd(Batch plain) {
    List<ShotJob> jobs = plain.shotList().jobs().stream().map(RunSheetsPdfTest::odd).toList();
    ShotList list = plain.shotList();
    return new Batch(plain.floor(), new ShotList(list.date(), list.days(), jobs, list.pins()));
  }

  private static ShotJob odd(ShotJob job) {
    String name =
        switch (job.id()) {
          case "J1" -> LONG_WORD;
          case "J3" -> "Ελληνικό βάζο, Русская ваза, æøåÆØÅäöüß";
          case "J4" -> "A lamp with a very long name ".repeat(8).strip();
          case "J5" -> "壺";
          default -> job.name();
        };
    return new ShotJob(
        job.id(),
        job.id().equals("J5") ? "ARTICLE-" + "0123456789".repeat(7) : job.article(),
        job.gtin(),
        name,
        job.sample(),
        job.recipe(),
        job.item(),
        job.setup(),
        job.arrivesAt(),
        job.leavesAt(),
        job.promise(),
        job.weight(),
        job.id().equals("J3") ? LONG_NOTE : job.note());
  }
}
