package rigmorrow.app.board.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import rigmorrow.model.plan.PlannedJob;

/** The whole plan goes to paper, not what the window happens to show. */
class PaperBrowserTest {

  @Test
  void printsEveryJobWhateverTheWindowShows() throws IOException {
    try (OpenBoard board = OpenBoard.demo(60)) {
      Page page = board.page();
      for (int i = 0; i < 6; i++) {
        page.locator("#zoom-in").click();
      }
      page.evaluate("() => dispatchEvent(new Event('beforeprint'))");
      page.waitForTimeout(1_500); // The drawings of the plan are fetched when it comes to printing.
      byte[] pdf = page.pdf(new Page.PdfOptions().setFormat("A4").setLandscape(true));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PDFTextStripper onePage = new PDFTextStripper();
        for (int number = 1; number <= document.getNumberOfPages(); number++) {
          onePage.setStartPage(number);
          onePage.setEndPage(number);
          assertThat(onePage.getText(document))
              .as("page %d of %d", number, document.getNumberOfPages())
              .contains("Not published: revision 1 of the board, made ");
        }
        String text = new PDFTextStripper().getText(document);
        assertThat(board.desk().now().plan().rigs())
            .allSatisfy(
                rig -> assertThat(rig.jobs()).extracting(PlannedJob::job).allMatch(text::contains));
        assertThat(text).contains("Europe/Copenhagen").contains("never a release to operate");
      }
    }
  }

  /** A browser prints the sheets as well as the PDF: also there each page says which plan it is. */
  @Test
  void printsOnEveryPageOfTheSheetsWhichPlanTheyAreOf() throws IOException {
    try (OpenBoard board = OpenBoard.demo(60)) {
      board.desk().putBy(1, "a <b> & \"quoted\" note");
      Page sheets = board.open();
      sheets.navigate(board.address() + "api/hand-out/run-sheets.html");
      byte[] pdf = sheets.pdf(new Page.PdfOptions().setPreferCSSPageSize(true));
      try (PDDocument document = Loader.loadPDF(pdf)) {
        PDFTextStripper onePage = new PDFTextStripper();
        assertThat(document.getNumberOfPages()).isGreaterThan(5);
        for (int number = 1; number <= document.getNumberOfPages(); number++) {
          onePage.setStartPage(number);
          onePage.setEndPage(number);
          assertThat(onePage.getText(document))
              .as("page %d of %d", number, document.getNumberOfPages())
              .contains("Version 1 of the board, not published, put by ")
              .contains(": a <b> & \"quoted\" note");
        }
      }
    }
  }
}
