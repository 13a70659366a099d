package hosewright.order;

import hosewright.line.model.Bill;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.quote.Departures;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sections of hose that a quote really sells: what its plan lays and keeps to spare, without
 * what the buyer has, in the numbers that its lines have now.
 */
final class SuppliedHose {

  /**
   * Like sections.
   *
   * @param item item number of the coupled hose, or of the hose they are cut from
   * @param sizeIn nominal hose size, in
   */
  record Kind(String item, double sizeIn, Part.Ends ends, Part.Section section) {
    boolean isMadeUp() {
      return section.cutFt().isPresent();
    }

    private int cutFt() {
      return section.cutFt().orElseThrow();
    }
  }

  /** So many of them. */
  record Sections(Kind kind, int count) {}

  private final Quote quote;
  private final Group group;
  private final Map<Kind, Integer> planned;

  private SuppliedHose(Quote quote, Group group) {
    this.quote = quote;
    this.group = group;
    this.planned = planned(group.plan());
  }

  /** Every kind of section of a group in the order laid, spares of other kinds last. */
  static List<Sections> of(Quote quote, Group group) {
    SuppliedHose hose = new SuppliedHose(quote, group);
    List<Sections> supplied = new ArrayList<>();
    hose.planned.keySet().stream()
        .map(kind -> new Sections(kind, hose.count(kind)))
        .filter(sections -> sections.count() > 0)
        .forEach(supplied::add);
    return supplied;
  }

  private static Map<Kind, Integer> planned(LinePlan plan) {
    Map<Kind, Integer> planned = new LinkedHashMap<>();
    Layout layout = plan.layout();
    for (Leg leg : layout.hoseLegs()) {
      double sizeIn = leg.hose().orElseThrow().sizeIn();
      for (Part part : leg.sections()) {
        if (!part.isBuyers()) {
          Kind kind =
              new Kind(
                  part.item().orElseThrow(), sizeIn, part.ends(), part.section().orElseThrow());
          planned.merge(kind, part.count() * leg.lines(), Integer::sum);
        }
      }
    }
    for (Bill.Spare spare : plan.bill().spares()) {
      Kind kind = new Kind(spare.item(), spare.sizeIn(), spare.ends(), spare.section());
      planned.merge(kind, spare.count(), Integer::sum);
    }
    return planned;
  }

  private int count(Kind kind) {
    List<Kind> ofItem =
        planned.keySet().stream().filter(other -> other.item().equals(kind.item())).toList();
    int sold = Departures.sold(quote, group, kind.item());
    int bought = bought(kind.item());
    if (sold == bought && kind.isMadeUp() || ofItem.size() > 1) {
      return sold == 0 ? 0 : planned.get(kind) * group.count();
    }
    return kind.isMadeUp() ? sold / kind.cutFt() : sold;
  }

  /** How many of an item the plan buys, as often as the group is sold. */
  private int bought(String item) {
    return group.count()
        * group.plan().items().stream()
            .filter(one -> one.item().equals(item))
            .mapToInt(Bill.Item::quantity)
            .sum();
  }
}
