package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import rigmorrow.app.print.Paper;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlanFigures;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.work.WorkModel;

class RunSheetsTest {
  private static final PlanStamp STAMP =
      new PlanStamp(
          "Version 3 of the board, not published, put by 2026-03-18 17:02", "before lunch");

  private static final String ADVICE =
      "A plan is advice: local rules and qualified people decide; never a release to operate.";

  private final Batch batch = SampleDay.batch(SampleDay.SUMMER);
  private final Plan plan = SamplePlan.of(batch);
  private final String html = sheets(batch, plan);
  private final Document page = read(html);

  @Test
  void isHtmlWithoutParseErrors() {
    Parser parser = Parser.htmlParser().setTrackErrors(50);

    parser.parseInput(html, "");

    assertThat(parser.getErrors()).isEmpty();
    assertThat(page.selectFirst("html").attr("lang")).isEqualTo("en");
    assertThat(page.title()).contains("Hall <2> & yard").contains("Monday 1 June 2026");
  }

  @Test
  void needsNeitherNetworkNorScript() {
    assertThat(page.select("script, link, img, iframe, object, [src], [onclick]")).isEmpty();
    assertThat(page.select("[style]").eachAttr("style"))
        .allMatch(style -> style.matches("left: [0-9.]+%"));
    assertThat(page.select("a")).allMatch(link -> link.attr("href").startsWith("#"));
    assertThat(html).doesNotContain("url(").doesNotContain("@import").doesNotContain("http");
  }

  @Test
  void headingsGoDownOneLevelAtATime() {
    int level = 0;
    for (Element heading : page.select("h1, h2, h3, h4, h5, h6")) {
      int next = heading.tagName().charAt(1) - '0';
      assertThat(next).as(heading.text()).isLessThanOrEqualTo(level + 1);
      level = next;
    }
    assertThat(page.select("h1")).hasSize(1);
  }

  @Test
  void everyTableHeaderHasAScopeAndEveryIdIsUnique() {
    assertThat(page.select("th")).isNotEmpty().allMatch(header -> header.hasAttr("scope"));
    assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    assertThat(page.select("[aria-labelledby]").eachAttr("aria-labelledby"))
        .allMatch(id -> page.getElementById(id) != null);
  }

  @Test
  void theIndexLinksToEverySheet() {
    assertThat(page.select("nav a").eachAttr("href"))
        .containsExactly("#rig-1", "#rig-2", "#rig-3", "#operator-1", "#operator-2", "#operator-3")
        .allMatch(link -> page.selectFirst(link) != null);
  }

  @Test
  void everySheetSaysThatAPlanIsAdvice() {
    assertThat(page.select("section.sheet"))
        .hasSize(7)
        .allMatch(sheet -> sheet.select(".advice").text().equals(ADVICE));
  }

  @Test
  void everyPlannedJobStandsOnItsRigsSheetInOrder() {
    for (int i = 0; i < plan.rigs().size(); i++) {
      List<String> names =
          plan.rigs().get(i).jobs().stream().map(job -> shotJob(job.job()).name()).toList();

      assertThat(page.select("#rig-" + (i + 1) + " .entry .name").eachText()).isEqualTo(names);
    }
  }

  @Test
  void everyPartOfAJobStandsThereWithItsTimeAndPeople() {
    assertThat(entry("rig-1", 1).select(".parts li").eachText())
        .containsExactly(
            "Changeover 09:10–09:14 Ada L. and Ben <B> 2 people",
            "Warm-up 09:14–09:24",
            "Load 09:14–09:16 Ada L. and Ben <B> 2 people",
            "Rig waits 09:16–09:24",
            "Capture 09:24–09:34 Ada L.",
            "Unload 09:34–09:35 Ada L. and Ben <B> 2 people");
  }

  @Test
  void everyTaskStandsOnItsOperatorsSheet() {
    for (int i = 0; i < 3; i++) {
      String operator = batch.floor().crew().get(i).id();
      List<String> times = page.select("#operator-" + (i + 1) + " .entry .when").eachText();

      assertThat(times).hasSize(tasksOf(operator)).isSorted();
    }
    assertThat(tasksOf("ada")).isEqualTo(11);
  }

  private int tasksOf(String operator) {
    return plan.rigs().stream()
        .flatMap(rig -> rig.jobs().stream())
        .mapToInt(job -> tasksOf(operator, job))
        .sum();
  }

  private static int tasksOf(String operator, PlannedJob job) {
    Attended changeover = job.changeover();
    return (changeover != null && changeover.operators().contains(operator) ? 1 : 0)
        + (job.load().operators().contains(operator) ? 1 : 0)
        + (job.captureOperators().contains(operator) ? 1 : 0)
        + (job.unload().operators().contains(operator) ? 1 : 0);
  }

