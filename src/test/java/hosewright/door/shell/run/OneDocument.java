package hosewright.door.shell.run;

import java.util.List;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MappingIterator;
import tools.jackson.databind.json.JsonMapper;

/** Reads text that must be one JSON document and nothing else. */
public final class OneDocument {
  private static final JsonMapper STRICT =
      JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

  private OneDocument() {}

  public static JsonNode in(String text) {
    JsonNode document = STRICT.readTree(text);
    if (!document.isObject()) {
      throw new AssertionError("no JSON document in: '" + text + "'");
    }
    return document;
  }

  /** The documents that a script's commands answered, in turn. */
  public static List<JsonNode> each(String text) {
    try (MappingIterator<JsonNode> documents = STRICT.readerFor(JsonNode.class).readValues(text)) {
      return documents.readAll();
    }
  }
}
