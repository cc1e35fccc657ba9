package rigmorrow.app.print;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** A PDF file as a reader sees it. */
public final class ReadPdf {
  private static final double MM_PER_POINT = 25.4 / 72;

  private final List<String> pages = new ArrayList<>();
  private final List<Letters> letters = new ArrayList<>();
  private final byte[] bytes;

  /**
   * Some letters in a row.
   *
   * @param page from 1
   * @param leftMm of the page's left edge
   * @param topMm of the page's top edge
   * @param rightMm of the page's left edge
   * @param bottomMm of the page's top edge
   */
  public record Letters(
      int page, String text, double leftMm, double topMm, double rightMm, double bottomMm) {}

  public ReadPdf(byte[] bytes) {
    this.bytes = bytes.clone();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        pages.add(text(document, page));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String text(PDDocument document, int page) throws IOException {
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            double left = text.getXDirAdj() * MM_PER_POINT;
            double bottom = text.getYDirAdj() * MM_PER_POINT;
            letters.add(
                new Letters(
                    page,
                    text.getUnicode(),
                    left,
                    bottom - text.getHeightDir() * MM_PER_POINT,
                    left + text.getWidthDirAdj() * MM_PER_POINT,
                    bottom));
            super.processTextPosition(text);
          }
        };
    stripper.setSortByPosition(false);
    stripper.setStartPage(page);
    stripper.setEndPage(page);
    return stripper.getText(document);
  }

  /** The text of each page. */
  public List<String> pages() {
    return pages;
  }

  /** Every letter with its place. */
  public List<Letters> letters() {
    return letters;
  }

  /** All text without white space: where lines end is a matter of looks. */
  public String text() {
    return squeezed(String.join("\n", pages));
  }

  /** A text without white space. */
  public static String squeezed(String text) {
    return text.replaceAll("[\\s\\u00a0]+", "");
  }

  /** The sizes of all pages, such as "210 x 297". */
  public List<String> sizes() {
    List<String> sizes = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(bytes)) {
      for (var page : document.getPages()) {
        sizes.add(
            Math.round(page.getMediaBox().getWidth() * MM_PER_POINT)
                + " x "
                + Math.round(page.getMediaBox().getHeight() * MM_PER_POINT));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sizes;
  }

  /**
   * A page as a picture.
   *
   * @param page from 1
   */
  public BufferedImage picture(int page, int dotsPerInch) {
    try (PDDocument document = Loader.loadPDF(bytes)) {
      return new PDFRenderer(document).renderImageWithDPI(page - 1, dotsPerInch);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
