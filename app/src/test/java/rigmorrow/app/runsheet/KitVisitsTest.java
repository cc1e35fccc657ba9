package rigmorrow.app.runsheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import rigmorrow.app.runsheet.text.ItemText;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.verify.PlanChecker;
import rigmorrow.model.work.TakeOff;
import rigmorrow.solver.FloorSolver;

/** Who works at a rig knows what hangs there and when somebody comes to take it off. */
class KitVisitsTest {
  private static Batch day;
  private static Plan plan;
  private static Document sheets;

  @BeforeAll
  static void plan() {
    day = Demo.batch(150, 2, SampleDay.SUMMER);
    plan = FloorSolver.dispatch(day);
    sheets = RunSheetsTest.read(RunSheetsTest.sheets(day, plan));
  }

  /** A piece that is fetched from a rig, by a job of another. */
  private record Taken(KitUse use, String to, PlannedJob by) {
    Span span() {
      return TakeOff.of(day.floor(), to, by).stream()
          .filter(off -> off.use().equals(use))
          .findFirst()
          .orElseThrow()
          .span();
    }
  }

  private static List<Taken> taken() {
    List<String> rigs = plan.rigs().stream().map(RigPlan::rig).toList();
    List<Taken> taken = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        for (KitUse use : job.kit()) {
          if (rigs.contains(use.from()) && !use.from().equals(rig.rig())) {
            taken.add(new Taken(use, rig.rig(), job));
          }
        }
      }
    }
    return taken;
  }

  private static Element section(String rig) {
    return sheets.selectFirst("section:has(h2:contains(" + rig + "))");
  }

  private static RigPlan rig(String id) {
    return plan.rigs().stream().filter(one -> one.rig().equals(id)).findFirst().orElseThrow();
  }

  private static Kit kit(KitUse use) {
    return day.floor().kit(use.kit()).orElseThrow();
  }

  @Test
  void tellsTheRigThatSomethingIsTakenFromWhenAndByWhom() {
    List<Taken> all = taken();
    assertThat(all).as("kit goes from rig to rig on this day").hasSizeGreaterThan(3);
    for (Taken one : all) {
      String told = kit(one.use()).label() + " (" + one.use().unit() + ") is taken from here to ";
      String to = day.floor().rig(one.to()).orElseThrow().name() + " (" + one.to() + ") by ";
      assertThat(section(one.use().from()).select(".warning").text())
          .contains("☐ Kit leaves", told + to, "make sure first that this rig stands still");
      List<PlannedJob> fetching = rig(one.to()).jobs();
      Element entry = section(one.to()).select(".entry").get(fetching.indexOf(one.by()));
      String from = day.floor().rig(one.use().from()).orElseThrow().name();
      assertThat(entry.text())
          .as("a rig by its name in the step that fetches, and no second line that says so")
          .contains("(%s) from %s (%s), mount".formatted(one.use().unit(), from, one.use().from()))
          .doesNotContain(one.use().unit() + ": fetch from");
      assertThat(entry.select(".cautions").text())
          .contains(
              "(" + one.use().unit() + ") comes off ",
              "make sure that it stands still and that nobody can start it");
      assertThat(rig(one.use().from()).jobs())
          .as("nothing runs where somebody takes kit off")
          .noneMatch(job -> job.whole().overlaps(one.span()));
    }
  }

  private static final Pattern WAITS =
      Pattern.compile(
          "for [^,]+ \\(([^)]+)\\), which cannot come off [^(]+\\((\\w+)\\) before (\\d\\d:\\d\\d)");

  /** What a gap is said to be for is held against the times of the plan alone. */
  @Test
  void saysInAGapForWhichKitTheRigWaitsAndWhereThatIs() {
    TimeText times = new TimeText(PlanClock.of(day));
    int told = 0;
    for (RigPlan rig : plan.rigs()) {
      for (Element remark : section(rig.rig()).select("td:contains(Nothing planned)")) {
        Element next = remark.closest("tbody").nextElementSiblings().select(".entry").first();
        Matcher waits = WAITS.matcher(remark.text());
        while (waits.find()) {
          PlannedJob job = rig.jobs().get(section(rig.rig()).select(".entry").indexOf(next));
          KitUse use =
              job.kit().stream()
                  .filter(it -> it.unit().equals(waits.group(1)))
                  .findFirst()
                  .orElseThrow();
          assertThat(use.from()).isEqualTo(waits.group(2));
          assertThat(rig(use.from()).jobs())
              .as("it is free there when a job there ends")
              .anyMatch(one -> times.at(one.whole().end()).equals(waits.group(3)));
          told++;
        }
      }
    }
    assertThat(told).as("gaps that kit makes on this day").isGreaterThanOrEqualTo(2);
  }

  @Test
  void saysNothingOfWhatGapsAreForWhereThePlanHasOtherTimes() {
    Taken one = taken().stream().filter(it -> place(it) >= 0).findFirst().orElseThrow();
    assertThat(WAITS.matcher(sheets.text()).find()).isTrue();
    String id = one.use().from();
    List<PlannedJob> jobs = new ArrayList<>(rig(id).jobs());
    jobs.set(place(one), unloadedAt(jobs.get(place(one)), one.span().end()));
    Document other = RunSheetsTest.read(RunSheetsTest.sheets(day, with(id, jobs)));
    assertThat(WAITS.matcher(other.text()).find()).isFalse();
  }

  private static Plan with(String id, List<PlannedJob> jobs) {
    List<RigPlan> rigs =
        plan.rigs().stream()
            .map(rig -> rig.rig().equals(id) ? new RigPlan(id, jobs) : rig)
            .toList();
    return new Plan(
        plan.floor(),
        plan.zone(),
        plan.date(),
        plan.days(),
        rigs,
        plan.leftOut(),
        plan.figures(),
        plan.origin());
  }

  /** An older program let a job run on while somebody takes kit off its rig. */
  @Test
  void saysAtAJobThatRunsMeanwhileThatKitIsTakenOff() {
    assertThat(sheets.select(".entry:contains(is taken from here)")).isEmpty();
    Taken one = taken().stream().filter(it -> place(it) >= 0).findFirst().orElseThrow();
    String id = one.use().from();
    List<PlannedJob> jobs = new ArrayList<>(rig(id).jobs());
    int at = place(one);
    jobs.set(at, unloadedAt(jobs.get(at), one.span().end()));
    Plan older = with(id, jobs);
    assertThat(PlanChecker.check(day, older))
        .extracting(Breach::rule)
        .contains(FloorRule.KIT_TAKEN_OFF);

    Document told = RunSheetsTest.read(RunSheetsTest.sheets(day, older));

    Element entry =
        told.selectFirst("section:has(h2:contains(" + id + "))").select(".entry").get(at);
    String when = new TimeText(PlanClock.of(day)).span(one.span());
    assertThat(entry.text())
        .contains(
            when
                + ": "
                + kit(one.use()).label()
                + " ("
                + one.use().unit()
                + ") is taken from here to "
                + day.floor().rig(one.to()).orElseThrow().name()
                + " ("
                + one.to()
                + ") by ");
  }

  /** Which job of the rig that it is taken from is the last before that; -1 for none. */
  private static int place(Taken taken) {
    List<PlannedJob> jobs = rig(taken.use().from()).jobs();
    int before = 0;
    while (before < jobs.size() && jobs.get(before).whole().end() <= taken.span().start()) {
      before++;
    }
    return before - 1;
  }

  private static PlannedJob unloadedAt(PlannedJob job, int second) {
    Attended unload = job.unload();
    return new PlannedJob(
        job.job(),
        job.steps(),
        job.changeover(),
        job.warmedUpAt(),
        job.load(),
        job.capture(),
        job.captureOperators(),
        new Attended(new Span(unload.span().start(), second), unload.operators()),
        job.kit(),
        job.lateSeconds());
  }

  @Test
  void saysAtEveryJobWhatHangsThereThatItDidNotAskFor() {
    int seen = 0;
    for (Taken one : taken()) {
      String caution = kit(one.use()).caution();
      List<PlannedJob> jobs = rig(one.use().from()).jobs();
      Elements entries = section(one.use().from()).select(".entry");
      int last = -1;
      for (int i = 0; i < jobs.size(); i++) {
        boolean uses = jobs.get(i).kit().stream().anyMatch(it -> same(it, one.use()));
        boolean before = jobs.get(i).whole().start() < one.span().start();
        last = uses && before ? i : last;
      }
      for (int i = last + 1; last >= 0 && caution != null && i < jobs.size(); i++) {
        if (jobs.get(i).whole().start() < one.span().end()) {
          assertThat(entries.get(i).text()).contains(caution);
          seen++;
        }
      }
    }
    assertThat(seen).as("jobs under kit that they do not use").isPositive();
  }

  private static boolean same(KitUse one, KitUse other) {
    return one.unit().equals(other.unit());
  }

  @Test
  void givesTheCautionOfMainsWhereTheSocketIsTakenOutOfService() {
    Elements off =
        sheets.select("section:has(h2:contains(R2)) .entry, section:has(h2:contains(R6)) .entry");
    List<Element> taking =
        off.stream().filter(entry -> entry.text().contains("take it out of service")).toList();
    assertThat(taking).as("the socket is taken out of service on this day").isNotEmpty();
    assertThat(taking)
        .allSatisfy(
            entry ->
                assertThat(entry.select(".cautions, .caution").text())
                    .contains("qualified person only, switched off and unplugged"));
  }

  @Test
  void saysWhoSwitchesAnItemOnAndWhen() {
    assertThat(
            day.shotList().jobs().stream()
                .filter(job -> job.item().power() != null)
                .map(job -> String.join(" ", ItemText.loading(job.item()))))
        .isNotEmpty()
        .allSatisfy(
            text ->
                assertThat(text)
                    .contains("Switch it on only when all are clear", "a qualified person"));
  }
}
