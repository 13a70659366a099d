package hosewright.paper.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Puts the lines of a quote that was kept before there were groups into its first and only one. */
final class Grouped {
  private static final String GROUP = "group";
  private static final int ONLY = 1;

  private Grouped() {}

  /** The quote with a group named in every line; one that has them already stays as it is. */
  static JsonNode quote(JsonNode quote) {
    quote.path("lines").forEach(Grouped::line);
    quote.path("offered").forEach(offer -> line(offer.path("line")));
    quote.path("amendments").path("extraLines").forEach(Grouped::line);
    return quote;
  }

  private static void line(JsonNode line) {
    if (line instanceof ObjectNode fields && !fields.has(GROUP)) {
      fields.put(GROUP, ONLY);
    }
  }
}
