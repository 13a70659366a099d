package hosewright.paper.json;

import java.util.List;
import java.util.Locale;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Puts the joints of form 1 back to the parts they join; form 1 named those by their words. */
final class Form1Joints {
  private final JsonNode joints;
  private final List<Form1Part> run;
  private final ArrayNode raised = JsonNodeFactory.instance.arrayNode();

  Form1Joints(JsonNode plan, List<Form1Part> run) {
    this.joints = plan.path("joints");
    this.run = run;
  }

  ArrayNode raised() {
    int sections = 0;
    int begin = 0;
    for (int place = 0; place + 1 < run.size(); place++) {
      Form1Part part = run.get(place);
      Form1Part next = run.get(place + 1);
      if (part.isNode()) {
        begin = place;
        sections = 0;
      }
      String leg = legName(begin);
      if (part.isHose() && part.count() > 1) {
        joint(
            leg,
            side(part, sections(sections + 1, sections + part.count() - 1)),
            side(part, sections(sections + 2, sections + part.count())));
      }
      sections += part.isHose() ? part.count() : 0;
      joint(leg, side(part, name(part, sections)), side(next, name(next, sections + 1)));
    }
    return raised;
  }

  private String legName(int begin) {
    int end = begin + 1;
    boolean hose = false;
    while (!run.get(end).isNode()) {
      hose |= run.get(end++).isHose();
    }
    return Form1Part.legName(run.get(begin), run.get(end), hose);
  }

  private static String name(Form1Part part, int section) {
    return switch (part.role()) {
      case "hose" -> sections(section, section);
      case "adapter" ->
          part.item().isEmpty()
              ? "adapter to be sourced"
              : part.upstreamIn() == part.downstreamIn() ? "adapter" : "reducer";
      case "split" -> "wye";
      case "join" -> "siamese";
      case "device" ->
          part.part().path("description").asString("").split(",")[0].toLowerCase(Locale.ROOT);
      default -> part.part().path("description").asString("");
    };
  }

  private static String sections(int from, int to) {
    return from == to ? "section " + from : "section " + from + "-" + to;
  }

  private static ObjectNode side(Form1Part part, String name) {
    ObjectNode side = JsonNodeFactory.instance.objectNode();
    side.put("part", name);
    side.put("item", part.item());
    return side;
  }

  private void joint(String leg, ObjectNode upstream, ObjectNode downstream) {
    JsonNode joint = joints.path(raised.size());
    upstream.set("end", joint.path("upstream"));
    downstream.set("end", joint.path("downstream"));
    ObjectNode to = raised.addObject();
    to.put("leg", leg);
    to.set("upstream", upstream);
    to.set("downstream", downstream);
    to.set("count", joint.path("count"));
    ObjectNode fit = to.putObject("fit");
    for (String name : new String[] {"verdict", "seal", "removable", "reason", "source"}) {
      fit.set(name, joint.path(name));
    }
  }
}
