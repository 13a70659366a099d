package hosewright.paper.json;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Tells the run of a plan in form 1 apart into the legs and nodes of form 2. */
final class LayoutFromForm1 {
  private final JsonNode plan;
  private final JsonNode attack;
  private final Form1Sections sections;
  private final Set<String> adapters = new HashSet<>();
  private final int split;
  private final int join;
  private final List<Form1Part> run = new ArrayList<>();

  LayoutFromForm1(JsonNode plan) {
    this.plan = plan;
    this.attack = plan.path("layout").path("attackLines");
    this.sections = new Form1Sections(plan);
    plan.path("adapters").forEach(one -> adapters.add(one.path("item").asString("")));
    JsonNode parts = plan.path("run");
    this.split = parts.isEmpty() ? -1 : split();
    this.join = parts.isEmpty() ? 0 : join();
    for (int place = 0; place < parts.size(); place++) {
      run.add(new Form1Part(parts.get(place), role(place), lines(place)));
    }
    run.forEach(sections::cover);
  }

  ObjectNode layout() {
    ObjectNode layout = object();
    ArrayNode nodes = layout.putArray("nodes");
    ArrayNode legs = layout.putArray("legs");
    Form1Water water = new Form1Water(plan);
    int begin = 0;
    for (int place = 0; place < run.size(); place++) {
      Form1Part part = run.get(place);
      if (!part.isNode()) {
        continue;
      }
      ObjectNode node = nodes.addObject();
      node.put("name", part.nodeName());
      node.set("part", part(place, water));
      node.put("count", part.lines());
      if (place > 0) {
        legs.add(leg(begin, place, water));
      }
      begin = place;
    }
    layout.set("joints", new Form1Joints(plan, run).raised());
    ArrayNode devices = layout.putArray("devices");
    for (JsonNode device : plan.path("layout").path("devices")) {
      ObjectNode raised = devices.addObject();
      for (String name : new String[] {"item", "askedFt", "atFt"}) {
        raised.set(name, device.path(name));
      }
    }
    return layout;
  }

  /** Spare sections; form 1 knew their lengths, and they are of the make laid in that length. */
  ArrayNode spares() {
    return sections.spares(run);
  }

  private String role(int place) {
    JsonNode part = plan.path("run").get(place);
    int last = plan.path("run").size() - 1;
    if (place == 0 || place == last) {
      return place == 0 ? "source" : "appliance";
    }
    String words = part.path("description").asString("").toLowerCase(Locale.ROOT);
    String item = part.path("item").asString("");
    if (isHose(place)) {
      return "hose";
    }
    if (item.isEmpty()) {
      return "adapter";
    }
    if (place == split || place == join) {
      return place == split ? "split" : "join";
    }
    return words.matches("(gate|ball|butterfly|check)? ?valve.*|.*\\b(meter|backflow|vacuum)\\b.*")
        ? "device"
        : "adapter";
  }

  /** How many of a part stand side by side. */
  private int lines(int place) {
    if (attack.isObject()) {
      return place > split ? attack.path("lines").asInt() : 1;
    }
    return place > split && place < join ? plan.path("lines").asInt() : 1;
  }

  /** The place of the part where one line becomes several; before the first where none does. */
  private int split() {
    if (attack.isObject()) {
      return attack.path("wyePlace").asInt();
    }
    boolean fromOneOutlet = plan.path("layout").path("outlets").asInt(1) == 1;
    return sideBySide() > 1 && fromOneOutlet ? standsOnce(firstHose(), -1) : -1;
  }

  /** The place of the part where several lines become one; behind the last where none does. */
  private int join() {
    return sideBySide() > 1 && !attack.isObject()
        ? standsOnce(lastHose(), 1)
        : plan.path("run").size();
  }

  private int sideBySide() {
    return plan.path("lines").asInt();
  }

  /**
   * The nearest part to some hose that stands once and not in every line, which the counts of form
   * 1 tell: they are over all lines.
   */
  private int standsOnce(int hose, int step) {
    Map<String, Integer> left = new HashMap<>();
    plan.path("adapters")
        .forEach(one -> left.put(one.path("item").asString(""), one.path("count").asInt()));
    int place = hose + step;
    while (place > 0 && place < plan.path("run").size() - 1) {
      String item = plan.path("run").get(place).path("item").asString("");
      if (!item.isEmpty() && left.merge(item, -sideBySide(), Integer::sum) < 0) {
        return place;
      }
      place += step;
    }
    return place;
  }

  private int firstHose() {
    int place = 1;
    while (!isHose(place)) {
      place++;
    }
    return place;
  }

  private int lastHose() {
    int place = plan.path("run").size() - 2;
    while (!isHose(place)) {
      place--;
    }
    return place;
  }

  private boolean isHose(int place) {
    JsonNode part = plan.path("run").get(place);
    String item = part.path("item").asString("");
    return item.isEmpty()
        ? part.path("description").asString("").startsWith("customer's own")
        : !adapters.contains(item);
  }

  private ObjectNode leg(int begin, int end, Form1Water water) {
    List<Form1Part> between = run.subList(begin + 1, end);
    boolean hose = between.stream().anyMatch(Form1Part::isHose);
    boolean branches = attack.isObject() && begin > 0;
    int lines = between.stream().mapToInt(Form1Part::lines).max().orElse(1);
    ObjectNode leg = object();
    leg.put("name", Form1Part.legName(run.get(begin), run.get(end), hose));
    leg.put("begins", run.get(begin).nodeName());
    leg.put("ends", run.get(end).nodeName());
    leg.put("lines", lines);
    if (hose) {
      leg.set("hose", hose(branches ? attack : plan));
    } else {
      leg.putNull("hose");
    }
    leg.set("water", water.leg(run, begin, end, lines, branches));
    ArrayNode parts = leg.putArray("parts");
    for (int place = begin + 1; place < end; place++) {
      parts.add(part(place, water));
    }
    return leg;
  }

  private ObjectNode hose(JsonNode from) {
    ObjectNode hose = object();
    hose.set("sizeIn", from.path("sizeIn"));
    hose.set("couplingSizeIn", from.path("couplingSizeIn"));
    hose.set("series", from.path("hoseSeries"));
    hose.put("boreIn", Form1Water.boreIn(plan, from));
    hose.set("neededFt", from.path("neededFt"));
    hose.set("laidFt", from.path("laidFt"));
    return hose;
  }

  private ObjectNode part(int place, Form1Water water) {
    Form1Part part = run.get(place);
    ObjectNode raised = part.raised();
    raised.set("section", sections.of(part));
    raised.set("flow", water.part(run, place));
    return raised;
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
