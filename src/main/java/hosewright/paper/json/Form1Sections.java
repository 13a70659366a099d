package hosewright.paper.json;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Gives the hose of form 1 its lengths: it told them beside the parts, in the same order. */
final class Form1Sections {
  private static final Pattern CUT = Pattern.compile("made up from (\\d+) ft of");

  private final JsonNode plan;
  private final Deque<double[]> open = new ArrayDeque<>();
  private final Map<Form1Part, Double> lengthsFt = new IdentityHashMap<>();

  Form1Sections(JsonNode plan) {
    this.plan = plan;
    List.of(plan.path("sections"), plan.path("layout").path("attackLines").path("sections"))
        .forEach(
            leg ->
                leg.forEach(
                    section ->
                        open.add(
                            new double[] {
                              section.path("lengthFt").asDouble(), section.path("count").asDouble()
                            })));
  }

  /** Takes the next sections for a part; parts come in the order they are laid. */
  void cover(Form1Part part) {
    if (!part.isHose() || open.isEmpty()) {
      return;
    }
    double[] next = open.peek();
    lengthsFt.put(part, next[0]);
    next[1] -= part.count() * part.lines();
    if (next[1] <= 0) {
      open.remove();
    }
  }

  JsonNode of(Form1Part part) {
    return lengthsFt.containsKey(part)
        ? section(lengthsFt.get(part), cutFt(part))
        : JsonNodeFactory.instance.nullNode();
  }

  ArrayNode spares(List<Form1Part> run) {
    ArrayNode spares = JsonNodeFactory.instance.arrayNode();
    for (JsonNode spare : plan.path("spareSections")) {
      double lengthFt = spare.path("lengthFt").asDouble();
      run.stream()
          .filter(part -> part.isHose() && !part.isBuyers())
          .filter(part -> lengthsFt.get(part) == lengthFt)
          .findFirst()
          .ifPresent(part -> spares.add(spare(spare, part)));
    }
    return spares;
  }

  private ObjectNode spare(JsonNode spare, Form1Part part) {
    ObjectNode raised = JsonNodeFactory.instance.objectNode();
    raised.put("item", part.item());
    raised.set("sizeIn", plan.path("sizeIn"));
    raised.set("ends", part.raised().path("ends"));
    raised.set("section", section(spare.path("lengthFt").asDouble(), cutFt(part)));
    raised.set("count", spare.path("count"));
    return raised;
  }

  /** Hose cut for a section, ft; 0 where it was not made up. */
  private int cutFt(Form1Part part) {
    boolean byTheFoot = false;
    for (JsonNode item : plan.path("items")) {
      byTheFoot |=
          item.path("item").asString("").equals(part.item())
              && item.path("unit").asString("").equals("foot");
    }
    Matcher cut = CUT.matcher(part.part().path("description").asString(""));
    return byTheFoot && cut.find() ? Integer.parseInt(cut.group(1)) : 0;
  }

  private static ObjectNode section(double lengthFt, int cutFt) {
    ObjectNode section = JsonNodeFactory.instance.objectNode();
    section.put("lengthFt", lengthFt);
    if (cutFt == 0) {
      section.putNull("cutFt");
    } else {
      section.put("cutFt", cutFt);
    }
    return section;
  }
}
