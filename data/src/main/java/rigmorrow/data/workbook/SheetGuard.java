package rigmorrow.data.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.Place;
import rigmorrow.data.problem.Problems;

/** Looks through a sheet before its cells are read, and finds what the library does not tell. */
final class SheetGuard {
  /** Far beyond any shot list, and far below what would fill memory. */
  static final int MOST_ROWS = 100_000;

  private static final int MOST_MERGES = 10_000;

  /** A double has 17 digits, an exponent, a sign and a point. */
  private static final int LONGEST_NUMBER = 64;

  private static final Set<String> KINDS = Set.of("n", "s", "str", "inlineStr", "b", "e");

  private final String sheet;
  private final int sharedTexts;
  private final Problems problems;
  private final List<Integer> rowNumbers = new ArrayList<>();
  private final List<CellRange> merges = new ArrayList<>();
  private int row;
  private int column;

  /**
   * @param sheet its name
   * @param sharedTexts how many texts the workbook's cells may refer to
   */
  SheetGuard(String sheet, int sharedTexts, Problems problems) {
    this.sheet = sheet;
    this.sharedTexts = sharedTexts;
    this.problems = problems;
  }

  /**
   * Looks through a sheet.
   *
   * @throws InputException when it holds what no spreadsheet writes, or too much
   */
  void check(byte[] part) throws XMLStreamException, InputException {
    XMLStreamReader xml = PartXml.reader(part);
    while (xml.hasNext()) {
      xml.next();
      if (PartXml.starts(xml, "row")) {
        startRow(xml.getAttributeValue(null, "r"));
      } else if (PartXml.starts(xml, "c")) {
        cell(xml);
      } else if (PartXml.starts(xml, "mergeCell")) {
        merge(xml.getAttributeValue(null, "ref"));
      }
    }
  }

  /** Numbers of the rows in the order they stand in the file; the library may count wrongly. */
  List<Integer> rowNumbers() {
    return rowNumbers;
  }

  /** Cells that are merged. */
  List<CellRange> merges() {
    return merges;
  }

  private void startRow(@Nullable String written) throws InputException {
    int number = written == null ? row + 1 : whole(written);
    if (number <= row || number > CellRange.MOST_ROWS) {
      throw refused("row '" + written + "'", "rows that are counted upwards");
    }
    row = number;
    column = -1;
    rowNumbers.add(number);
    if (rowNumbers.size() > MOST_ROWS) {
      throw refused("more than " + MOST_ROWS + " rows", "at most " + MOST_ROWS + " rows");
    }
  }

  private void cell(XMLStreamReader xml) throws XMLStreamException, InputException {
    String name = xml.getAttributeValue(null, "r");
    CellRange at = name == null ? new CellRange(1, column + 1, 1, column + 1) : CellRange.of(name);
    if (at == null || at.left() <= column || at.left() >= CellRange.MOST_COLUMNS) {
      throw refused("cell '" + name + "'", "cells from A to XFD, from left to right");
    }
    column = at.left();
    String kindOrNull = xml.getAttributeValue(null, "t");
    String kind = kindOrNull == null ? "n" : kindOrNull;
    if (!KINDS.contains(kind)) {
      throw refused(
          "a cell of the kind '" + kind + "'", "the workbook saved again by a spreadsheet");
    }
    boolean text = kind.equals("str") || kind.equals("inlineStr");
    while (!text && !(xml.isEndElement() && xml.getLocalName().equals("c"))) {
      xml.next();
      if (PartXml.starts(xml, "v")) {
        value(kind, xml.getElementText());
      }
    }
  }

  private void value(String kind, String written) throws InputException {
    int text = kind.equals("s") && !written.isEmpty() ? whole(written) : 0;
    if (written.length() > LONGEST_NUMBER || text < 0 || text >= Math.max(1, sharedTexts)) {
      throw refused("'" + written + "'", "a value as a spreadsheet writes it");
    }
  }

  private void merge(@Nullable String written) throws InputException {
    CellRange range = CellRange.of(written);
    if (range == null || merges.size() == MOST_MERGES) {
      throw refused("merged cells '" + written + "'", "at most " + MOST_MERGES + ", as A2:B3");
    }
    for (CellRange other : merges) {
      if (range.overlaps(other)) {
        problems.add(
            Place.cell(sheet, range.top(), range.left() + 1),
            "",
            "merged cells '" + written + "'",
            "merged cells that share no cell with others that are merged");
        throw new InputException(problems.found());
      }
    }
    merges.add(range);
  }

  private static int whole(String written) {
    return written.matches("\\d{1,9}") ? Integer.parseInt(written) : -1;
  }

  private InputException refused(String value, String accepted) {
    boolean atStart = row == 0;
    Place place = atStart ? Place.of("sheet '" + sheet + "'") : Place.cell(sheet, row, column + 1);
    problems.add(place, "", value, accepted);
    return new InputException(problems.found());
  }
}
