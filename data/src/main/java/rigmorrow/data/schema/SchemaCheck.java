package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.data.problem.Problems;

/** Holds a tree against its schema and tells in our words where it departs from it. */
public final class SchemaCheck {
  private final Shape file;
  private final Problems problems;
  private final NavigableSet<String> places = new TreeSet<>();
  private final Set<String> told = new HashSet<>();

  private SchemaCheck(Shape file, Problems problems) {
    this.file = file;
    this.problems = problems;
  }

  /**
   * Tells every departure. Known fields that are null are taken out of the tree first: they count
   * as not there.
   *
   * @return the places told, in the notation of {@link Places}
   */
  public static NavigableSet<String> tell(FileSchema schema, JsonNode tree, Problems problems) {
    prepare(tree, schema.shape());
    SchemaCheck check = new SchemaCheck(schema.shape(), problems);
    schema.departures(tree).forEach(check::tell);
    return check.places;
  }

  /** Makes a tree ready for the schema. An unknown field that is null stays, so that it is told. */
  private static void prepare(JsonNode node, Shape shape) {
    if (node instanceof ArrayNode list && shape.is("array")) {
      for (int i = 0; i < list.size(); i++) {
        list.set(i, finite(list.get(i)));
        prepare(list.get(i), shape.element());
      }
    }
    if (node instanceof ObjectNode object) {
      List<String> known = new ArrayList<>();
      object.fieldNames().forEachRemaining(known::add);
      known.removeIf(name -> !shape.knows(name));
      for (String name : known) {
        if (object.get(name).isNull()) {
          object.remove(name);
        } else {
          object.set(name, finite(object.get(name)));
          prepare(object.get(name), shape.property(name));
        }
      }
    }
  }

  /** A number beyond all that can be stored, such as 1e999, becomes the largest that can. */
  private static JsonNode finite(JsonNode value) {
    boolean beyond = value.isDouble() && Double.isInfinite(value.doubleValue());
    return beyond
        ? DoubleNode.valueOf(Math.copySign(Double.MAX_VALUE, value.doubleValue()))
        : value;
  }

  private void tell(Error error) {
    NodePath rule = error.getEvaluationPath();
    int anyOf = indexOf(rule, "anyOf");
    Spot spot = Spot.of(file, error.getInstanceLocation(), levelsBelow(rule, anyOf));
    JsonNode value = error.getInstanceNode();
    switch (anyOf >= 0 ? "anyOf" : error.getKeyword()) {
      case "anyOf" -> noneOf(spot);
      case "additionalProperties" -> {
        String accepted = Phrases.known(spot.shape().names(), error.getProperty());
        note(spot.field(error.getProperty()), "unknown field", accepted);
      }
      case "required" -> missing(spot.field(error.getProperty()), since(error, spot));
      case "dependentRequired" -> {
        String since = ", since " + error.getProperty() + " is given";
        missing(spot.field(error.getArguments()[0].toString()), since);
      }
      case "maxItems" -> note(spot, value.size() + " of them", Phrases.most(spot.shape()));
      case "uniqueItems" -> repeated(spot, value);
      default -> note(spot, Places.shown(value), Phrases.accepted(spot.shape(), value));
    }
  }

  private void missing(Spot spot, String since) {
    note(spot, "", Phrases.needed(spot.shape(), since));
  }

  /** Every way to satisfy {@code anyOf} asks for one field. */
  private void noneOf(Spot spot) {
    var names =
        spot.shape().keywords().path("anyOf").findValues("required").stream()
            .map(required -> required.path(0).asText())
            .toList();
    note(spot.field(names.get(0)), "", Phrases.oneOf(names));
  }

  private void repeated(Spot spot, JsonNode list) {
    Set<JsonNode> seen = new HashSet<>();
    for (JsonNode element : list) {
      if (!seen.add(element)) {
        note(spot, Places.shown(element) + " twice", "every word once");
      }
    }
  }

  /** Why a field is needed that in general is not. */
  private static String since(Error error, Spot spot) {
    NodePath rule = error.getEvaluationPath();
    int then = indexOf(rule, "then");
    if (then < 0) {
      return "";
    }
    JsonNode keywords = spot.shape().keywords();
    boolean oneOfAll = then > 1 && "allOf".equals(rule.getName(then - 2));
    JsonNode owner =
        oneOfAll ? keywords.path("allOf").path((Integer) rule.getElement(then - 1)) : keywords;
    String field = owner.path("if").path("required").path(0).asText();
    return ", since " + field + " is " + error.getInstanceNode().path(field).asText();
  }

  /** A number that is neither whole nor within bounds departs twice and is told once. */
  private void note(Spot spot, String value, String accepted) {
    places.add(spot.path());
    if (told.add(spot.path() + "\n" + value + "\n" + accepted)) {
      problems.add(spot.path().isEmpty() ? "file" : spot.path(), spot.field(), value, accepted);
    }
  }

  /** How far below the object that has the {@code anyOf} an error of one of its branches is. */
  private static int levelsBelow(NodePath rule, int anyOf) {
    int inBranch = rule.getNameCount() - (anyOf + 2);
    return anyOf < 0 ? 0 : (inBranch - 1) / 2;
  }

  private static int indexOf(NodePath rule, String keyword) {
    for (int i = 0; i < rule.getNameCount(); i++) {
      boolean name = i > 0 && "properties".equals(rule.getName(i - 1));
      if (!name && keyword.equals(rule.getName(i))) {
        return i;
      }
    }
    return -1;
  }

  /**
   * A value in the file and what the schema says of it.
   *
   * @param path in our notation
   * @param field name of the innermost field; empty for the whole file
   */
  private record Spot(String path, String field, Shape shape) {
    static Spot of(Shape file, NodePath location, int levelsAbove) {
      Spot spot = new Spot("", "", file);
      for (int i = 0; i < location.getNameCount() - levelsAbove; i++) {
        if (location.getElement(i) instanceof Integer index) {
          spot = new Spot(Places.element(spot.path, index), spot.field, spot.shape.element());
        } else {
          spot = spot.field(location.getName(i));
        }
      }
      return spot;
    }

    Spot field(String name) {
      Shape inner = shape.knows(name) ? shape.property(name) : shape;
      return new Spot(Places.field(path, name), name, inner);
    }
  }
}