  @Test
  void aSharedTaskNamesTheOtherAndWhoIsInCharge() {
    assertThat(page.select("#operator-1").text())
        .contains("2 people With Ben <B>, you are in charge");
    assertThat(page.select("#operator-2").text())
        .contains("2 people With Ada L., Ada L. is in charge");
  }

  @Test
  void partsOfOneJobThatFollowEachOtherAreOneTask() {
    Element task = page.select("#operator-1 .entry").get(2);

    assertThat(task.select(".part").eachText())
        .containsExactly("Changeover", "Load", "Stay during capture", "Unload");
    assertThat(page.select("#operator-1 .number").eachText()).containsExactly("1", "2", "3", "4");
  }

  @Test
  void aHazardStandsInFullAtEveryTaskOfItsJob() {
    Plan halves = SamplePlan.withLampTakenOffLater(batch);
    Document later = read(sheets(batch, halves));
    List<String> tasks = later.select("#operator-2 .entry:contains(Lamp) .cautions").eachText();
    assertThat(tasks)
        .hasSize(2)
        .allSatisfy(
            task ->
                assertThat(task)
                    .contains(
                        "Mains on a turning head (230 V, 60 W): qualified person only, check cable"
                            + " and plug, switch off before touching.",
                        "Size or mass is an estimate: measure and weigh before placing it."));
  }

  @Test
  void everyJobLeftOutStandsThereWithItsSentences() {
    String front = page.select("section.first").text();

    plan.leftOut()
        .forEach(
            left ->
                assertThat(front).contains(shotJob(left.job()).name()).contains(left.sentences()));
    assertThat(front)
        .contains("Needs measuring")
        .contains("No rig can take it")
        .contains("No room in the plan");
  }

  @Test
  void aLateJobIsMarkedInWords() {
    assertThat(page.select("section.first td strong").eachText()).contains("5 min");
    assertThat(entry("rig-1", 1).text()).contains("Due 09:30: LATE by 5 min");
    assertThat(entry("rig-1", 0).text()).contains("Due 09:00 (must): kept, 1 h 48 min to spare");
  }

  @Test
  void namesAndNotesAreEscaped() {
    assertThat(page.select("#rig-1 .name").eachText()).contains(SampleDay.HOSTILE_NAME);
    assertThat(html).doesNotContain("<script").doesNotContain("<b>me").doesNotContain("Ben <B>");
    assertThat(entry("rig-1", 1).text()).contains("Note Mind <b>me</b>");
  }

  @Test
  void controlCharactersBecomeSpaces() {
    ShotJob plain = shotJob("J1");
    ShotJob odd =
        new ShotJob(
            "J1",
            plain.article(),
            null,
            "A\u0000B\u001bC",
            "S",
            "spin",
            plain.item(),
            plain.setup(),
            null,
            null,
            null,
            1,
            null);
    List<ShotJob> jobs =
        batch.shotList().jobs().stream().map(job -> job.id().equals("J1") ? odd : job).toList();
    Batch oddBatch = new Batch(batch.floor(), new ShotList(SampleDay.SUMMER, 1, jobs, List.of()));

    assertThat(sheets(oddBatch, plan)).contains("A B C");
  }

