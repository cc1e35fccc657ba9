package rigmorrow.data.schema;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.regex.Pattern;
import rigmorrow.data.problem.Words;

/** Says in words what a schema's keywords accept. */
final class Phrases {
  /** What is accepted where an object is wanted. */
  static final String OBJECT = "an object with fields";

  private static final String DIGITS = "; put digits in quotes";

  private Phrases() {}

  /** What a value accepts, whatever stands there. */
  static String accepted(Shape shape) {
    JsonNode keywords = shape.keywords();
    if (keywords.has("const")) {
      return keywords.get("const").asText();
    }
    if (keywords.has("enum")) {
      return String.join(", ", shape.texts("enum"));
    }
    return switch (keywords.path("type").asText()) {
      case "integer", "number" -> figure(shape, shape.range());
      case "boolean" -> "true or false";
      case "array" -> "a list" + least(keywords);
      case "object" -> OBJECT;
      default -> text(keywords);
    };
  }

  /** What a value accepts, told to somebody who gave another. */
  static String accepted(Shape shape, JsonNode given) {
    if (shape.keywords().has("enum")) {
      return Words.choice(shape.texts("enum"), given.textValue());
    }
    String accepted = accepted(shape);
    return !accepted.endsWith(DIGITS) && lacksQuotes(shape, given) ? accepted + DIGITS : accepted;
  }

  /**
   * What is accepted where nothing stands.
   *
   * @param since why it is needed here; empty when it always is
   */
  static String needed(Shape shape, String since) {
    String accepted = accepted(shape);
    boolean digits = !since.isEmpty() && accepted.endsWith(DIGITS);
    return digits
        ? accepted.substring(0, accepted.length() - DIGITS.length()) + since
        : accepted + since;
  }

  /** What a figure accepts with these bounds. */
  static String figure(Shape shape, Range bounds) {
    return bounds.phrase(shape.is("integer") ? "a whole number" : "a number");
  }

  /** The most that a list may hold. */
  static String most(Shape list) {
    return "a list of at most " + list.keywords().path("maxItems").asInt();
  }

  /** Fields of which one is needed. */
  static String oneOf(List<String> names) {
    int last = names.size() - 1;
    return "at least one of "
        + String.join(", ", names.subList(0, last))
        + " and "
        + names.get(last);
  }

  /** The fields there are, and the one that an unknown name was probably meant for. */
  static String known(List<String> names, String unknown) {
    String nearest =
        Words.nearest(names, unknown).map(word -> " (did you mean " + word + "?)").orElse("");
    return "one of " + String.join(", ", names) + nearest;
  }

  private static String least(JsonNode keywords) {
    int least = keywords.path("minItems").asInt();
    return least > 0 ? " of at least " + least : "";
  }

  /** True for a number that would be right as a text. */
  private static boolean lacksQuotes(Shape shape, JsonNode given) {
    return given.isNumber()
        && shape.is("string")
        && Pattern.compile(shape.keywords().path("pattern").asText())
            .matcher(given.asText())
            .find();
  }

  /** A text that must follow a pattern has a title that says which. */
  private static String text(JsonNode keywords) {
    if (!keywords.has("title")) {
      return keywords.has("pattern") ? "a text that is not empty" + DIGITS : "a text";
    }
    String example = keywords.path("examples").path(0).asText();
    return keywords.get("title").asText() + (example.isEmpty() ? "" : " such as " + example);
  }
}
