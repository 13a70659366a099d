package hosewright.paper.json;

import hosewright.line.model.LinePlan;
import hosewright.line.plan.Flowing;
import hosewright.line.plan.Planner;
import hosewright.problem.PlainText;
import hosewright.quote.ByHand;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
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
import tools.jackson.databind.node.ObjectNode;

/**
 * Records as JSON and back: camelCase names in the order declared, ends and sums of money as a
 * person writes them, what is absent as null, enumerations in lower case.
 *
 * <p>A plan looks as {@link PlanDocument} says to whoever asks for it, and keeps the shape of its
 * record where it is kept.
 */
public final class Json {
  static final String CURRENCY = "currency";
  private static final String FORM = "form";

  private Json() {}

  // Built on first use: most commands print no JSON, and a mapper is slow to make.
  private static final class Shown {
    static final JsonMapper MAPPER =
        settings()
            .addMixIn(LinePlan.class, Mixins.AsPlanDocument.class)
            .addMixIn(Planner.Explained.class, Mixins.AsExplainedDocument.class)
            .addMixIn(Flowing.class, Mixins.AsFlowDocument.class)
            .addMixIn(ByHand.class, Mixins.WithoutPrices.class)
            .addMixIn(QuoteLine.Price.class, Mixins.ShownLineSums.class)
            .build();
  }

  private static final class Kept {
    static final JsonMapper MAPPER =
        settings().addMixIn(QuoteLine.Price.class, Mixins.QuoteLineSums.class).build();
  }

  private static JsonMapper.Builder settings() {
    return JsonMapper.builder()
        .addModule(new TradeModule())
        .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
        // A rate of 0.10 comes back as 0.10, not as 0.1.
        .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
        .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
        .enable(MapperFeature.ACCEPT_CASE_INSENSITIVE_ENUMS)
        .enable(EnumFeature.WRITE_ENUMS_TO_LOWERCASE)
        .enable(SerializationFeature.INDENT_OUTPUT)
        .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN);
  }

  /** One JSON document. */
  public static String write(Object document) {
    return PlainText.inJson(Shown.MAPPER.writeValueAsString(document));
  }

  /** One JSON document on one line, for files that are read line by line. */
  public static String line(Object document) {
    return PlainText.inJson(
        Shown.MAPPER
            .writer()
            .without(SerializationFeature.INDENT_OUTPUT)
            .writeValueAsString(document));
  }

  /** A quote to be kept, and read by {@link #readQuote}; the number of its form stands first. */
  public static String keep(Quote quote) {
    ObjectNode kept = Kept.MAPPER.createObjectNode();
    kept.put(FORM, FromForm1.RAISED_TO);
    kept.setAll((ObjectNode) Kept.MAPPER.valueToTree(quote));
    return Kept.MAPPER.writeValueAsString(kept);
  }

  /**
   * A quote as {@link #keep} wrote it, or a version before.
   *
   * @throws IllegalArgumentException when the text is not such a document, or of a later form
   */
  public static Quote readQuote(String text) {
    try {
      JsonNode tree = Kept.MAPPER.readTree(text);
      int form = tree.path(FORM).asInt(1);
      if (form > FromForm1.RAISED_TO) {
        throw new IllegalArgumentException("kept by a newer Hosewright, in form " + form);
      }
      return read(Grouped.quote(form == 1 ? FromForm1.quote(tree) : tree), Quote.class);
    } catch (JacksonException e) {
      throw new IllegalArgumentException("not a stored Quote", e);
    }
  }

  /**
   * Any record but a plan as {@link #write} wrote it.
   *
   * @throws IllegalArgumentException when the text is not such a document
   */
  public static <T> T read(String text, Class<T> type) {
    try {
      return read(Kept.MAPPER.readTree(text), type);
    } catch (JacksonException e) {
      throw new IllegalArgumentException("not a stored " + type.getSimpleName(), e);
    }
  }

  private static <T> T read(JsonNode tree, Class<T> type) {
    return Kept.MAPPER.readerFor(type).withAttribute(CURRENCY, currency(tree)).readValue(tree);
  }

  /** Lines of a quote show bare amounts; their currency is the total's. */
  private static CurrencyUnit currency(JsonNode tree) {
    Money total = MoneyText.parse(tree.path("total").asString(""));
    return total == null ? null : total.getCurrencyUnit();
  }
}
