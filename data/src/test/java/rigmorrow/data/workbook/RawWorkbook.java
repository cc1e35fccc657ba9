package rigmorrow.data.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rigmorrow.data.problem.Place;

/**
 * Puts a workbook together from its XML (ECMA-376 part 1, SpreadsheetML), with what no writer of
 * ours would write.
 */
public final class RawWorkbook {
  private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private final List<String> names = new ArrayList<>();
  private final List<String> states = new ArrayList<>();
  private final List<StringBuilder> sheets = new ArrayList<>();
  private final List<String> merges = new ArrayList<>();
  private final List<String> formats = new ArrayList<>();
  private final List<String> sharedTexts = new ArrayList<>();
  private boolean from1904;
  private int row;

  /** A workbook with one sheet of texts: cells divided by bars, an empty row for an empty line. */
  public static RawWorkbook ofTexts(String sheet, String... lines) {
    return new RawWorkbook().sheet(sheet).texts(lines);
  }

  /** Starts another sheet. */
  public RawWorkbook sheet(String name) {
    return sheet(name, "visible");
  }

  /** Starts another sheet: visible, hidden or veryHidden. */
  public RawWorkbook sheet(String name, String state) {
    names.add(name);
    states.add(state);
    sheets.add(new StringBuilder());
    merges.add("");
    row = 0;
    return this;
  }

  /** Counts days from 1904. */
  public RawWorkbook from1904() {
    from1904 = true;
    return this;
  }

  /** Adds rows of texts. */
  public RawWorkbook texts(String... lines) {
    for (String line : lines) {
      List<String> cells = new ArrayList<>();
      for (String cell : line.split("\\|", -1)) {
        cells.add(cell.isEmpty() ? "" : text(cell));
      }
      row(cells.toArray(String[]::new));
    }
    return this;
  }

  /** Adds a row of cells, each made by a method below or empty. */
  public RawWorkbook row(String... cells) {
    return rowAt(row + 1, cells);
  }

  /** Adds a row further down. */
  public RawWorkbook rowAt(int number, String... cells) {
    row = number;
    StringBuilder sheet = sheets.get(sheets.size() - 1);
    sheet.append("<row r=\"").append(row).append("\">");
    for (int column = 0; column < cells.length; column++) {
      String reference = Place.letters(column + 1) + row;
      sheet.append(cells[column].replaceFirst("<c", "<c r=\"" + reference + "\""));
    }
    sheet.append("</row>");
    return this;
  }

  /** Merges cells, such as A2:A4. */
  public RawWorkbook merge(String range) {
    int last = merges.size() - 1;
    merges.set(last, merges.get(last) + "<mergeCell ref=\"" + range + "\"/>");
    return this;
  }

  /** Adds any XML to the rows of the sheet. */
  public RawWorkbook raw(String xml) {
    sheets.get(sheets.size() - 1).append(xml);
    return this;
  }

  /** A cell of text. */
  public static String text(String text) {
    return "<c t=\"inlineStr\"><is><t xml:space=\"preserve\">" + escaped(text) + "</t></is></c>";
  }

  /** A cell of text that has a format for numbers. */
  public String text(String text, String format) {
    String styled = number("", format);
    return text(text).replaceFirst("<c ", styled.substring(0, styled.indexOf('>')) + " ");
  }

  /** A cell of text as most spreadsheets write it: a number in the list of shared texts. */
  public String shared(String text) {
    sharedTexts.add(text);
    return "<c t=\"s\"><v>" + (sharedTexts.size() - 1) + "</v></c>";
  }

  /** A cell with a number. */
  public static String number(String value) {
    return "<c><v>" + value + "</v></c>";
  }

  /** A cell with a number that a format shows. */
  public String number(String value, String format) {
    if (!formats.contains(format)) {
      formats.add(format);
    }
    return "<c s=\"" + (formats.indexOf(format) + 1) + "\"><v>" + value + "</v></c>";
  }

  /** A cell with a date as ISO 8601 writes it, which a format shows. */
  public String isoDate(String value, String format) {
    return number(value, format).replaceFirst("<c ", "<c t=\"d\" ");
  }

