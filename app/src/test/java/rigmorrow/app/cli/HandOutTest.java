package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static rigmorrow.app.cli.Runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.print.ReadPdf;

/** What is handed to the crew: run sheets, calendars and labels. */
class HandOutTest {
  private static final String FLOOR = "in/floor.yaml";
  private static final String SHOTS = "in/shot-list.csv";
  private static final String PLAN = "in/plan.json";

  @TempDir static Path folder;

  @BeforeAll
  static void planTheDemo() throws IOException {
    Ran demo = run(folder, "demo", "--jobs", "14", "--first-only", "--out", "in");
    assertThat(demo.exitCode()).as(demo.err()).isZero();
    Path plan = folder.resolve(PLAN);
    String changed = Files.readString(plan).replaceFirst("(\"lateJobs\"\\s*:\\s*)(\\d+)", "$17$2");
    Files.writeString(folder.resolve("broken.json"), changed);
  }

  @Test
  void printsOnTheChosenPaperAndSaysNothingElse() throws IOException {
    Ran a4 = sheets(PLAN, "a4.pdf");
    Ran letter = sheets(PLAN, "letter.pdf", "--paper", "letter");

    assertThat(a4.exitCode()).as(a4.err()).isZero();
    assertThat(a4.out()).isEmpty();
    assertThat(a4.err().lines())
        .as("how the list was read, the demo's mirror with a holder, and what was written")
        .hasSize(3)
        .anyMatch(line -> line.contains("Hands needed 3: a plan takes 2 people"))
        .last()
        .isEqualTo("written: a4.pdf");
    assertThat(pdf("a4.pdf").sizes()).containsOnly("210 x 297");
    assertThat(letter.exitCode()).as(letter.err()).isZero();
    assertThat(pdf("letter.pdf").sizes()).containsOnly("216 x 279");
  }

  @Test
  void theHtmlKnowsItsPaperToo() throws IOException {
    sheets(PLAN, "letter.html", "--paper", "LETTER");

    assertThat(folder.resolve("letter.html")).content().contains("size: letter");
  }

  @Test
  void thePlanFolderHasTheSamePages() throws IOException {
    sheets(PLAN, "same.pdf");
    sheets(PLAN, "same.html");

    assertThat(folder.resolve("same.pdf"))
        .hasSameBinaryContentAs(folder.resolve("in/run-sheets.pdf"));
    assertThat(folder.resolve("same.html"))
        .hasSameBinaryContentAs(folder.resolve("in/run-sheets.html"));
  }

  @Test
  void printsSomeSheetsOnly() throws IOException {
    Ran ran = sheets(PLAN, "some.html", "--rig", "R2", "--rig", "R5", "--operator", "O3");

    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(Jsoup.parse(Files.readString(folder.resolve("some.html"))).select("h2").eachText())
        .hasSize(3)
        .allMatch(title -> title.matches(".*\\((R2|R5|O3)\\)"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"runsheets", "calendar"})
  void refusesUnknownRigsAndOperatorsAllAtOnce(String command) {
    String[] call = {
      command, FLOOR, SHOTS, PLAN, "--out", "no.pdf", "--rig", "R22", "--operator", "O9", "--json"
    };
    Ran ran = run(folder, call);

    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("--rig: there is no 'R22'; accepted: R1, R2,", "did you mean R2?")
        .contains("--operator: there is no 'O9'", "did you mean O1?");
    assertThat(ran.json().get("error").get("problems").size()).isEqualTo(2);
    assertThat(folder.resolve("no.pdf")).doesNotExist();
  }

  @Test
  void refusesAFileThatIsNeitherPdfNorHtml() {
    Ran ran = sheets(PLAN, "sheets.docx");

    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("sheets.docx", "accepted: a name that ends in .pdf or .html");
    assertThat(sheets(PLAN, "a.pdf", "--paper", "a5").err()).contains("A4, LETTER");
  }

  @Test
  void aPlanThatBreaksRulesSaysSoEverywhere() throws IOException {
    Ran printed = sheets("broken.json", "broken.pdf");
    Ran calendar = run(folder, "calendar", FLOOR, SHOTS, "broken.json", "--out", "broken");

    assertThat(printed.exitCode()).as(printed.err()).isEqualTo(3);
    assertThat(printed.err()).contains("breaks rules that must hold");
    assertThat(pdf("broken.pdf").pages()).allMatch(page -> page.contains("Do not work from it."));
    assertThat(calendar.exitCode()).isEqualTo(3);
    assertThat(folder.resolve("broken/rig-R1.ics"))
        .content()
        .contains("DO NOT WORK FROM THIS PLAN");
  }

  @Test
  void writesACalendarForEveryRigAndOperator() throws IOException {
    String[] call = {"calendar", FLOOR, SHOTS, PLAN, "--out", "calendars"};
    Ran ran = run(folder, call);

    assertThat(ran.exitCode()).as(ran.err()).isZero();
    try (Stream<Path> files = Files.list(folder.resolve("calendars"))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .contains("rig-R1.ics", "rig-R6.ics", "operator-O1.ics", "operator-O4.ics")
          .hasSize(10);
    }
    assertThat(folder.resolve("calendars/rig-R1.ics"))
        .content()
        .contains("DTSTAMP:20260303T100000Z");
    assertThat(run(folder, call).exitCode()).isEqualTo(2);
  }

  @Test
  void tellsWhatWasWrittenAsOneDocument() {
    String[] call = {
      "calendar", FLOOR, SHOTS, PLAN, "--out", "json", "--rig", "R1", "--operator", "O1", "--json"
    };
    Ran ran = run(folder, call);

    assertThat(ran.json().get("files").size()).isEqualTo(2);
    assertThat(ran.json().get("files").get(0).asText())
        .isEqualTo(Path.of("json", "rig-R1.ics") + "");
    assertThat(ran.json().get("keepsTheRules").asBoolean()).isTrue();
    assertThat(sheets(PLAN, "json.pdf", "--json").json().get("written").asText())
        .isEqualTo("json.pdf");
  }

  @Test
  void writesLabelsAndAsksBeforeReplacingThem() throws IOException {
    String[] call = {"labels", FLOOR, SHOTS};
    Ran first = run(folder, call);

    assertThat(first.exitCode()).as(first.err()).isZero();
    assertThat(pdf("labels.pdf").text())
        .contains("JobJ0001,sampleS0001")
        .contains("Shotlistfor")
        .contains(",14jobs;madewithoutaplan");
    Ran again = run(folder, call);
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("labels.pdf", "--overwrite");
  }

  @Test
  void refusesLabelsThatAreTooSmall() {
    Ran tooMany = run(folder, "labels", FLOOR, SHOTS, "--out", "small.pdf", "--columns", "8");
    Ran outside = run(folder, "labels", FLOOR, SHOTS, "--out", "small.pdf", "--columns", "9");

    assertThat(tooMany.exitCode()).isEqualTo(2);
    assertThat(tooMany.err()).contains("fewer --columns or --rows");
    assertThat(outside.err()).contains("--columns is 9; accepted: 1 to 8");
    assertThat(folder.resolve("small.pdf")).doesNotExist();
  }

  private static Ran sheets(String plan, String out, String... more) {
    List<String> call = new ArrayList<>(List.of("runsheets", FLOOR, SHOTS, plan, "--out", out));
    call.addAll(List.of(more));
    return run(folder, call.toArray(String[]::new));
  }

  private static ReadPdf pdf(String name) throws IOException {
    return new ReadPdf(Files.readAllBytes(folder.resolve(name)));
  }
}
