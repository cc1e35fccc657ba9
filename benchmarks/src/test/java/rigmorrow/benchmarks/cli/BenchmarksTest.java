package rigmorrow.benchmarks.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rigmorrow.benchmarks.Benchmarks;
import rigmorrow.benchmarks.run.Peers;
import rigmorrow.data.BatchFolder;
import rigmorrow.data.demo.Demo;

/** The program from end to end, on two small days by decodes. */
class BenchmarksTest {
  private static final int CELLS = 2 * 2 * Peers.all().size();

  @TempDir private Path folder;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();
  private final ByteArrayOutputStream err = new ByteArrayOutputStream();

  @BeforeEach
  void writeTwoDays() throws IOException {
    Path days = Files.createDirectory(folder.resolve("days"));
    BatchFolder.write(days, Demo.batch(12, 1, LocalDate.of(2026, 3, 18)));
    BatchFolder.write(days, Demo.batch(15, 2, LocalDate.of(2026, 3, 19)));
  }

  private int run(String... args) {
    out.reset();
    err.reset();
    return Benchmarks.run(
        args,
        new PrintStream(out, true, StandardCharsets.UTF_8),
        new PrintStream(err, true, StandardCharsets.UTF_8));
  }

  private int days(String... more) {
    List<String> args =
        new java.util.ArrayList<>(List.of("days", "--folder", folder.resolve("days").toString()));
    args.addAll(List.of("--out", folder.resolve("out").toString(), "--seeds", "2"));
    args.addAll(List.of(more));
    return run(args.toArray(String[]::new));
  }

  private String said() {
    return err.toString(StandardCharsets.UTF_8);
  }

  /** The lines without what the clock says. */
  private List<String> cells() throws IOException {
    return Files.readAllLines(folder.resolve("out/cells.csv")).stream()
        .map(line -> line.replaceAll(",\\d+,\"?\"?$", ""))
        .sorted()
        .toList();
  }

  @Test
  void runsEveryCellAndGoesOnWhereItWasCut() throws IOException {
    assertThat(days("--steps", "300")).isZero();
    List<String> whole = cells();
    assertThat(whole).hasSize(1 + CELLS);
    Path file = folder.resolve("out/cells.csv");
    String text = Files.readString(file);
    Files.writeString(file, text.substring(0, text.length() * 2 / 3));
    assertThat(days("--steps", "300")).isZero();
    assertThat(cells()).isEqualTo(whole);
    assertThat(said()).contains(CELLS + " of " + CELLS).doesNotContain("\n1 of ");
    assertThat(days("--steps", "300")).isZero();
    assertThat(said()).isEmpty();
  }

  @Test
  void reportsInEightyColumnsAndOnAPageOfItsOwn() throws IOException {
    assertThat(days("--steps", "200", "--peers", "ours,atcs,plain")).isZero();
    String text = out.toString(StandardCharsets.UTF_8);
    assertThat(text.lines()).allMatch(line -> line.length() <= 80);
    assertThat(text).contains("2 instances, 2 seeds, 3 peers").contains("2026-03-19");
    assertThat(folder.resolve("out/report.txt")).hasContent(text);
    assertThat(Files.readAllLines(folder.resolve("out/summary.csv"))).hasSize(4);
    Document page = Jsoup.parse(folder.resolve("out/report.html"));
    assertThat(page.select("[src], [href], link, script")).isEmpty();
    assertThat(page.select("svg")).hasSizeGreaterThanOrEqualTo(3);
    for (Element drawing : page.select("svg")) {
      assertThat(drawing.select("title, desc")).hasSize(2);
      assertThat(drawing.closest("section").select("table tbody tr")).isNotEmpty();
    }
  }

  @Test
  void showsScoresOverTimeWhereTheClockIsTheLimit() throws IOException {
    assertThat(days("--seconds", "0.1", "--peers", "atcs,due-date", "--instances", "1")).isZero();
    Document page = Jsoup.parse(folder.resolve("out/report.html"));
    assertThat(page.select("#time")).hasSize(1);
  }

  @Test
  void refusesToGoOnUnderOtherLimits() {
    assertThat(days("--steps", "200", "--peers", "atcs")).isZero();
    assertThat(days("--steps", "201", "--peers", "atcs")).isEqualTo(2);
    assertThat(said()).contains("200 decodes, cores 2", "201 decodes, cores 2", "--out");
  }

  @Test
  void endsWithTwoWhereTheInputIsWrong() throws IOException {
    Files.writeString(folder.resolve("days/2026-03-18/floor.json"), "{}");
    Files.delete(folder.resolve("days/2026-03-19/shot-list.csv"));
    assertThat(days("--steps", "200")).isEqualTo(2);
    assertThat(said()).contains("2026-03-18").contains("2026-03-19").contains("no shot list");
    assertThat(days("--peers", "nobody")).isEqualTo(2);
    assertThat(said()).contains("'nobody'; accepted: ours, due-date");
    assertThat(days("--seeds", "0")).isEqualTo(2);
    assertThat(days("--seconds", "1", "--steps", "1")).isEqualTo(2);
    assertThat(run("literature", "--reference", folder.toString())).isEqualTo(2);
    assertThat(said()).contains("upmsp");
    assertThat(run()).isEqualTo(2);
  }

  @Test
  void plansPublishedInstancesAgainstTheirTable() throws IOException {
    Path small = Files.createDirectories(folder.resolve("ref/upmsp/small"));
    Files.writeString(
        small.resolve("I_2_2_S_1-9_1.txt"),
        "2 2 1\n2\n0 3 1 9\n0 4 1 5\nSSD\nM0\n0 2\n7 0\nM1\n0 8\n1 0\n");
    Files.writeString(
        folder.resolve("ref/upmsp/small_optimal.csv"),
        "instance,n,m,optimum_exact_dp,soa_2011_listed\nI_2_2_S_1-9_1,2,2,5,5\n");
    String out = folder.resolve("lit").toString();
    String reference = folder.resolve("ref").toString();
    assertThat(
            run(
                "literature",
                "--reference",
                reference,
                "--sets",
                "small",
                "--steps",
                "300",
                "--out",
                out))
        .isZero();
    List<String> lines = Files.readAllLines(Path.of(out, "cells.csv"));
    assertThat(lines).hasSize(1 + Peers.all().size());
    assertThat(lines).anyMatch(line -> line.startsWith("I_2_2_S_1-9_1,\"2 x 2\",5,2,2,1,ours,"));
    assertThat(this.out.toString(StandardCharsets.UTF_8)).containsPattern("ours +0\\.00 +0");
  }
}
