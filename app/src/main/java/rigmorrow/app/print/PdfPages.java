package rigmorrow.app.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * Turns a page of ours into PDF with embedded fonts. The page must be well-formed XML that uses no
 * more than CSS 2.1 and the rules for paged media. The same page gives the same bytes.
 */
public final class PdfPages {
  private static final String PRODUCER = "Rigmorrow";

  private PdfPages() {}

  /**
   * The PDF file of a page.
   *
   * @param html well-formed, without anything to be loaded
   */
  public static PdfFile of(String html) {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new OwnFontsOnly());
    String printable = PrintableText.forFonts(html);
    // The fonts are read from one buffer, which two writers at once would tear apart.
    synchronized (PdfPages.class) {
      try (PDDocument document = new PDDocument();
          PdfBoxRenderer renderer = renderer(printable, document)) {
        renderer.createPDFWithoutClosing();
        return new PdfFile(bytes(document, printable), PrintableText.unprintable(html));
      } catch (IOException e) {
        throw new UncheckedIOException("a PDF file in memory", e);
      }
    }
  }

  /** When and on which machine a file was made would make each one different. */
  private static byte[] bytes(PDDocument document, String page) throws IOException {
    document.getDocumentInformation().setCreationDate(null);
    CRC32 checksum = new CRC32();
    checksum.update(page.getBytes(StandardCharsets.UTF_8));
    document.setDocumentId(checksum.getValue());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private static PdfBoxRenderer renderer(String html, PDDocument document) throws IOException {
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePDDocument(document);
    builder.withProducer(PRODUCER);
    builder.withHtmlContent(html, null);
    builder.useSVGDrawer(new DrawingPainter());
    if (RightToLeft.isIn(html)) {
      builder.useUnicodeBidiSplitter(RightToLeft.Splitter::new);
      builder.useUnicodeBidiReorderer(new RightToLeft());
    }
    for (PrintFont font : PrintFont.values()) {
      PDType0Font embedded = PDType0Font.load(document, font.font(), true);
      builder.useFont(
          new PDFontSupplier(embedded), PrintFont.FAMILY, font.weight(), FontStyle.NORMAL, true);
    }
    return builder.buildPdfRenderer();
  }
}
