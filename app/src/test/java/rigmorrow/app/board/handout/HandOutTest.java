package rigmorrow.app.board.handout;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.BoardState.Handed;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.Formats;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.plan.FloorRule;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;
import rigmorrow.solver.FloorSolver;

/** What is handed out is the plan, and is read back by what reads such files. */
class HandOutTest {
  private static final Instant NOW = Instant.parse("2026-03-03T10:00:00Z");
  private static final Batch BATCH = Demo.batch(30, 1, LocalDate.of(2026, 3, 4));
  private static final Plan PLAN = FloorSolver.dispatch(BATCH);
  private static final BoardState STATE = new BoardState(1, BATCH, PLAN, List.of(), "begun", NOW);
  private static final PlanStamp STAMP =
      PlanStamp.ofVersion(3, "before lunch", NOW, BATCH.floor().zone(), 0, "0a1b2c3d");
  private static final Handed HANDED = new Handed(STATE, STAMP);

  @TempDir Path folder;

  @ParameterizedTest
  @EnumSource(HandOut.class)
  void isFoundByItsNameOnly(HandOut file) {
    assertThat(HandOut.of(file.fileName())).contains(file);
    assertThat(HandOut.of("../" + file.fileName())).isEmpty();
    assertThat(HandOut.of(file.fileName().toUpperCase(java.util.Locale.ROOT))).isEmpty();
    assertThat(file.savedAs(STATE, 3)).contains("2026-03-04-version-3.");
    assertThat(file.savedAs(STATE, 0)).doesNotContain("version");
  }

  @Test
  void handsOutPlanAndShotListThatAreReadBack() throws Exception {
    Path plan = Files.write(folder.resolve("plan.json"), HandOut.PLAN_JSON.bytes(HANDED, NOW));
    assertThat(Formats.readPlan(plan)).isEqualTo(PLAN);
    Path list = Files.write(folder.resolve("list.json"), HandOut.SHOT_LIST.bytes(HANDED, NOW));
    assertThat(Formats.readShotList(list, BATCH.floor()).jobs())
        .hasSameSizeAs(BATCH.shotList().jobs());
    String table = new String(HandOut.PLAN_CSV.bytes(HANDED, NOW), UTF_8);
    assertThat(table.lines().count()).isGreaterThan(30);
  }

  @Test
  void handsOutACalendarForEachRigAndOperator() throws Exception {
    List<String> names = new ArrayList<>();
    byte[] zip = HandOut.CALENDARS.bytes(HANDED, NOW);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        names.add(entry.getName());
        assertThat(new String(((InputStream) in).readAllBytes(), UTF_8))
            .startsWith("BEGIN:VCALENDAR");
      }
    }
    assertThat(names)
        .hasSize(BATCH.floor().rigs().size() + BATCH.floor().crew().size())
        .contains("rig-R1.ics")
        .allMatch(name -> !name.contains("/"));
  }

  @Test
  void saysInEveryFileForTheCrewWhichPlanItIs() throws Exception {
    String words =
        "Version 3 of the board, not published, put by 2026-03-03 11:00, plan 0a1b2c3d: before lunch";
    String table = new String(HandOut.PLAN_CSV.bytes(HANDED, NOW), UTF_8);
    assertThat(table.lines().skip(1)).allMatch(row -> row.endsWith(",\"" + words + "\""));
    assertThat(new String(HandOut.RUN_SHEETS_HTML.bytes(HANDED, NOW), UTF_8)).contains(words);
    assertThat(new PlanChart(HANDED).svg(false)).contains(words);
    byte[] zip = HandOut.CALENDARS.bytes(HANDED, NOW);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        String text = new String(((InputStream) in).readAllBytes(), UTF_8).replace("\r\n ", "");
        long events = Pattern.compile("BEGIN:VEVENT").matcher(text).results().count();
        String said = Pattern.quote("Version 3 of the board\\, not published");
        assertThat(Pattern.compile(said).matcher(text).results()).hasSize((int) events);
      }
    }
  }

  @Test
  void handsOutSheetsAndLabels() {
    String html = new String(HandOut.RUN_SHEETS_HTML.bytes(HANDED, NOW), UTF_8);
    assertThat(html).contains("<html").doesNotContain("<script");
    assertThat(new String(HandOut.LABELS.bytes(HANDED, NOW), 0, 5, UTF_8)).isEqualTo("%PDF-");
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void drawsTheWholePlan(boolean byCrew) throws Exception {
    String svg = new PlanChart(HANDED).svg(byCrew);
    Document document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(svg)));
    String words = document.getDocumentElement().getTextContent();
    assertThat(words).contains(BATCH.floor().name(), "Europe/Copenhagen", "Changeover", "Closed");
    if (byCrew) {
      BATCH.floor().crew().forEach(operator -> assertThat(words).contains(operator.name()));
    } else {
      BATCH.floor().rigs().forEach(rig -> assertThat(words).contains("(" + rig.id() + ")"));
      PLAN.rigs().stream()
          .filter(rig -> !rig.jobs().isEmpty())
          .forEach(rig -> assertThat(words).contains(rig.jobs().get(0).job()));
    }
    assertThat(svg).doesNotContain("style=", "<script", "NaN", "Infinity");
  }

  @Test
  void warnsOnADrawingOfAPlanThatBreaksRules() {
    Breach breach = new Breach(FloorRule.RIG_HOURS, "R1", 60, "R1 works 1 min too long.");
    BoardState broken = new BoardState(1, BATCH, PLAN, List.of(breach), "begun", NOW);
    assertThat(new PlanChart(new Handed(broken, STAMP)).svg(false)).contains("Do not work from it");
  }

  @Test
  void drawsSeveralDaysAndNone() {
    Batch long_ = Demo.batch(400, 1, LocalDate.of(2026, 3, 27));
    var list = long_.shotList();
    Batch three =
        new Batch(
            long_.floor(),
            new rigmorrow.model.shot.ShotList(list.date(), 3, list.jobs(), List.of()));
    BoardState state =
        new BoardState(1, three, FloorSolver.dispatch(three), List.of(), "begun", NOW);
    assertThat(new PlanChart(new Handed(state, STAMP)).svg(false)).contains("Fri", "Sat");
    Batch none =
        new Batch(
            long_.floor(), new rigmorrow.model.shot.ShotList(list.date(), 1, List.of(), List.of()));
    BoardState empty = new BoardState(1, none, FloorSolver.dispatch(none), List.of(), "b", NOW);
    assertThat(new PlanChart(new Handed(empty, STAMP)).svg(true)).contains("A plan is advice");
  }
}
