package hosewright.paper.json;

import hosewright.line.plan.Flowing;
import java.util.LinkedHashMap;
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
    document.put(
        "appliances",
        LayoutDocument.appliances(
            flowing.layout(),
            flowing.arrives().flowGpm(),
            flowing.arrives().deliveredPsi(),
            flowing.profile()));
    document.put("nodes", LayoutDocument.nodes(flowing.layout()));
    document.put("legs", LayoutDocument.legs(flowing.layout()));
    document.put("checks", PlanDocument.checks(flowing.checks()));
    document.put("profile", flowing.profile());
    document.put("working", flowing.working());
    return document;
  }
}
