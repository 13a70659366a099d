package hosewright.paper.json;

import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A plan as scripts read it, form 2. What stands here is promised: a name is added freely, and
 * dropped only with the next form.
 */
final class PlanDocument {
  /** The number of this form. */
  static final int FORM = 2;

  private PlanDocument() {}

  static Map<String, Object> of(LinePlan plan) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("form", FORM);
    document.put("feasible", plan.feasible());
    document.put("limitedBy", plan.limitedBy());
    document.put("instead", plan.instead());
    document.put("cautions", plan.cautions());
    document.put("summary", plan.summary());
    document.put("allowed", plan.asked().allowed());
    document.put("sources", LayoutDocument.sources(plan.layout(), plan.hydraulics()));
    document.put("nodes", LayoutDocument.nodes(plan.layout()));
    document.put("legs", LayoutDocument.legs(plan.layout()));
    document.put("joints", LayoutDocument.joints(plan.layout()));
    document.put("devices", plan.layout().devices());
    document.put("appliances", LayoutDocument.appliances(plan));
    document.put("sections", LayoutDocument.sections(plan.layout()));
    water(plan, document);
    document.put("checks", checks(plan.checks()));
    bill(plan.bill(), document);
    document.put("alternatives", plan.alternatives());
    document.put("searched", plan.weighed().searched());
    return document;
  }

  private static void water(LinePlan plan, Map<String, Object> document) {
    Hydraulics water = plan.hydraulics();
    document.put("flowGpm", plan.flowGpm());
    document.put("needPsi", plan.needPsi());
    document.put("requiredSourcePsi", water.requiredSourcePsi());
    document.put("sourcePsi", water.sourcePsi());
    document.put("deliveredPsi", water.deliveredPsi());
    document.put("frictionLossPsi", water.frictionLossPsi());
    document.put("frictionBasis", water.frictionBasis());
    document.put("elevationLossPsi", water.elevationLossPsi());
    document.put("adapterLossPsi", water.adapterLossPsi());
    document.put("applianceLossPsi", water.applianceLossPsi());
    water.pumpedPsi().ifPresent(psi -> document.put("pumpedPsi", psi));
    document.put("crossCheck", water.crossCheck());
    document.put("otherCoefficients", water.otherCoefficients());
    document.put("forces", water.forces());
    document.put("filled", water.filled());
    document.put("profile", water.profile());
    document.put("working", water.working());
  }

  static List<Map<String, Object>> checks(List<Check> checks) {
    return checks.stream().map(PlanDocument::check).toList();
  }

  private static Map<String, Object> check(Check check) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("id", check.id().word());
    document.put("name", check.name());
    document.put("leg", check.leg());
    document.put("outcome", check.outcome());
    document.put("value", check.value());
    document.put("limit", check.limit());
    document.put("unit", check.unit());
    document.put("note", check.note());
    document.put("source", check.source());
    return document;
  }

  private static void bill(Bill bill, Map<String, Object> document) {
    document.put("items", bill.items().stream().map(PlanDocument::item).toList());
    document.put("gaskets", bill.gaskets());
    document.put("spareSections", bill.spares());
    document.put("accessories", bill.accessories());
    document.put("date", bill.date());
    document.put("unpriced", bill.unpriced().stream().map(Unpriced::words).toList());
    document.put("total", bill.total());
    document.put("headline", bill.headline());
  }

  private static Map<String, Object> item(Bill.Item item) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("item", item.item());
    document.put("description", item.description());
    document.put("quantity", item.quantity());
    document.put("spare", item.spare());
    document.put("unit", item.unit());
    document.put("unitPrice", bare(item.unitPrice()));
    document.put("extended", bare(item.extended()));
    document.put("weightLb", item.weightLb());
    return document;
  }

  private static Optional<String> bare(Optional<Money> money) {
    return money.map(MoneyText::bare);
  }
}
