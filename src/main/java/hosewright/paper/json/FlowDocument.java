package hosewright.paper.json;

import hosewright.line.model.Role;
import hosewright.line.plan.Flowing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a source brings through a line, as scripts read it. */
final class FlowDocument {
  private FlowDocument() {}

  static Map<String, Object> of(Flowing flowing) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("form", PlanDocument.FORM);
    document.put("flowGpm", flowing.arrives().flowGpm());
    document.put("deliveredPsi", flowing.arrives().deliveredPsi());
    document.put("sourcePsi", flowing.arrives().sourcePsi());
    document.put("limitedBy", flowing.limitedBy());
    document.put("safe", flowing.safe());
    document.put("appliances", appliances(flowing));
    document.put("nodes", LayoutDocument.nodes(flowing.layout()));
    document.put("legs", LayoutDocument.legs(flowing.layout()));
    document.put("checks", PlanDocument.checks(flowing.checks()));
    document.put("profile", flowing.profile());
    document.put("working", flowing.working());
    return document;
  }

  private static List<Map<String, Object>> appliances(Flowing flowing) {
    List<Map<String, Object>> appliances = new ArrayList<>();
    flowing.layout().nodes().stream()
        .filter(node -> node.role() == Role.APPLIANCE)
        .forEach(
            node -> {
              for (int one = 0; one < node.count(); one++) {
                Map<String, Object> appliance =
                    LayoutDocument.appliance(flowing.layout(), node, flowing.arrives().flowGpm());
                appliance.put("deliveredPsi", flowing.arrives().deliveredPsi());
                appliance.put("elevationFt", LayoutDocument.elevationFt(flowing.profile()));
                appliances.add(appliance);
              }
            });
    return appliances;
  }
}
