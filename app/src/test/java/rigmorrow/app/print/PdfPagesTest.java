package rigmorrow.app.print;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class PdfPagesTest {

  @Test
  void hebrewIsReadFromRightToLeftWithinALineThatIsNot() {
    List<ReadPdf.Letters> letters = read("Vase שלום 12 (א) jar").letters();

    assertThat(left(letters, "ש"))
        .isGreaterThan(left(letters, "ל"))
        .isGreaterThan(left(letters, "ם"));
    assertThat(left(letters, "V")).isLessThan(left(letters, "ם"));
    assertThat(left(letters, "j")).isGreaterThan(left(letters, "ש"));
    assertThat(left(letters, "1")).isLessThan(left(letters, "2")).isLessThan(left(letters, "ם"));
  }

  @Test
  void lettersOfTheNorthAndSignsOfTheTradeAreThere() {
    String signs = "æøåÆØÅäöüÄÖÜß×→☐–…°ΑΩЖя€½";

    assertThat(read(signs).text()).isEqualTo(signs);
    assertThat(PdfPages.of(page(signs)).unprintable()).isEmpty();
  }

  @Test
  void boldIsBold() {
    String bold = page("<strong>M</strong>");

    assertThat(width(bold)).isGreaterThan(width(page("M")));
  }

  @Test
  void isQuiet() {
    PrintStream err = System.err;
    ByteArrayOutputStream heard = new ByteArrayOutputStream();
    System.setErr(new PrintStream(heard, true, UTF_8));
    try {
      PdfPages.of(
          "<html><head><style>p { no-such: 1; }</style></head><body><p>x</p></body></html>");
    } finally {
      System.setErr(err);
    }
    assertThat(heard.toString(UTF_8)).isEmpty();
    assertThat(XRLog.isLoggingEnabled()).isFalse();
  }

  @Test
  void manyMayWriteAtOnce() throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Callable<byte[]>> tasks =
          IntStream.range(0, 8)
              .mapToObj(i -> (Callable<byte[]>) () -> PdfPages.of(page("Text <b>x</b>")).bytes())
              .toList();
      List<Future<byte[]>> files = pool.invokeAll(tasks);
      for (Future<byte[]> file : files) {
        assertThat(file.get()).isEqualTo(files.get(0).get());
      }
    } finally {
      pool.shutdown();
    }
  }

  private static double width(String page) {
    ReadPdf.Letters letters = new ReadPdf(PdfPages.of(page).bytes()).letters().get(0);
    return letters.rightMm() - letters.leftMm();
  }

  private static double left(List<ReadPdf.Letters> letters, String text) {
    return letters.stream()
        .filter(one -> one.text().equals(text))
        .findFirst()
        .orElseThrow(() -> new AssertionError(text + " in " + letters))
        .leftMm();
  }

  private static ReadPdf read(String text) {
    return new ReadPdf(PdfPages.of(page(text)).bytes());
  }

  private static String page(String body) {
    return "<html><head><style>body { font-family: '"
        + PrintFont.FAMILY
        + "'; }</style></head><body><p>"
        + body
        + "</p></body></html>";
  }
}
