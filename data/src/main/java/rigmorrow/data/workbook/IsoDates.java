package rigmorrow.data.workbook;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLEventWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.StartElement;
import javax.xml.stream.events.XMLEvent;

/**
 * Makes texts of the cells of a sheet that hold a date as ISO 8601 writes it: kind {@code d}
 * (ECMA-376 part 1, 18.18.11). The library that reads the cells knows no such kind.
 */
final class IsoDates {
  private static final byte[][] MARKS = {
    "\"d\"".getBytes(StandardCharsets.US_ASCII), "'d'".getBytes(StandardCharsets.US_ASCII)
  };

  private static final XMLEventFactory EVENTS = XMLEventFactory.newDefaultFactory();

  private IsoDates() {}

  /** The sheet with texts in place of such cells; the very same bytes where it has none. */
  static byte[] asTexts(byte[] sheet) throws XMLStreamException {
    // Hardly any workbook has them, and copying takes as long as reading.
    if (!mayHaveSome(sheet)) {
      return sheet;
    }
    ByteArrayOutputStream copy = new ByteArrayOutputStream();
    XMLEventReader events = PartXml.events(new ByteArrayInputStream(sheet));
    XMLEventWriter writer =
        XMLOutputFactory.newDefaultFactory()
            .createXMLEventWriter(copy, StandardCharsets.UTF_8.name());
    boolean some = false;
    while (events.hasNext()) {
      XMLEvent event = events.nextEvent();
      if (event.isStartElement() && isIsoDate(event.asStartElement())) {
        writer.add(asText(event.asStartElement()));
        some = true;
      } else if (!event.isStartDocument()) {
        writer.add(event);
      }
    }
    writer.close();
    return some ? copy.toByteArray() : sheet;
  }

  private static boolean isIsoDate(StartElement element) {
    Iterator<Attribute> attributes = element.getAttributes();
    boolean iso = false;
    while (attributes.hasNext()) {
      iso |= isKindOfDate(attributes.next());
    }
    return iso && element.getName().getLocalPart().equals("c");
  }

  private static boolean isKindOfDate(Attribute attribute) {
    return attribute.getName().getLocalPart().equals("t") && attribute.getValue().equals("d");
  }

  private static StartElement asText(StartElement cell) {
    List<Attribute> attributes = new ArrayList<>();
    cell.getAttributes()
        .forEachRemaining(
            attribute ->
                attributes.add(
                    isKindOfDate(attribute)
                        ? EVENTS.createAttribute(attribute.getName(), "str")
                        : attribute));
    return EVENTS.createStartElement(cell.getName(), attributes.iterator(), cell.getNamespaces());
  }

  private static boolean mayHaveSome(byte[] sheet) {
    for (byte[] mark : MARKS) {
      for (int at = 0; at <= sheet.length - mark.length; at++) {
        if (sheet[at] == mark[0] && sheet[at + 1] == mark[1] && sheet[at + 2] == mark[2]) {
          return true;
        }
      }
    }
    return false;
  }
}
