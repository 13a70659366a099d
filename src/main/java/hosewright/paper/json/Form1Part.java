package hosewright.paper.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A part of the run of form 1, with what was found out about it.
 *
 * @param role as form 2 writes it
 * @param lines how many stand side by side
 */
record Form1Part(JsonNode part, String role, int lines) {

  boolean isNode() {
    return switch (role) {
      case "source", "split", "join", "appliance" -> true;
      default -> false;
    };
  }

  boolean isHose() {
    return role.equals("hose");
  }

  boolean isBuyers() {
    return item().isEmpty() && !role.equals("adapter");
  }

  String item() {
    return part.path("item").asString("");
  }

  int count() {
    return part.path("count").asInt();
  }

  String nodeName() {
    return switch (role) {
      case "split" -> "wye";
      case "join" -> "siamese";
      default -> role;
    };
  }

  static String legName(Form1Part begins, Form1Part ends, boolean hose) {
    return switch (ends.role) {
      case "join" -> "lines";
      case "split" -> hose ? "supply line" : "to the wye";
      default ->
          begins.role.equals("split")
              ? "attack lines"
              : begins.role.equals("join") ? "behind the siamese" : "line";
    };
  }

  /** Form 2 of it, without section and flow. */
  ObjectNode raised() {
    ObjectNode raised = JsonNodeFactory.instance.objectNode();
    raised.put("role", role);
    raised.put("owner", isBuyers() ? "buyer" : "dealer");
    ObjectNode goods = raised.putObject("goods");
    if (item().isEmpty()) {
      goods.putNull("item");
    } else {
      goods.put("item", item());
    }
    goods.set("description", part.path("description"));
    ObjectNode ends = raised.putObject("ends");
    ends.set("upstream", part.path("upstream"));
    ends.set("downstream", part.path("downstream"));
    raised.put("count", count());
    return raised;
  }

  /** Nominal size of an end as it is written, in; empty text has none. */
  static double sizeIn(String end) {
    return end.isEmpty() ? 0 : Double.parseDouble(end.substring(0, end.indexOf(' ')));
  }

  double upstreamIn() {
    return sizeIn(part.path("upstream").asString(""));
  }

  double downstreamIn() {
    return sizeIn(part.path("downstream").asString(""));
  }
}
