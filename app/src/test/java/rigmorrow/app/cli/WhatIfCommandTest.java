package rigmorrow.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.app.cli.Runner.Ran;
import rigmorrow.app.terminal.Text;
import rigmorrow.app.whatif.SmallStudy;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.model.floor.Costs;
import rigmorrow.model.floor.Floor;

class WhatIfCommandTest {
  private static final int DAYS = 3;
  private static final int FLOORS = 6;

  @TempDir static Path folder;

  @BeforeAll
  static void writeFiles() {
    SmallStudy.write(folder, SmallStudy.days(DAYS, 12), SmallStudy.study());
  }

  private static Ran whatif(String... more) {
    List<String> all =
        new java.util.ArrayList<>(List.of("whatif", "scenarios.yaml", "days", "--steps", "200"));
    all.addAll(List.of(more));
    return Runner.run(folder, all.toArray(String[]::new));
  }

  private static List<String> cells(String out) throws Exception {
    List<String> lines = Files.readAllLines(folder.resolve(out).resolve("cells.csv"));
    return lines.subList(2, lines.size());
  }

  @Test
  void comparesAndReports() throws Exception {
    Ran ran = whatif("--out", "one");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out())
        .startsWith("Lindholm Hall: what to buy next\n5 scenarios against the floor as it is on 3")
        .contains("Another glass table ", "A quick-change fixture for backgrounds ")
        .contains("scenario      left out  kept %  late (h)", "change (h)  over (h)")
        .contains("1.5 h is 1 h 30 min")
        .doesNotContain("written to");
    assertThat(ran.err())
        .startsWith(
            "18 plans of 200 steps on one core: 6 floors and demands on 3 days with 1 seed;"
                + " Ctrl-C keeps what is finished")
        .contains("written to one: cells.csv, report.html, report.pdf, summary.csv, summary.json");
    assertThat(ran.out().lines()).allMatch(line -> Text.columns(line) <= 80);
    assertThat(cells("one")).hasSize(DAYS * FLOORS);
    for (String file : List.of("report.html", "report.pdf", "summary.csv", "summary.json")) {
      assertThat(folder.resolve("one").resolve(file)).isNotEmptyFile();
    }
    List<String> table = Files.readAllLines(folder.resolve("one/summary.csv"));
    assertThat(table).hasSize(1 + 5 * 10);
    assertThat(table.get(0)).startsWith("scenario,demandPercent,figure,unit,asItIs");
    assertThat(table)
        .filteredOn(row -> row.matches(".*,(late_hours|finished|\\w*hours),.*"))
        .hasSize(5 * 4)
        .allMatch(row -> row.split(",", -1)[3].equals("h"));
  }

  @Test
  void callsScenariosByTheirTitlesWhileItGoesOn() {
    Ran ran =
        Runner.onTerminal(
            folder, "whatif", "scenarios.yaml", "days", "--steps", "200", "--out", "titles");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err())
        .contains("left; last: Another glass table, on 2026-03-0")
        .contains("left; last: The floor as it is, on 2026-03-0")
        .doesNotContain("last: turntable")
        .doesNotContain("last: as-it-is");
  }

  @Test
  void printsTheDocumentThatItWrites() throws Exception {
    Ran ran = whatif("--out", "json", "--json", "--again", "--one-more", "--demand=-20,20");
    JsonNode json = ran.json();
    assertThat(new ObjectMapper().readTree(folder.resolve("json/summary.json").toFile()))
        .isEqualTo(json);
    assertThat(json.path("version").asInt()).isEqualTo(1);
    assertThat(json.path("scenarios")).hasSize(5);
    JsonNode first = json.path("scenarios").path(0);
    assertThat(first.path("name").asText()).isEqualTo("turntable");
    assertThat(first.path("savedPerDay").path("days").asInt()).isEqualTo(DAYS);
    assertThat(first.path("byDemand")).hasSize(3);
    assertThat(first.path("costByDay")).hasSize(DAYS);
    assertThat(first.path("load").path("rigsTakenByHalfHour")).hasSize(48);
    assertThat(first.path("figures")).hasSize(10);
    assertThat(json.path("oneMore")).hasSize(16);
    assertThat(json.path("again").path("costDifference").path("days").asInt()).isEqualTo(DAYS);
    assertThat(json.path("assumptions").path(0).asText()).contains("prices are invented");
    assertThat(json.path("assumptions").toString())
        .containsOnlyOnce("too narrow")
        .contains("Demand: 20 % fewer jobs, 20 % more jobs were planned too");
    assertThat(json.path("plans").asInt()).isEqualTo((FLOORS * 3 + 1 + 16) * DAYS);
  }

  @Test
  void goesOnWhereItWasAndPlansNothingTwice() throws Exception {
    whatif("--out", "on", "--report", "csv");
    Path file = folder.resolve("on/cells.csv");
    List<String> whole = Files.readAllLines(file);
    String some = String.join("\n", whole.subList(0, 9)) + "\n" + whole.get(9).substring(0, 40);
    Files.writeString(file, some);
    Ran ran = whatif("--out", "on", "--report", "csv");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.err()).contains("7 of 18 plans were there already");
    assertThat(oneLine(ran.out().substring(0, ran.out().indexOf("\n\n"))))
        .contains(
            "Weak evidence: with only 3 days the ranges (low to high) of savings, paybacks and"
                + " other figures are too narrow.")
        .contains("Used again: 7 of 18 plans were there already.")
        .contains("Demand: only that of these days was planned; to see what paybacks depend on,")
        .contains("plan other demands too (--demand).");
    assertThat(whatif("--out", "on", "--report", "csv", "--json").json().path("plansThereBefore"))
        .hasToString("18");
    List<String> after = Files.readAllLines(file);
    assertThat(after.subList(0, 9)).isEqualTo(whole.subList(0, 9));
    assertThat(keys(after)).containsExactlyInAnyOrderElementsOf(keys(whole)).hasSize(18);
    assertThat(whatif("--out", "on", "--report", "csv").err())
        .contains("18 of 18 plans were there already");
    assertThat(Files.readAllLines(file)).isEqualTo(after);
  }

  private static List<String> keys(List<String> lines) {
    return lines.subList(2, lines.size()).stream()
        .map(line -> String.join(",", List.of(line.split(",")).subList(0, 4)))
        .toList();
  }

  @Test
  void anotherPriceAndOneMoreScenarioPlanOnlyWhatIsNew() throws Exception {
    String head = "version: 1\nname: x\nmoney: {interestPercent: 5}\nscenarios:\n";
    String table =
        "  - {name: table, purchase: {price: %d, lifeYears: 5}, changes: [{addRigLike: {like: R1, id:"
            + " R9}}]}\n";
    Path file = folder.resolve("mine.yaml");
    String[] command = {
      "whatif", "mine.yaml", "days", "--steps", "200", "--out", "reused", "--report", "csv"
    };
    Files.writeString(file, head + table.formatted(1000));
    assertThat(Runner.run(folder, command).exitCode()).isZero();
    List<String> before = cells("reused");
    assertThat(before).hasSize(6);
    Files.writeString(file, head + table.formatted(2000));
    assertThat(Runner.run(folder, command).err()).contains("6 of 6 plans were there already");
    assertThat(cells("reused")).isEqualTo(before);
    Files.writeString(
        file, head + "  - {name: less, changes: [{removeRig: {rig: R1}}]}\n" + table.formatted(5));
    assertThat(Runner.run(folder, command).err()).contains("6 of 9 plans were there already");
    assertThat(cells("reused").subList(0, 6)).isEqualTo(before);
    assertThat(cells("reused").subList(6, 9)).allMatch(row -> row.startsWith("less,"));
  }

  @Test
  void moreSeedsGoOnFromFewer() throws Exception {
    whatif("--out", "seeds", "--report", "csv");
    Ran ran = whatif("--out", "seeds", "--report", "csv", "--seeds", "2");
    assertThat(ran.err()).contains("18 of 36 plans were there already");
    assertThat(cells("seeds")).hasSize(36);
  }

  @Test
  void refusesToGoOnWithAnotherEffort() {
    whatif("--out", "effort", "--report", "csv");
    Ran ran =
        Runner.run(folder, "whatif", "scenarios.yaml", "days", "--out", "effort", "--steps", "99");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("effort: '200 steps on one core'")
        .contains("99 steps on one core")
        .contains("another --out");
    Ran anew =
        Runner.run(
            folder,
            "whatif",
            "scenarios.yaml",
            "days",
            "--out",
            "effort",
            "--steps",
            "99",
            "--overwrite",
            "--report",
            "csv");
    assertThat(anew.exitCode()).as(anew.err()).isZero();
  }

  /** As after a change of the program that its version does not show. */
  @Test
  void refusesToGoOnWithCellsOfAnotherBuild() throws Exception {
    whatif("--out", "build", "--report", "csv");
    Path file = folder.resolve("build/cells.csv");
    String before =
        Files.readString(file).replaceFirst("build,[0-9a-f]+,", "build,0123456789abcdef,");
    Files.writeString(file, before);
    Ran ran = whatif("--out", "build", "--report", "csv");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err())
        .contains("build: '0123456789abcdef'; accepted: as in this run: ")
        .contains("cells of different build are not to be compared; or another --out");
    assertThat(file).hasContent(before);
  }

  @Test
  void usesTheGoodLinesOfCellsThatAreDamagedAndSaysSo() throws Exception {
    whatif("--out", "damaged", "--report", "csv");
    Path file = folder.resolve("damaged/cells.csv");
    List<String> lines = new java.util.ArrayList<>(Files.readAllLines(file));
    lines.set(5, lines.get(5).substring(0, 50));
    String damaged = String.join("\n", lines) + "\n";
    Files.writeString(file, damaged);
    for (String json : List.of("--json", "--no-color")) {
      Ran dry = whatif("--out", "damaged", "--dry-run", json);
      assertThat(oneLine(json.equals("--json") ? dry.err() : dry.out()))
          .contains("1 plan in cells.csv is damaged and lost. A comparison puts a copy");
    }
    Ran ran = whatif("--out", "damaged", "--report", "csv");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err())
        .startsWith(
            "cells.csv was damaged: 1 of 18 cells is lost, and planned anew where it is needed;"
                + " the file as it was is kept as cells.damaged-1.csv")
        .contains("17 of 18 plans were there already");
    assertThat(folder.resolve("damaged/cells.damaged-1.csv")).hasContent(damaged);
    assertThat(cells("damaged")).hasSize(18);
    assertThat(whatif("--out", "damaged", "--report", "csv").err())
        .doesNotContain("was damaged")
        .contains("18 of 18 plans were there already");
  }

  @Test
  void neverReplacesReportsOfSomethingElse() throws Exception {
    Files.createDirectories(folder.resolve("mine"));
    Files.writeString(folder.resolve("mine/report.html"), "mine");
    Ran ran = whatif("--out", "mine");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("report.html: is there already");
    assertThat(folder.resolve("mine/report.html")).hasContent("mine");
    assertThat(folder.resolve("mine/cells.csv")).doesNotExist();
  }

  @Test
  void aDryRunPlansAndWritesNothing() {
    Ran ran = whatif("--out", "dry", "--dry-run", "--seeds", "3");
    assertThat(ran.exitCode()).isZero();
    assertThat(ran.out())
        .contains("would take 54 plans of 200 steps on one core")
        .contains("nothing was planned or written");
    assertThat(folder.resolve("dry")).doesNotExist();
  }

  /** One line, however wide it was printed. */
  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aDryRunLeavesOutWhatIsThereAlready() throws Exception {
    whatif("--out", "partly", "--report", "csv");
    Path file = folder.resolve("partly/cells.csv");
    List<String> whole = Files.readAllLines(file);
    Files.writeString(file, String.join("\n", whole.subList(0, 2 + 7)) + "\n");
    String before = Files.readString(file);
    Ran dry = whatif("--out", "partly", "--dry-run");
    assertThat(dry.exitCode()).as(dry.err()).isZero();
    assertThat(oneLine(dry.out()))
        .contains("would take 18 plans of 200 steps on one core: 6 floors and demands on 3 days")
        .containsPattern(
            "Of 18 plans 7 are there already; to make the other 11 takes about \\d+ s\\.");
    assertThat(dry.out().lines().limit(3)).allMatch(line -> Text.columns(line) <= 80);
    JsonNode json = whatif("--out", "partly", "--dry-run", "--json").json();
    assertThat(json.path("plansThere").asInt()).isEqualTo(7);
    assertThat(json.path("secondsLeft").isIntegralNumber()).isTrue();
    assertThat(oneLine(whatif("--out", "partly", "--dry-run", "--overwrite").out()))
        .doesNotContain("already")
        .contains("How long a plan of so many steps takes is known after the first.");
    assertThat(file).hasContent(before);
    Files.write(file, whole);
    assertThat(oneLine(whatif("--out", "partly", "--dry-run").out()))
        .contains("All of them are there already, so nothing is left to plan.");
    Ran other =
        Runner.run(
            folder,
            "whatif",
            "scenarios.yaml",
            "days",
            "--out",
            "partly",
            "--dry-run",
            "--steps",
            "99");
    assertThat(other.exitCode()).isEqualTo(2);
    assertThat(other.err()).contains("effort: ").contains("or another --out");
  }

  @Test
  void saysThatPlansStayWhenItIsStoppedBeforeTheyAreLookedThrough() throws Exception {
    whatif("--out", "early", "--report", "csv");
    Path summary = folder.resolve("early/summary.csv");
    List<String> cells = cells("early");
    String before = Files.readString(summary);
    Ran ran =
        Runner.stopped(
            folder,
            "whatif",
            "scenarios.yaml",
            "days",
            "--steps",
            "200",
            "--out",
            "early",
            "--report",
            "csv",
            "--json");
    assertThat(ran.exitCode()).as("nothing is printed that a script could read").isEqualTo(130);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err())
        .contains(
            "stopped early, before it was known which plans are there already: 18 plans in"
                + " cells.csv are kept; the same command goes on from there")
        .doesNotContain("0 of 18");
    assertThat(cells("early")).isEqualTo(cells);
    assertThat(summary).hasContent(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--time 0",
        "--seeds 0",
        "--cores 9999",
        "--demand=-99",
        "--demand=10,10",
        "--demand=0",
        "--report txt",
        "--write-only",
        "--demo"
      })
  void refusesOptionsThatMakeNoSense(String options) {
    Ran ran = whatif(options.split(" "));
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains(options.split("[ =]")[0]);
  }

  @Test
  void refusesMorePlansThanAnybodyWaitsFor() {
    // 6 floors under so many demands and the usual one, on 3 days with 100 seeds.
    String most = demands(54);
    Ran ran = whatif("--out", "large", "--dry-run", "--seeds", "100", most);
    assertThat(ran.out()).contains("would take 99000 plans");
    Ran more = whatif("--out", "large", "--dry-run", "--seeds", "100", demands(55));
    assertThat(more.exitCode()).isEqualTo(2);
    assertThat(more.err())
        .contains(
            "The comparison would take 100800 plans: 336 floors and demands on 3 days with 100"
                + " seeds; accepted: at most 100000; fewer scenarios, demands, days or seeds.");
  }

  private static String demands(int count) {
    return IntStream.rangeClosed(1, count)
        .mapToObj(String::valueOf)
        .collect(Collectors.joining(",", "--demand=", ""));
  }

  @Test
  void asksForItsFiles() {
    Ran ran = Runner.run(folder, "whatif", "scenarios.yaml");
    assertThat(ran.exitCode()).isEqualTo(2);
    assertThat(ran.err()).contains("DAYS");
  }

  @Test
  void takesAnotherFloorForAllDays() throws Exception {
    Floor floor = SmallStudy.days(1, 5).get(0).batch().floor();
    Floor free =
        new Floor(
            floor.name(),
            floor.zone(),
            floor.rigs(),
            floor.kits(),
            floor.fetches(),
            floor.crew(),
            floor.attributes(),
            floor.changeovers(),
            floor.recipes(),
            floor.itemSetups(),
            floor.handling(),
            floor.physics(),
            floor.weights(),
            new Costs("DKK", 0, 1, 0, 0, 0));
    Files.writeString(folder.resolve("free.json"), FloorWriter.write(free, Trees.Notation.JSON));
    Ran ran = whatif("--out", "free", "--floor", "free.json");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.out())
        .contains("cannot be judged by money: the floor file gives no costs.")
        .contains("Money in DKK");
  }

  @Test
  void writesTheDemoAndSaysHowToGoOn() throws Exception {
    Ran ran = Runner.run(folder, "whatif", "--demo", "--write-only", "--out", "demo");
    assertThat(ran.exitCode()).as(ran.err()).isZero();
    assertThat(ran.err())
        .contains("scenarios.yaml and 30 past days in days")
        .contains("then: rigmorrow whatif demo/scenarios.yaml demo/days --out demo");
    Ran dry = Runner.run(folder, "whatif", "demo/scenarios.yaml", "demo/days", "--dry-run");
    assertThat(dry.out()).contains("would take 150 plans of 2 s on one core");
    assertThat(Runner.run(folder, "whatif", "--demo", "--write-only", "--out", "demo").exitCode())
        .isZero();
    Path list = folder.resolve("demo/days/2025-03-05/shot-list.csv");
    String before = Files.readString(list);
    Files.writeString(list, before.lines().limit(3).collect(Collectors.joining("\r\n")) + "\r\n");
    Ran changed = Runner.run(folder, "whatif", "--demo", "--write-only", "--out", "demo");
    assertThat(changed.exitCode()).isEqualTo(2);
    assertThat(changed.err()).contains("has days that are not the demo's");
    assertThat(Files.readString(list)).isNotEqualTo(before);
  }
}
