package hosewright.paper.json;

import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What the water does in each leg and part, from the profile of form 1. */
final class Form1Water {
  private static final double FT3_PER_S_PER_GPM = 231.0 / 1728 / 60;
  private static final double USUAL_PSI_PER_FT = 0.434;

  private final JsonNode plan;

  Form1Water(JsonNode plan) {
    this.plan = plan;
  }

  /** Bore of the hose nearest to the source or of attack lines, in; the nominal size if unknown. */
  static double boreIn(JsonNode plan, JsonNode hose) {
    if (hose != plan) {
      return hose.path("boreIn").asDouble();
    }
    JsonNode check = plan.path("crossCheck").path(0).path("boreIn");
    return check.isNumber() ? check.asDouble() : plan.path("sizeIn").asDouble();
  }

  ObjectNode leg(List<Form1Part> run, int begin, int end, int lines, boolean branches) {
    JsonNode attack = plan.path("layout").path("attackLines");
    boolean hose = run.subList(begin + 1, end).stream().anyMatch(Form1Part::isHose);
    double attackPsi = attack.path("frictionLossPsi").asDouble(0);
    double flowGpm = plan.path("flowGpm").asDouble() / lines;
    ObjectNode water = object();
    water.put("flowGpm", flowGpm);
    water.put("inletPsi", psi(stationsUpTo(run, begin)));
    water.put("outletPsi", psi(stationsUpTo(run, end - 1)));
    ObjectNode friction = water.putObject("friction");
    JsonNode from = branches ? attack : plan;
    friction.put(
        "lossPsi",
        !hose ? 0 : branches ? attackPsi : plan.path("frictionLossPsi").asDouble() - attackPsi);
    friction.put("basis", hose ? from.path("frictionBasis").asString("") : "");
    friction.set(
        "coefficient",
        hose && from.path("frictionCoefficient").isNumber()
            ? from.path("frictionCoefficient")
            : JsonNodeFactory.instance.nullNode());
    water.put(
        "velocityFtPerS", hose && calculated() ? velocityFtPerS(flowGpm, boreIn(plan, from)) : 0);
    water.put("waterGal", hose ? from.path("waterGal").asDouble(0) : 0);
    return water;
  }

  ObjectNode part(List<Form1Part> run, int place) {
    Form1Part part = run.get(place);
    ObjectNode flow = object();
    boolean end = place == 0 || place == run.size() - 1;
    double waterwayIn = end ? 0 : waterwayIn(run, place);
    flow.put("waterwayIn", waterwayIn);
    double flowGpm = plan.path("flowGpm").asDouble() / part.lines();
    flow.put("velocityFtPerS", end || !calculated() ? 0 : velocityFtPerS(flowGpm, waterwayIn));
    flow.put("lossPsi", end ? 0 : lossPsi(stationsUpTo(run, place - 1), stationsUpTo(run, place)));
    return flow;
  }

  private double waterwayIn(List<Form1Part> run, int place) {
    Form1Part part = run.get(place);
    if (!part.isHose()) {
      return Math.min(part.upstreamIn(), part.downstreamIn());
    }
    JsonNode attack = plan.path("layout").path("attackLines");
    return boreIn(plan, place > attack.path("wyePlace").asInt(run.size()) ? attack : plan);
  }

  private boolean calculated() {
    return !plan.path("profile").isEmpty();
  }

  private static int stationsUpTo(List<Form1Part> run, int place) {
    return run.subList(1, place + 1).stream().mapToInt(Form1Part::count).sum();
  }

  private double psi(int station) {
    return calculated() ? at(station, "flowingPsi") : 0;
  }

  private double at(int station, String figure) {
    JsonNode profile = plan.path("profile");
    return profile.path(Math.min(station, profile.size() - 1)).path(figure).asDouble();
  }

  private double lossPsi(int from, int to) {
    if (!calculated()) {
      return 0;
    }
    int last = plan.path("profile").size() - 1;
    double riseFt = at(last, "elevationFt") - at(0, "elevationFt");
    double psiPerFt =
        riseFt == 0 ? USUAL_PSI_PER_FT : plan.path("elevationLossPsi").asDouble() / riseFt;
    return at(from, "flowingPsi")
        - at(to, "flowingPsi")
        - (at(to, "elevationFt") - at(from, "elevationFt")) * psiPerFt;
  }

  private static double velocityFtPerS(double flowGpm, double boreIn) {
    double areaFt2 = Math.PI / 4 * boreIn * boreIn / 144;
    return areaFt2 == 0 ? 0 : flowGpm * FT3_PER_S_PER_GPM / areaFt2;
  }

  private static ObjectNode object() {
    return JsonNodeFactory.instance.objectNode();
  }
}
