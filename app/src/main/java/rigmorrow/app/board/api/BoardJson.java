package rigmorrow.app.board.api;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;

/** JSON as the board reads and writes it. */
public final class BoardJson {
  private static final int MOST_DEPTH = 50;

  private static final ObjectMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxNestingDepth(MOST_DEPTH).build())
                  .build())
          .addModule(new JavaTimeModule())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS)
          .build();

  private BoardJson() {}

  /** A record or tree as UTF-8. */
  public static byte[] bytes(Object value) {
    try {
      return MAPPER.writeValueAsBytes(value);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a plain record cannot be written", e);
    }
  }

  /**
   * A tree.
   *
   * @throws Refusal when the bytes are no JSON
   */
  static JsonNode tree(byte[] bytes) {
    try {
      JsonNode tree = MAPPER.readTree(bytes);
      if (tree == null || tree.isMissingNode()) {
        throw Refusal.malformed("The body is empty; accepted: JSON.");
      }
      return tree;
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      int column = e.getLocation() == null ? 0 : e.getLocation().getColumnNr();
      throw Refusal.malformed(
          "The body is no well-formed JSON (line %d, column %d).".formatted(line, column));
    } catch (IOException e) {
      throw Refusal.malformed("The body is no text in UTF-8.");
    }
  }

  /** A record from a tree that was held against its description. */
  static <T> T record(JsonNode tree, Class<T> type) {
    try {
      return MAPPER.treeToValue(tree, type);
    } catch (JsonProcessingException e) {
      throw Refusal.malformed("The body cannot be read: " + e.getOriginalMessage());
    }
  }
}