  /** A cell of a given kind: b for yes and no, e for an error. */
  public static String cell(String kind, String value) {
    return "<c t=\"" + kind + "\"><v>" + escaped(value) + "</v></c>";
  }

  /** A cell with a formula and the value that was saved with it. */
  public static String formula(String formula, String kind, String value) {
    return "<c t=\"%s\"><f>%s</f><v>%s</v></c>".formatted(kind, escaped(formula), escaped(value));
  }

  /** A cell with a formula that was never computed. */
  public static String formula(String formula) {
    return "<c><f>" + escaped(formula) + "</f></c>";
  }

  /** The file. */
  public byte[] bytes() {
    return zipped(parts());
  }

  /** The parts of the file by their names. */
  public Map<String, String> parts() {
    Map<String, String> parts = new LinkedHashMap<>();
    StringBuilder types = new StringBuilder();
    StringBuilder list = new StringBuilder();
    StringBuilder relations = new StringBuilder();
    for (int i = 0; i < names.size(); i++) {
      String part = "worksheets/sheet" + (i + 1) + ".xml";
      types.append(type("/xl/" + part, "worksheet+xml"));
      list.append(
          "<sheet name=\"%s\" sheetId=\"%d\" state=\"%s\" r:id=\"rId%d\"/>"
              .formatted(escaped(names.get(i)), i + 1, states.get(i), i + 1));
      relations.append(
          "<Relationship Id=\"rId%d\" Type=\"%s/worksheet\" Target=\"%s\"/>"
              .formatted(i + 1, RELATIONS, part));
      String merged =
          merges.get(i).isEmpty() ? "" : "<mergeCells>" + merges.get(i) + "</mergeCells>";
      parts.put(
          "xl/" + part,
          HEAD
              + "<worksheet %s><sheetData>%s</sheetData>%s</worksheet>"
                  .formatted(MAIN, sheets.get(i), merged));
    }
    types.append(type("/xl/workbook.xml", "sheet.main+xml"));
    types.append(type("/xl/styles.xml", "styles+xml"));
    types.append(type("/xl/sharedStrings.xml", "sharedStrings+xml"));
    parts.put("xl/styles.xml", styles());
    parts.put("xl/sharedStrings.xml", sharedStrings());
    parts.put(
        "xl/workbook.xml",
        HEAD
            + "<workbook %s xmlns:r=\"%s\"><workbookPr date1904=\"%s\"/><sheets>%s</sheets>"
                .formatted(MAIN, RELATIONS, from1904, list)
            + "</workbook>");
    parts.put("xl/_rels/workbook.xml.rels", relationships(relations.toString()));
    parts.put(
        "_rels/.rels",
        relationships(
            "<Relationship Id=\"rId1\" Type=\"%s/officeDocument\" Target=\"xl/workbook.xml\"/>"
                .formatted(RELATIONS)));
    parts.put(
        "[Content_Types].xml",
        HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
            + types
            + "</Types>");
    return parts;
  }

  /** A zip file of texts. */
  public static byte[] zipped(Map<String, String> parts) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private String styles() {
    StringBuilder codes = new StringBuilder();
    StringBuilder cells = new StringBuilder("<xf numFmtId=\"0\"/>");
    for (int i = 0; i < formats.size(); i++) {
      int id = 164 + i; // the first number that no built-in format has
      codes.append(
          "<numFmt numFmtId=\"%d\" formatCode=\"%s\"/>".formatted(id, escaped(formats.get(i))));
      cells.append("<xf numFmtId=\"").append(id).append("\"/>");
    }
    return HEAD
        + "<styleSheet %s><numFmts>%s</numFmts><cellXfs>%s</cellXfs></styleSheet>"
            .formatted(MAIN, codes, cells);
  }

  private String sharedStrings() {
    StringBuilder texts = new StringBuilder();
    sharedTexts.forEach(text -> texts.append("<si><t>").append(escaped(text)).append("</t></si>"));
    return HEAD + "<sst " + MAIN + ">" + texts + "</sst>";
  }

  private static String relationships(String content) {
    return HEAD
        + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
        + content
        + "</Relationships>";
  }

  private static String type(String part, String kind) {
    return "<Override PartName=\"" + part + "\" ContentType=\"" + TYPES + kind + "\"/>";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