  @Test
  void everyComputedCautionStandsOnTheRigsAndTheOperatorsSheet() {
    WorkModel work = new WorkModel(batch.floor());
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        List<String> cautions =
            work.of(shotJob(job.job()), batch.floor().rig(rig.rig()).orElseThrow()).cautions();
        String operatorSheet =
            job.load().operators().contains("ada") ? "#operator-1" : "#operator-2";

        Element sheet = page.selectFirst("section:has(h2:contains(" + rig.rig() + "))");
        Element row = sheet.selectFirst(".entry:contains(job " + job.job() + ",)");
        assertThat(
                Stream.concat(
                        sheet.select(".always li").stream(), row.select(".cautions li").stream())
                    .map(Element::text))
            .containsAll(cautions);
        assertThat(page.select(operatorSheet + " .cautions li").eachText().toString())
            .contains(cautions);
      }
    }
  }

  @Test
  void eachKindOfCautionIsShown() {
    assertThat(
            String.join("\n", page.select("#rig-1 .cautions li, #rig-2 .cautions li").eachText()))
        .contains("Heavy: 38.0 kg")
        .contains("Glass: check for cracks")
        .contains("Hanging load of 0.4 kg")
        .contains("Mains on a turning head (230 V, 60 W)")
        .contains("Size or mass is an estimate")
        .contains("Moving arm")
        .contains("Grey paper: do not step on it.")
        .contains("Rotator head: check the safety wire.")
        .contains("Platform edge: mind the step.");
  }

  @Test
  void kitPowerHangingHolderAndPicturesAreSpelledOut() {
    assertThat(entry("rig-2", 0).text())
        .doesNotContain("Rotator head, RH-1: fetch")
        .contains("Fetch Rotator head (RH-1) from Shelf A, mount, align and test (3 min) 2 people")
        .contains("Stand it on the plate, hang its straps: 0.4 kg hanging, drop 600 mm.")
        .contains("☐ Pictures Spin of two rows: 2 rows of 36 and 24 frames");
    assertThat(page.select("#rig-2").text())
        .contains("Row 2: elevation 22.5°, 24 frames, stop and go")
        .contains("In all 60 pictures; Strobe light; Background: White, lit directly");
    assertThat(entry("rig-2", 1).text())
        .contains("Connect power: 230 V, 60 W, plug F. Switch it on only when all are clear")
        .contains("300 × 200 × 250 mm (estimate), 2 kg (estimate)")
        .contains("Sample arrives 08:00");
    assertThat(entry("rig-1", 1).text())
        .contains("Fix it in the holder (0.35 kg).")
        .contains("Measure by hand: height.")
        .contains("Background: White, lit directly to Grey (4 min 30 s, then 10 min by itself)")
        .contains("☐ Pictures Four stills: 4 stills, 3 focus brackets each");
    assertThat(page.select("#rig-1").text())
        .contains("4 stills (elevation/turn): 0°/0°, 0°/90°, 0°/180°, 45°/45°")
        .contains("3 focus brackets for each picture");
    assertThat(entry("rig-1", 0).text()).contains("GTIN 4006381333931").contains("Running already");
  }

  @Test
  void gapsBreaksAndClosuresAreLines() {
    assertThat(page.select("#rig-1 .remark").eachText())
        .contains("Nothing planned 07:13–09:10 (1 h 57 min)");
    assertThat(page.select("#rig-2 .remark").last().text())
        .isEqualTo(
            "Nothing planned 11:13–13:00 (1 h 47 min); Rig closes 13:00; Closed 13:00–14:00: Lamp"
                + " service; Rig opens 14:00; Nothing planned 14:00–18:00 (4 h); Rig closes 18:00");
    assertThat(page.select("#operator-1 .remark").first().text())
        .startsWith("Shift starts 00:00; No task");
    assertThat(page.select("#operator-1 .remark").last().text())
        .contains("Break 12:00–12:30; No task 12:30–16:00 (3 h 30 min); Shift ends 16:00");
  }

  @Test
  void anEmptyRigAndAnEmptyOperatorGetASheetThatSaysSo() {
    assertThat(page.select("#rig-3 .nothing").text()).isEqualTo("Nothing is planned on this rig.");
    assertThat(page.select("#operator-3 .nothing").text())
        .isEqualTo("Nothing is planned for this operator.");
  }

  @Test
  void refusesAPlanOfAnotherBatch() {
    Batch other = new Batch(batch.floor(), new ShotList(SampleDay.SUMMER, 1, List.of(), List.of()));

    assertThatThrownBy(() -> sheets(other, plan))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the plan names job J1, the shot list does not");
  }

  @Test
  void saysSoWhenThePlanBreaksHardRules() {
    Plan broken =
        new Plan(
            plan.floor(),
            plan.zone(),
            plan.date(),
            plan.days(),
            plan.rigs(),
            plan.leftOut(),
            new PlanFigures(60, 3, 0, 0, 0, 5, 3, 1, 1200, 450, 1),
            plan.origin());

    assertThat(
            read(new RunSheets(batch, broken, STAMP, Paper.A4, SheetChoice.ALL).html())
                .select(".warning")
                .text())
        .contains("Do not work from it");
    assertThat(page.select(".warning")).isEmpty();
  }

  /** No-break spaces are a matter of looks. */
  static Document read(String html) {
    return Jsoup.parse(html.replace('\u00a0', ' '));
  }

  private Element entry(String sheet, int index) {
    return page.select("#" + sheet + " .entry").get(index);
  }

  private ShotJob shotJob(String id) {
    return batch.shotList().jobs().stream()
        .filter(job -> job.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyTagIsBalanced() {
    for (String tag :
        List.of("section", "table", "tr", "td", "ul", "ol", "p", "span", "dl", "bdi")) {
      assertThat(count("<" + tag + "[ >]")).as(tag).isEqualTo(count("</" + tag + ">"));
    }
  }

  private long count(String pattern) {
    return Pattern.compile(pattern).matcher(html).results().count();
  }

  /** With what a check is to have found. */
  static RunSheets sheets(Batch batch, Plan plan, List<Breach> breaches) {
    return new RunSheets(batch, plan, STAMP, Paper.A4, SheetChoice.ALL, new JobBreaches(breaches));
  }

  /** The layout alone: the sample plan is made by hand and does not keep every rule. */
  static String sheets(Batch batch, Plan plan) {
    return sheets(batch, plan, List.of()).html();
  }
}
