package rigmorrow.data.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLGenerator;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.fasterxml.jackson.dataformat.yaml.util.StringQuotingChecker;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.yaml.snakeyaml.LoaderOptions;
import rigmorrow.data.problem.Problems;

/** From text to a tree and back, in JSON and YAML. */
public final class Trees {
  /** How a tree is written down. */
  public enum Notation {
    /** RFC 8259. */
    JSON,
    /** YAML without anchors, one document. */
    YAML
  }

  private static final int MOST_YAML_CHARACTERS = 64 * 1024 * 1024;
  private static final ObjectMapper JSON = new ObjectMapper(jsonFactory());
  private static final ObjectMapper YAML = new ObjectMapper(yamlFactory(true));
  private static final ObjectMapper QUOTED_YAML = new ObjectMapper(yamlFactory(false));

  private Trees() {}

  /**
   * Reads one tree. Text that cannot be read becomes one problem with its line and column, and an
   * empty tree.
   */
  public static JsonNode read(String text, Notation notation, Problems problems) {
    ObjectMapper mapper = notation == Notation.YAML ? YAML : JSON;
    try {
      if (notation == Notation.YAML && hasAlias(text, problems)) {
        return MissingNode.getInstance();
      }
      try (JsonParser parser = mapper.getFactory().createParser(text)) {
        JsonNode tree = mapper.readTree(parser);
        if (tree == null || tree.isMissingNode() || tree.isNull()) {
          problems.add("file", "", "", "a " + notation + " object, not an empty file");
          return MissingNode.getInstance();
        }
        if (parser.nextToken() != null) {
          problems.add(
              place(parser.currentTokenLocation()), "", "more text", "the end of the file");
        }
        return tree;
      }
    } catch (JsonProcessingException e) {
      problems.add(place(e.getLocation()), "", firstLine(e), "well-formed " + notation);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return MissingNode.getInstance();
  }

  /** Writes a tree, indented, with a line feed at the end. */
  public static String write(JsonNode tree, Notation notation) {
    try {
      if (notation == Notation.YAML) {
        return (hasLineBreak(tree) ? QUOTED_YAML : YAML).writeValueAsString(tree);
      }
      DefaultIndenter indent = new DefaultIndenter("  ", "\n");
      DefaultPrettyPrinter printer =
          new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent);
      return JSON.writer(printer).writeValueAsString(tree) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("Tree cannot be written", e);
    }
  }

  /** The tree reader would take an alias for a text, so it must not get to see one. */
  private static boolean hasAlias(String text, Problems problems) throws IOException {
    try (YAMLParser parser = (YAMLParser) YAML.getFactory().createParser(text)) {
      while (parser.nextToken() != null) {
        if (parser.isCurrentAlias()) {
          problems.add(
              place(parser.currentTokenLocation()), "", "*" + parser.getText(), "no YAML aliases");
          return true;
        }
      }
      return false;
    }
  }

  /** Block texts, which the writer would choose for these, do not keep every line break. */
  private static boolean hasLineBreak(JsonNode tree) {
    if (tree.isTextual()) {
      return tree.textValue().indexOf('\n') >= 0;
    }
    for (JsonNode child : tree) {
      if (hasLineBreak(child)) {
        return true;
      }
    }
    return false;
  }

  private static String place(JsonLocation location) {
    return location == null || location.getLineNr() < 1
        ? "file"
        : "line " + location.getLineNr() + ", column " + location.getColumnNr();
  }

  private static String firstLine(JsonProcessingException e) {
    String message = e.getOriginalMessage();
    return message == null ? "" : message.strip().split("\\R", 2)[0];
  }

  private static JsonFactory jsonFactory() {
    return JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
  }

  private static YAMLFactory yamlFactory(boolean plainWords) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(MOST_YAML_CHARACTERS);
    return YAMLFactory.builder()
        .loaderOptions(options)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
        .disable(YAMLGenerator.Feature.WRITE_DOC_START_MARKER)
        .disable(YAMLGenerator.Feature.SPLIT_LINES)
        .configure(YAMLGenerator.Feature.MINIMIZE_QUOTES, plainWords)
        .stringQuotingChecker(new PlainWords())
        .build();
  }

  /** Only what no reader could take for anything but a text goes without quotes. */
  private static final class PlainWords extends StringQuotingChecker {
    private static final long serialVersionUID = 1L;

    @Override
    public boolean needToQuoteName(String name) {
      return needToQuoteValue(name);
    }

    @Override
    public boolean needToQuoteValue(String value) {
      return isReservedKeyword(value) || !value.matches("[A-Za-z][\\w-]*([ /.,][\\w-]+)*[.]?");
    }
  }
}
