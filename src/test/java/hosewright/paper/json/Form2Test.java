package hosewright.paper.json;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A quote kept in form 2 before its records had groups: one with an exempt buyer, a discount, a
 * line of free text, an offer and a note.
 */
final class Form2Test {
  private static final String KEPT = "/hosewright/kept/form2/quote.json";

  private static String kept() throws IOException {
    try (InputStream in = Form2Test.class.getResourceAsStream(KEPT)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void it_reads_as_it_was_kept() throws IOException {
    Quote quote = Json.readQuote(kept());
    assertThat(quote.name()).isEqualTo(new Quote.Name("Q-000001", 2));
    assertThat(quote.total()).hasToString("USD 218.92");
    assertThat(quote.customer().taxation().exemption()).isPresent();
    assertThat(quote.customer().discount()).isEqualTo(new BigDecimal("0.12"));
    assertThat(quote.validity().validUntil()).isEqualTo(LocalDate.parse("2026-12-30"));
    QuoteLine hose = quote.lines().get(0);
    assertThat(hose.goods().item()).isEqualTo("H175-DJ-50-15NH");
    assertThat(hose.price().unitPrice()).hasToString("USD 153.07");
    assertThat(hose.price().discount().orElseThrow().fraction()).isEqualTo("0.05");
    assertThat(quote.offer().offered().get(0).line().price().extended()).hasToString("USD 8.10");
    assertThat(quote.offer().amendments().notes()).containsExactly("Left at the gate");
  }

  @Test
  void every_name_it_has_is_written_still() throws IOException {
    JsonMapper mapper = new JsonMapper();
    JsonNode before = mapper.readTree(kept());
    isIn(before, mapper.readTree(Json.keep(Json.readQuote(kept()))), "quote");
  }

  /** Names may be added to a form, and none dropped or given another value. */
  private static void isIn(JsonNode before, JsonNode after, String where) {
    if (before.isObject()) {
      for (Map.Entry<String, JsonNode> field : before.properties()) {
        assertThat(after.has(field.getKey())).as(where + "." + field.getKey()).isTrue();
        isIn(field.getValue(), after.get(field.getKey()), where + "." + field.getKey());
      }
    } else if (before.isArray()) {
      assertThat(after.size()).as(where).isEqualTo(before.size());
      for (int i = 0; i < before.size(); i++) {
        isIn(before.get(i), after.get(i), where + "[" + i + "]");
      }
    } else {
      assertThat(after).as(where).isEqualTo(before);
    }
  }
}
