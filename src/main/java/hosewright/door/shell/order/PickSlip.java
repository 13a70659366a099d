package hosewright.door.shell.order;

import hosewright.desk.order.PickOrder;
import hosewright.line.model.LinePlan;
import hosewright.order.BenchCard;
import hosewright.order.Order;
import hosewright.order.OrderGroup;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.paper.drawing.LaidLine;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.paper.order.Slip;
import hosewright.paper.order.Slip.Part;
import hosewright.quote.Departures;
import hosewright.quote.Group;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** What the store room picks for an order and what the bench does with it. */
final class PickSlip {
  private static final String BOX = "[ ]";
  private static final String TESTING =
      "Test with water and all air let out, the hose tied down and nobody beside it; follow the"
          + " maker's instructions and the rules that hold where it is used.";

  private PickSlip() {}

  static Slip of(PickOrder.Picking picking) {
    Order order = picking.order();
    BenchCard card = picking.card();
    List<Part> parts = new ArrayList<>();
    boolean several = picking.quote().groups().size() > 1;
    for (OrderGroup group : picking.groups()) {
      parts.add(picking(order, group, several));
    }
    if (!card.makes().isEmpty()) {
      parts.add(making(card));
    }
    for (OrderGroup ordered : picking.groups()) {
      Group group = picking.quote().basis().group(ordered.group());
      if (group.laid() || !several) {
        parts.add(
            assembling(
                group.plan(),
                Departures.of(picking.quote(), group),
                several ? " " + group.number() : "",
                several ? List.of("For " + group.heading().words() + ".") : List.of()));
      }
    }
    if (!card.labels().isEmpty()) {
      parts.add(Part.of("Labels", card.labels()));
    }
    return new Slip(
        "To pick and assemble for " + order.number(),
        List.of(
            order.sold().customer() + ": " + order.sold().title() + which(picking),
            "From %s revision %d, raised %s; %s"
                .formatted(
                    order.sold().quoteNumber(),
                    order.sold().quoteRevision(),
                    order.timing().raisedOn(),
                    OrderText.ships(order))),
        parts);
  }

  /** The group picked, where it is not all of the order. */
  private static String which(PickOrder.Picking picking) {
    long sold = picking.quote().groups().stream().filter(group -> !group.optional()).count();
    return picking.groups().size() == 1 && sold > 1 ? ": " + picking.groups().get(0).words() : "";
  }

  private static Part picking(Order order, OrderGroup group, boolean several) {
    List<List<String>> rows = new ArrayList<>();
    for (OrderLine line : group.of(order)) {
      if (line.isGoods() && line.open() > 0) {
        rows.add(
            List.of(
                BOX,
                "" + line.position(),
                line.ware().item(),
                line.ware().description(),
                "" + line.counts().reserved(),
                line.ware().unit(),
                line.shortage() == 0 ? "" : missing(order, line)));
      }
    }
    return new Part(
        several ? "To pick " + group.group() : "To pick",
        List.of("Picked", "Line", "Item", "Description", "Quantity", "Unit", "Remark"),
        Set.of(1, 4),
        List.of(9, 6, 24, 46, 11, 8, 25),
        rows,
        pickRemarks(rows.isEmpty(), several, group));
  }

  private static List<String> pickRemarks(boolean nothing, boolean several, OrderGroup group) {
    List<String> remarks = new ArrayList<>();
    if (several) {
      remarks.add("For " + group.words() + ".");
    }
    if (nothing) {
      remarks.add("Nothing is left to pick.");
    }
    return remarks;
  }

  private static String missing(Order order, OrderLine line) {
    String from =
        order.purchases().stream()
            .filter(
                purchase ->
                    purchase.lines().stream()
                        .anyMatch(
                            bought -> bought.ware().stockCode().equals(line.ware().stockCode())))
            .map(PurchaseOrder::number)
            .findFirst()
            .map(number -> ", " + number)
            .orElse("");
    return line.shortage() + " still to come" + from;
  }

  private static Part making(BenchCard card) {
    List<List<String>> rows = new ArrayList<>();
    for (BenchCard.Make make : card.makes()) {
      rows.add(
          List.of(
              BOX,
              "" + make.count(),
              make.hose(),
              make.cutFt() + " ft",
              plain(make.coupledFt()) + " ft",
              end(make.inlet()),
              end(make.outlet()),
              make.gasket(),
              test(make.testPsi())));
    }
    List<String> remarks = new ArrayList<>(card.parts());
    remarks.add(TESTING);
    return new Part(
        "To make up",
        List.of(
            "Done", "Count", "Hose", "Cut each", "Coupled", "Inlet", "Outlet", "Gasket", "Test to"),
        Set.of(1),
        List.of(8, 8, 18, 11, 11, 19, 15, 24, 15),
        rows,
        remarks);
  }

  private static String test(OptionalDouble psi) {
    return psi.isPresent() ? plain(psi.getAsDouble()) + " psi" : "as marked: not in the catalogue";
  }

  private static Part assembling(
      LinePlan plan, List<String> departures, String which, List<String> forWhat) {
    List<List<String>> rows = new ArrayList<>();
    int number = 1;
    for (Step step : LaidLine.of(plan)) {
      hosewright.line.model.Part part = step.part();
      step.leg().ifPresent(leg -> rows.add(List.of("", "", "", "leg " + leg.name(), "", "", "")));
      rows.add(
          List.of(
              BOX,
              "" + number++,
              step.again()
                  ? "as before"
                  : part.item().orElse(part.isBuyers() ? "customer's" : "bought in"),
              part.description(),
              "" + part.count(),
              end(step.upstream()),
              end(step.downstream())));
    }
    List<String> remarks = new ArrayList<>(forWhat);
    remarks.add(
        "Gaskets: %d come fitted, %d to put in, %d spare."
            .formatted(
                plan.bill().gaskets().fitted(),
                plan.bill().gaskets().bought(),
                plan.bill().gaskets().spare()));
    remarks.addAll(plan.layout().remarks());
    remarks.addAll(departures);
    return new Part(
        "To assemble" + which,
        List.of("Done", "Step", "Item", "Part", "Count", "Faces source", "Faces appliance"),
        Set.of(1, 4),
        List.of(8, 7, 24, 44, 9, 21, 19),
        rows,
        remarks);
  }

  private static String end(Optional<End> end) {
    return end.map(End::toString).orElse("");
  }

  private static String plain(double number) {
    return String.format(Locale.ROOT, "%.2f", number).replaceAll("\\.?0+$", "");
  }
}
