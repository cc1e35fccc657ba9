package rigmorrow.app.print;

import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;
import org.jspecify.annotations.Nullable;

/**
 * Gives our font for every name. The usual way is to read every font of the machine, which takes
 * seconds and makes a page depend on where it was made.
 */
final class OwnFontsOnly implements FontMapper {
  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(PrintFont.REGULAR.font(), false);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(
      String name, @Nullable PDFontDescriptor descriptor) {
    return new FontMapping<>(PrintFont.REGULAR.font(), false);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String name, @Nullable PDFontDescriptor descriptor, PDCIDSystemInfo info) {
    return new CIDFontMapping(null, PrintFont.REGULAR.font(), false);
  }
}
