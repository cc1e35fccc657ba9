package rigmorrow.app.labels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.MultiFormatReader;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.ReadPdf;
import rigmorrow.app.runsheet.SampleDay;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** What is printed is read again, with the reader of the bar code library. */
class LabelsTest {
  private static final int DOTS_PER_INCH = 300;
  private static final double DOTS_PER_MM = DOTS_PER_INCH / 25.4;
  private static final String LONG_NAME = "Sideboard with a very long name ".repeat(5).strip();

  private static final PlanStamp STAMP =
      new PlanStamp("Version 3 of the board, not published, put by 2026-03-18 17:02", "a <b> & c");

  private record Case(
      String article, @Nullable String gtin, BarcodeFormat format, String content) {}

  private static final List<Case> CASES =
      List.of(
          new Case("00417", "4006381333931", BarcodeFormat.EAN_13, "4006381333931"),
          new Case("00418", "96385074", BarcodeFormat.EAN_8, "96385074"),
          new Case("00419", "036000291452", BarcodeFormat.UPC_A, "036000291452"),
          new Case("00420", "10036000291459", BarcodeFormat.ITF, "10036000291459"),
          new Case("00634996", null, BarcodeFormat.CODE_128, "00634996"),
          new Case("AB-12/7 x", null, BarcodeFormat.CODE_128, "AB-12/7 x"),
          new Case("Stuhl-ä-æøå", null, BarcodeFormat.QR_CODE, "Stuhl-ä-æøå"),
          new Case(
              "LONG-" + "0A1B".repeat(12),
              null,
              BarcodeFormat.QR_CODE,
              "LONG-" + "0A1B".repeat(12)));

  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyCodeIsReadAgain(Paper paper) throws NotFoundException {
    LabelGrid grid = new LabelGrid(paper, 3, 7);
    BufferedImage page = new ReadPdf(labels(grid).pdf().bytes()).picture(1, DOTS_PER_INCH);

    for (int i = 0; i < CASES.size(); i++) {
      Result read = decoded(label(page, grid, i));
      assertThat(read.getText()).isEqualTo(CASES.get(i).content);
      assertThat(read.getBarcodeFormat()).isEqualTo(CASES.get(i).format);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 3", "2, 5", "3, 6"})
  void otherGridsAreReadAgainToo(int columns, int rows) throws NotFoundException {
    LabelGrid grid = new LabelGrid(Paper.A4, columns, rows);
    ReadPdf pdf = new ReadPdf(labels(grid).pdf().bytes());

    for (int i = 0; i < CASES.size(); i++) {
      int page = 1 + i / grid.labelsPerPage();
      BufferedImage picture = pdf.picture(page, DOTS_PER_INCH);
      Result read = decoded(label(picture, grid, i % grid.labelsPerPage()));
      assertThat(read.getText()).isEqualTo(CASES.get(i).content);
    }
    assertThat(pdf.pages()).hasSize(1 + (CASES.size() - 1) / grid.labelsPerPage());
  }

  @Test
  void theQuietZonesStayWhite() {
    LabelGrid grid = new LabelGrid(Paper.A4, 3, 7);
    BufferedImage page = new ReadPdf(labels(grid).pdf().bytes()).picture(1, DOTS_PER_INCH);
    int[] quietLeft = {11, 7, 9, 10, 10};
    int[] quietRight = {7, 7, 9, 10, 10};
    int[] modules = {95, 67, 95, 135, 79};

    for (int i = 0; i < quietLeft.length; i++) {
      BufferedImage label = label(page, grid, i);
      int row = (int) (label.getHeight() * 0.6);
      int first = 0;
      while (!dark(label, first, row)) {
        first++;
      }
      int last = label.getWidth() - 1;
      while (!dark(label, last, row)) {
        last--;
      }
      double module = (last + 1 - first) / (double) modules[i];
      assertThat(first).as("left of %s", CASES.get(i)).isGreaterThan((int) (quietLeft[i] * module));
      assertThat(label.getWidth() - last)
          .as("right of %s", CASES.get(i))
          .isGreaterThan((int) (quietRight[i] * module));
      // An EAN-13 is 0.264 mm a module at the least.
      assertThat(module / DOTS_PER_MM).isBetween(0.26, 0.67);
    }
  }

  @ParameterizedTest
  @EnumSource(Paper.class)
  void namesAreShortenedAndArticleNumbersNever(Paper paper) {
    ReadPdf pdf = new ReadPdf(labels(new LabelGrid(paper, 3, 7)).pdf().bytes());

    CASES.forEach(one -> assertThat(pdf.text()).contains(ReadPdf.squeezed(one.article)));
    assertThat(pdf.text())
        .contains("Sideboardwithaverylong", "…")
        .contains("JobJ1,sampleS1", "JobsJ5,J5b,sampleS5", "4006381333931")
        .doesNotContain(ReadPdf.squeezed(LONG_NAME));
    assertThat(pdf.letters())
        .allMatch(letters -> letters.leftMm() >= LabelGrid.MARGIN_MM)
        .allMatch(letters -> letters.rightMm() <= paper.widthMm() - LabelGrid.MARGIN_MM)
        .allMatch(letters -> letters.topMm() >= LabelGrid.MARGIN_MM)
        .filteredOn(letters -> letters.topMm() <= paper.heightMm() - LabelGrid.MARGIN_MM)
        .allMatch(letters -> letters.bottomMm() <= paper.heightMm() - LabelGrid.MARGIN_MM);
  }

  /** Below the labels, and not where office printers leave the page blank (about 5 mm). */
  @ParameterizedTest
  @EnumSource(Paper.class)
  void everyPageSaysBelowTheLabelsWhichPlanItIsOf(Paper paper) {
    ReadPdf pdf = new ReadPdf(labels(new LabelGrid(paper, 2, 2)).pdf().bytes());

    assertThat(pdf.pages()).hasSize(2).allMatch(page -> page.contains(STAMP.line()));
    assertThat(pdf.letters())
        .filteredOn(letters -> letters.topMm() > paper.heightMm() - LabelGrid.MARGIN_MM)
        .hasSize(2 * STAMP.line().length())
        .allMatch(letters -> letters.bottomMm() <= paper.heightMm() - 5);
  }

  @Test
  void noTextLeavesItsLabel() {
    LabelGrid grid = new LabelGrid(Paper.A4, 3, 7);
    for (var letters : new ReadPdf(labels(grid).pdf().bytes()).letters()) {
      if (letters.topMm() > Paper.A4.heightMm() - LabelGrid.MARGIN_MM) {
        continue; // the stamp
      }
      double left = (letters.leftMm() - LabelGrid.MARGIN_MM) % grid.labelWidthMm();
      double right = (letters.rightMm() - LabelGrid.MARGIN_MM) % grid.labelWidthMm();
      double top = (letters.topMm() - LabelGrid.MARGIN_MM) % grid.labelHeightMm();
      double bottom = (letters.bottomMm() - LabelGrid.MARGIN_MM) % grid.labelHeightMm();
      assertThat(left).as(letters.toString()).isLessThanOrEqualTo(right);
      assertThat(top).as(letters.toString()).isLessThanOrEqualTo(bottom);
    }
  }

  @Test
  void belowEveryCodeStandsWhatItSays() {
    for (LabelGrid grid : List.of(new LabelGrid(Paper.A4, 3, 7), new LabelGrid(Paper.A4, 1, 3))) {
      Elements labels = Jsoup.parse(labels(grid).html()).select(".label");
      assertThat(labels).hasSameSizeAs(CASES);
      for (int i = 0; i < CASES.size(); i++) {
        Elements below = labels.get(i).select("svg ~ .encoded");
        assertThat(below.stream().map(Element::wholeText).collect(Collectors.joining()))
            .isEqualTo(CASES.get(i).content);
      }
    }
  }

  /** A label that held its code before there was text below it holds it still. */
  @Test
  void whereThereIsNoRoomForTheTextTheCodeComesFirst() {
    LabelGrid grid = new LabelGrid(Paper.A4, 3, 8);
    Elements labels = Jsoup.parse(labels(grid).html()).select(".label");
    Element longest = labels.get(CASES.size() - 1);
    assertThat(longest.select("svg")).hasSize(1);
    assertThat(longest.select(".encoded")).isEmpty();
    assertThat(labels.get(0).select(".encoded").text()).isEqualTo("4006381333931");
  }

  @Test
  void refusesAGridInWhichACodeCannotBeRead() {
    assertThatThrownBy(() -> labels(new LabelGrid(Paper.A4, 6, 7)))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining(
            "job J1, gtin: '4006381333931'; accepted: other ones: it does not fit")
        .hasMessageContaining("job J4");
    assertThatThrownBy(() -> labels(new LabelGrid(Paper.A4, 3, 20)))
        .isInstanceOf(RefusedException.class);
    assertThatThrownBy(() -> labels(new LabelGrid(Paper.A4, 8, 30)))
        .isInstanceOf(RefusedException.class);
  }

  @Test
  void refusesAListWithoutJobs() {
    ShotList none = new ShotList(SampleDay.SUMMER, 1, List.of(), List.of());

    assertThatThrownBy(() -> new Labels(none, "Hall", STAMP, new LabelGrid(Paper.A4, 3, 7), "none"))
        .isInstanceOf(RefusedException.class)
        .hasMessageContaining("at least one job");
  }

  @Test
  void htmlHasTheSameLabelsAndNeedsNothingElse() {
    String html = labels(new LabelGrid(Paper.LETTER, 3, 7)).html();

    assertThat(html).contains("size: letter").doesNotContain("url(").doesNotContain("http");
    assertThat(Jsoup.parse(html).select(".article").eachText()).contains("00417", "00634996");
    assertThat(Jsoup.parse(html).select("svg").eachAttr("aria-label"))
        .startsWith("EAN-13", "EAN-8", "UPC-A", "ITF-14", "Code 128")
        .endsWith("QR code");
    assertThat(Jsoup.parse(html).select("script, link, img")).isEmpty();
    assertThat(Jsoup.parse(html).select(".stamp").text()).isEqualTo(STAMP.whole());
    assertThat(html).contains(STAMP.lineInStyle()).doesNotContain("<b>");
  }

  @Test
  void theSameListGivesTheSameBytes() {
    LabelGrid grid = new LabelGrid(Paper.A4, 3, 7);

    assertThat(labels(grid).pdf().bytes()).isEqualTo(labels(grid).pdf().bytes());
  }

  private static Labels labels(LabelGrid grid) {
    List<ShotJob> jobs = new ArrayList<>();
    for (int i = 0; i < CASES.size(); i++) {
      jobs.add(job("J" + (i + 1), "S" + (i + 1), CASES.get(i)));
      if (i == 4) {
        jobs.add(job("J5b", "S5", CASES.get(i)));
      }
    }
    return new Labels(
        new ShotList(SampleDay.SUMMER, 1, jobs, List.of()), "Hall <2>", STAMP, grid, "other ones");
  }

  private static ShotJob job(String id, String sample, Case one) {
    ShotJob like = SampleDay.batch(SampleDay.SUMMER).shotList().jobs().get(0);
    String name = id.equals("J2") ? LONG_NAME : "Chair & <table>";
    return new ShotJob(
        id,
        one.article,
        one.gtin,
        name,
        sample,
        like.recipe(),
        like.item(),
        like.setup(),
        null,
        null,
        null,
        1,
        null);
  }

  private static BufferedImage label(BufferedImage page, LabelGrid grid, int index) {
    double left = LabelGrid.MARGIN_MM + index % grid.columns() * grid.labelWidthMm();
    int row = index / grid.columns();
    double top = LabelGrid.MARGIN_MM + row * grid.labelHeightMm();
    double inset = 0.5; // without the line along which labels are cut
    return page.getSubimage(
        dots(left + inset),
        dots(top + inset),
        dots(grid.labelWidthMm() - 2 * inset),
        dots(grid.labelHeightMm() - 2 * inset));
  }

  private static int dots(double mm) {
    return (int) Math.round(mm * DOTS_PER_MM);
  }

  private static boolean dark(BufferedImage image, int x, int y) {
    return (image.getRGB(x, y) & 0xff) < 128;
  }

  private static Result decoded(BufferedImage image) throws NotFoundException {
    int[] pixels =
        image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    RGBLuminanceSource source = new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels);
    return new MultiFormatReader()
        .decode(
            new BinaryBitmap(new HybridBinarizer(source)),
            Map.of(DecodeHintType.TRY_HARDER, Boolean.TRUE));
  }
}
