package hosewright.json;

import hosewright.quote.Quote;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.cfg.EnumFeature;
import tools.jackson.databind.cfg.JsonNodeFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * Records as JSON and back: camelCase names in the order declared, ends and sums of money as a
 * person writes them, what is absent as null, enumerations in lower case.
 */
public final class Json {
  static final String CURRENCY = "currency";

  private Json() {}

  // Built on first use: most commands print no JSON, and the mapper is slow to make.
  private static final class Holder {
    static final JsonMapper MAPPER =
        JsonMapper.builder()
            .addModule(new TradeModule())
            .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
            // A rate of 0.10 comes back as 0.10, not as 0.1.
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
            .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
            .enable(SerializationFeature.INDENT_OUTPUT)
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();
  }

  /** One JSON document. */
  public static String write(Object document) {
    return Holder.MAPPER.writeValueAsString(document);
  }

  /** One JSON document on one line, for files that are read line by line. */
  public static String line(Object document) {
    return Holder.MAPPER
        .writer()
        .without(SerializationFeature.INDENT_OUTPUT)
        .writeValueAsString(document);
  }

  /**
   * A quote as {@link #write} wrote it.
   *
   * @throws IllegalArgumentException when the text is not such a document
   */
  public static Quote readQuote(String text) {
    return read(text, Quote.class);
  }

  /**
   * Any record as {@link #write} wrote it.
   *
   * @throws IllegalArgumentException when the text is not such a document
   */
  public static <T> T read(String text, Class<T> type) {
    try {
      JsonNode tree = Holder.MAPPER.readTree(text);
      return Holder.MAPPER.readerFor(type).withAttribute(CURRENCY, currency(tree)).readValue(tree);
    } catch (JacksonException e) {
      throw new IllegalArgumentException("not a stored " + type.getSimpleName(), e);
    }
  }

  /** Lines of a plan or quote show bare amounts; their currency is the total's. */
  private static CurrencyUnit currency(JsonNode tree) {
    Money total = MoneyText.parse(tree.path("total").asString(""));
    return total == null ? null : total.getCurrencyUnit();
  }
}
