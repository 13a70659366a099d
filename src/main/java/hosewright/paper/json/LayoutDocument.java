package hosewright.paper.json;

import hosewright.line.model.Hydraulics;
import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.line.model.SectionCount;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The parts of a plan as scripts read them. */
final class LayoutDocument {
  private LayoutDocument() {}

  static List<Map<String, Object>> sources(Layout layout, Hydraulics water) {
    return at(layout, role -> role == Role.SOURCE).stream()
        .map(
            node -> {
              Map<String, Object> document = new LinkedHashMap<>();
              document.put("source", node.name());
              document.put("end", node.part().downstream());
              document.put("outlets", node.count());
              document.put("requiredPsi", water.requiredSourcePsi());
              document.put("psi", water.sourcePsi());
              return document;
            })
        .toList();
  }

  /** Every node, with what stands there. */
  static List<Map<String, Object>> nodes(Layout layout) {
    return layout.nodes().stream()
        .map(
            node -> {
              Map<String, Object> document = new LinkedHashMap<>();
              document.put("node", node.name());
              document.putAll(part(node.part()));
              document.put("count", node.count());
              return document;
            })
        .toList();
  }

  private static List<Node> at(Layout layout, Predicate<Role> wanted) {
    return layout.nodes().stream().filter(node -> wanted.test(node.role())).toList();
  }

  static List<Map<String, Object>> legs(Layout layout) {
    return layout.legs().stream().map(LayoutDocument::leg).toList();
  }

  private static Map<String, Object> leg(Leg leg) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("leg", leg.name());
    document.put("begins", leg.begins());
    document.put("ends", leg.ends());
    document.put("lines", leg.lines());
    document.put("flowGpm", leg.water().flowGpm());
    document.put("neededFt", leg.hose().map(Leg.Hose::neededFt).orElse(0.0));
    document.put("laidFt", leg.hose().map(Leg.Hose::laidFt).orElse(0.0));
    document.put("sizeIn", leg.hose().map(Leg.Hose::sizeIn));
    document.put("couplingSizeIn", leg.hose().map(Leg.Hose::couplingSizeIn));
    document.put("hoseSeries", leg.hose().map(Leg.Hose::series));
    document.put("frictionLossPsi", leg.water().friction().lossPsi());
    document.put("frictionCoefficient", leg.water().friction().coefficient());
    document.put("frictionBasis", leg.water().friction().basis());
    document.put("velocityFtPerS", leg.water().velocityFtPerS());
    document.put("inletPsi", leg.water().inletPsi());
    document.put("outletPsi", leg.water().outletPsi());
    document.put("parts", leg.parts().stream().map(LayoutDocument::part).toList());
    return document;
  }

  private static Map<String, Object> part(Part part) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("role", part.role());
    document.put("item", part.item());
    document.put("description", part.description());
    document.put("owner", part.owner());
    document.put("in", part.upstream());
    document.put("out", part.downstream());
    document.put("lengthFt", part.section().map(Part.Section::lengthFt).orElse(0.0));
    document.put("waterwayIn", part.flow().waterwayIn());
    document.put("count", part.count());
    document.put("velocityFtPerS", part.flow().velocityFtPerS());
    document.put("lossPsi", part.flow().lossPsi());
    return document;
  }

  static List<Map<String, Object>> joints(Layout layout) {
    return layout.joints().stream().map(LayoutDocument::joint).toList();
  }

  private static Map<String, Object> joint(Joint joint) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("leg", joint.leg());
    document.put("upstream", joint.upstream().end());
    document.put("downstream", joint.downstream().end());
    document.put("upstreamPart", joint.upstream().part());
    document.put("upstreamItem", joint.upstream().item());
    document.put("downstreamPart", joint.downstream().part());
    document.put("downstreamItem", joint.downstream().item());
    document.put("count", joint.count());
    document.put("verdict", joint.fit().verdict());
    document.put("seal", joint.fit().seal());
    document.put("removable", joint.fit().removable());
    document.put("reason", joint.fit().reason());
    document.put("source", joint.fit().source());
    return document;
  }

  /** One for each appliance; those that are fed alike have the same figures. */
  static List<Map<String, Object>> appliances(LinePlan plan) {
    Hydraulics water = plan.hydraulics();
    if (!plan.asked().ofLegs().isEmpty()) {
      return plan.layout().legs().stream()
          .flatMap(leg -> plan.asked().of(leg).stream().flatMap(asked -> of(plan, leg, asked)))
          .toList();
    }
    List<Map<String, Object>> appliances =
        appliances(plan.layout(), plan.flowGpm(), water.deliveredPsi(), water.profile());
    for (Map<String, Object> document : appliances) {
      document.put("needPsi", plan.needPsi());
      document.put("reactionLbf", water.reactionLbf());
    }
    return appliances;
  }

  /** One for each copy of a leg that ends at an appliance of its own. */
  private static Stream<Map<String, Object>> of(LinePlan plan, Leg leg, LinePlan.OfLeg asked) {
    Node node = plan.layout().node(leg.ends());
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("leg", Optional.of(leg.name()));
    document.put("end", node.part().upstream());
    document.put("flowGpm", asked.flowGpm());
    document.put("deliveredPsi", leg.water().outletPsi());
    document.put("elevationFt", elevationFt(leg.water().profile()));
    document.put("needPsi", asked.needPsi());
    document.put("reactionLbf", asked.reactionLbf());
    return Collections.nCopies(node.count(), document).stream();
  }

  /** One for each appliance, with its share of the flow and what arrives there. */
  static List<Map<String, Object>> appliances(
      Layout layout, double flowGpm, double deliveredPsi, List<Hydraulics.Station> profile) {
    return at(layout, role -> role == Role.APPLIANCE).stream()
        .flatMap(node -> Collections.nCopies(node.count(), node).stream())
        .map(
            node -> {
              Map<String, Object> document = appliance(layout, node, flowGpm);
              document.put("deliveredPsi", deliveredPsi);
              document.put("elevationFt", elevationFt(profile));
              return document;
            })
        .toList();
  }

  private static Map<String, Object> appliance(Layout layout, Node node, double flowGpm) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put(
        "leg",
        layout.legs().stream()
            .filter(leg -> leg.ends().equals(node.name()))
            .map(Leg::name)
            .findFirst());
    document.put("end", node.part().upstream());
    document.put("flowGpm", flowGpm / layout.appliances());
    return document;
  }

  private static double elevationFt(List<Hydraulics.Station> profile) {
    return profile.isEmpty() ? 0 : profile.get(profile.size() - 1).elevationFt();
  }

  /** Sections on the way to the worst-off appliance, all of those lines that meet again. */
  static List<SectionCount> sections(Layout layout) {
    return layout.legs().stream()
        .flatMap(
            leg -> {
              int ways = layout.node(leg.ends()).role() == Role.JOIN ? 1 : leg.lines();
              return leg.sectionCounts().stream()
                  .map(section -> new SectionCount(section.lengthFt(), section.count() / ways));
            })
        .toList();
  }
}
