package hosewright.paper.json;

import hosewright.line.model.CheckId;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Raises a quote kept in form 1, where a plan was one list of components, to form 2.
 *
 * <p>It works from tree to tree. What form 1 did not say of a part is read from its words, which
 * nobody else may do: those documents are written, and their words are frozen.
 */
final class FromForm1 {
  static final int RAISED_TO = 2;

  private static final Pattern COUNTED = Pattern.compile("(\\d{1,6}) x (.*)");
  private static final Pattern TENDER =
      Pattern.compile("# tender ([0-9a-f]{16}) begun (\\S+), line (\\d+)\\R");
  private static final Pattern NO_PRICE = Pattern.compile("(.*) has no price in force");
  private static final Map<String, CheckId> CHECKS =
      Arrays.stream(CheckId.values())
          .collect(Collectors.toMap(CheckId::displayName, Function.identity()));

  private final JsonNode plan;

  private FromForm1(JsonNode plan) {
    this.plan = plan;
  }

  /** The whole quote in form 2; only its plan changes. */
  static JsonNode quote(JsonNode quote) {
    ObjectNode raised = ((ObjectNode) quote).deepCopy();
    raised.put("form", RAISED_TO);
    raised.set("plan", new FromForm1(quote.path("plan")).plan());
    raised.set("tender", tender(quote.path("jobYaml").asString("")));
    return raised;
  }

  /** The row that a comment before the job named. */
  private static JsonNode tender(String jobYaml) {
    Matcher row = TENDER.matcher(jobYaml);
    if (!row.lookingAt()) {
      return JsonNodeFactory.instance.nullNode();
    }
    ObjectNode raised = object();
    raised.put("sha256", row.group(1));
    raised.put("begun", row.group(2));
    raised.put("line", Long.parseLong(row.group(3)));
    return raised;
  }

  private ObjectNode plan() {
    ObjectNode raised = object();
    raised.set("asked", only("summary", "flowGpm", "needPsi"));
    raised.set("answer", only("feasible", "limitedBy", "instead", "cautions"));
    LayoutFromForm1 layout = new LayoutFromForm1(plan);
    raised.set("layout", layout.layout());
    raised.set("hydraulics", hydraulics());
    ArrayNode checks = raised.putArray("checks");
    plan.path("checks").forEach(check -> checks.add(check(check)));
    raised.set("bill", bill(layout.spares()));
    raised.set("weighed", weighed());
    return raised;
  }

  private ObjectNode hydraulics() {
    ObjectNode water = object();
    water.set("pressures", only("requiredSourcePsi", "sourcePsi", "deliveredPsi"));
    ObjectNode losses = water.putObject("losses");
    losses.set("frictionPsi", plan.path("frictionLossPsi"));
    losses.set("elevationPsi", plan.path("elevationLossPsi"));
    losses.set("adapterPsi", plan.path("adapterLossPsi"));
    losses.set("appliancePsi", plan.path("applianceLossPsi"));
    ObjectNode friction = water.putObject("friction");
    friction.set("basis", plan.path("frictionBasis"));
    friction.set("coefficient", given("frictionCoefficient"));
    friction.set("crossCheck", list("crossCheck"));
    friction.set("others", list("otherCoefficients"));
    water.set("forces", only("velocityFtPerS", "reactionLbf", "surgeLowPsi", "surgeHighPsi"));
    water.set("filled", only("waterGal", "emptyWeightLb", "chargedWeightLb", "fillMinutes"));
    water.set("profile", list("profile"));
    water.set("working", list("working"));
    return water;
  }

  private static ObjectNode check(JsonNode check) {
    ObjectNode raised = object();
    CheckId id = CHECKS.get(check.path("name").asString(""));
    if (id == null) {
      throw new IllegalArgumentException("no check is called " + check.path("name"));
    }
    raised.put("id", id.name().toLowerCase(Locale.ROOT));
    raised.set("outcome", check.path("outcome"));
    ObjectNode figure = raised.putObject("figure");
    for (String name : new String[] {"value", "limit", "unit"}) {
      figure.set(name, check.path(name));
    }
    raised.set("note", check.path("note"));
    raised.set("source", check.path("source"));
    return raised;
  }

  private ObjectNode bill(ArrayNode spares) {
    ObjectNode bill = object();
    bill.set("items", list("items"));
    ArrayNode unpriced = bill.putArray("unpriced");
    plan.path("unpriced").forEach(words -> unpriced.add(unpriced(words.asString())));
    bill.set("total", plan.path("total"));
    bill.set("date", plan.path("date"));
    bill.set("gaskets", plan.path("gaskets"));
    bill.set("spares", spares);
    return bill;
  }

  private static ObjectNode unpriced(String words) {
    ObjectNode raised = object();
    Matcher noPrice = NO_PRICE.matcher(words);
    Matcher counted = COUNTED.matcher(words);
    boolean item = noPrice.matches();
    boolean count = counted.matches();
    if (item) {
      raised.put("item", noPrice.group(1));
    } else {
      raised.putNull("item");
    }
    raised.put("what", count ? counted.group(2) : words);
    raised.put("quantity", count ? Integer.parseInt(counted.group(1)) : 1);
    return raised;
  }

  private ObjectNode weighed() {
    ObjectNode weighed = object();
    ArrayNode alternatives = weighed.putArray("alternatives");
    for (JsonNode other : plan.path("alternatives")) {
      ObjectNode raised = alternatives.addObject();
      ObjectNode hose = raised.putObject("hose");
      hose.set("sizeIn", other.path("sizeIn"));
      hose.set("couplingSizeIn", other.path("couplingSizeIn"));
      hose.set("series", other.path("hoseSeries"));
      hose.set("lines", other.path("lines"));
      for (String name : new String[] {"feasible", "total", "requiredSourcePsi", "why"}) {
        raised.set(name, other.path(name));
      }
    }
    JsonNode counts = plan.path("searched");
    ObjectNode searched = weighed.putObject("searched");
    searched.set("topologies", counts.path("frames"));
    for (String name : new String[] {"cutByPrice", "cutByPressure", "plans"}) {
      searched.set(name, counts.path(name));
    }
    return weighed;
  }

  private ObjectNode only(String... names) {
    ObjectNode some = object();
    for (String name : names) {
      some.set(name, given(name));
    }
    return some;
  }

  private JsonNode given(String name) {
    return plan.path(name).isMissingNode() ? JsonNodeFactory.instance.nullNode() : plan.path(name);
  }

  private JsonNode list(String name) {
    return plan.path(name).isArray() ? plan.path(name) : JsonNodeFactory.instance.arrayNode();
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
