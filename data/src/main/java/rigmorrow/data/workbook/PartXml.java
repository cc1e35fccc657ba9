package rigmorrow.data.workbook;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Map;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads what is needed of a workbook's parts besides the cells. */
final class PartXml {
  private static final XMLInputFactory FACTORY = factory();
  private static final String TYPE_OF_SHARED_TEXTS = "sharedStrings+xml";
  private static final String TYPE_OF_STYLES = "styles+xml";
  private static final String TYPE_OF_WORKBOOK = "main+xml";

  /**
   * Where the main parts are; an empty name for one that the workbook has not.
   *
   * @param workbook list of sheets
   * @param sharedTexts texts of cells
   * @param styles number formats
   */
  record Paths(String workbook, String sharedTexts, String styles) {
    /** The part that says where the sheets are. */
    String relations() {
      int slash = workbook.lastIndexOf('/') + 1;
      return workbook.substring(0, slash) + "_rels/" + workbook.substring(slash) + ".rels";
    }
  }

  private PartXml() {}

  /** A reader that follows no reference out of the file. */
  static XMLStreamReader reader(byte[] part) throws XMLStreamException {
    return FACTORY.createXMLStreamReader(new ByteArrayInputStream(part));
  }

  /** The same, event by event. */
  static XMLEventReader events(InputStream part) throws XMLStreamException {
    return FACTORY.createXMLEventReader(part);
  }

  /** The main parts by the list of content types. */
  static Paths paths(byte[] contentTypes) throws XMLStreamException {
    Map<String, String> names = new HashMap<>();
    XMLStreamReader xml = reader(contentTypes);
    while (xml.hasNext()) {
      xml.next();
      if (starts(xml, "Override")) {
        String type = String.valueOf(xml.getAttributeValue(null, "ContentType"));
        String name = String.valueOf(xml.getAttributeValue(null, "PartName"));
        for (String end : new String[] {TYPE_OF_WORKBOOK, TYPE_OF_SHARED_TEXTS, TYPE_OF_STYLES}) {
          if (type.endsWith(end)) {
            names.put(end, name);
          }
        }
      }
    }
    return new Paths(
        names.getOrDefault(TYPE_OF_WORKBOOK, "/xl/workbook.xml"),
        names.getOrDefault(TYPE_OF_SHARED_TEXTS, ""),
        names.getOrDefault(TYPE_OF_STYLES, ""));
  }

  /**
   * The parts that a part refers to, by the id of the relation.
   *
   * @param folder of the part, with a slash at its end
   */
  static Map<String, String> relations(byte[] part, String folder) throws XMLStreamException {
    Map<String, String> targets = new HashMap<>();
    XMLStreamReader xml = reader(part);
    while (xml.hasNext()) {
      xml.next();
      if (starts(xml, "Relationship")) {
        String target = String.valueOf(xml.getAttributeValue(null, "Target"));
        targets.put(
            String.valueOf(xml.getAttributeValue(null, "Id")),
            target.startsWith("/") ? target : folder + target);
      }
    }
    return targets;
  }

  /** How many elements of a name a part has. */
  static int count(byte[] part, String element) throws XMLStreamException {
    int count = 0;
    XMLStreamReader xml = reader(part);
    while (xml.hasNext()) {
      xml.next();
      count += starts(xml, element) ? 1 : 0;
    }
    return count;
  }

  /** True at the start of an element. */
  static boolean starts(XMLStreamReader xml, String element) {
    return xml.isStartElement() && xml.getLocalName().equals(element);
  }

  private static XMLInputFactory factory() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    return factory;
  }
}
