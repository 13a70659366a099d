package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.ItemKind;
import hosewright.job.Limit;
import hosewright.line.model.Bill;
import hosewright.line.model.Joint;
import hosewright.line.model.LinePlan;
import hosewright.thread.End;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Counts the spare gaskets of a purchase over all of its jobs: a share of all and one of each kind
 * at least, where each job by itself would bring one of each.
 */
final class SharedSpares {
  private final Catalogue catalogue;

  SharedSpares(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * The plans without the spares that other jobs bring.
   *
   * @param counts how often each is bought
   */
  List<LinePlan> of(List<LinePlan> plans, List<Integer> counts) {
    Map<String, Integer> needed = new HashMap<>();
    Map<String, Integer> spare = new HashMap<>();
    for (int i = 0; i < plans.size(); i++) {
      int count = counts.get(i);
      closed(plans.get(i))
          .forEach(
              (kind, gaskets) -> {
                needed.merge(kind, gaskets * count, Integer::sum);
                spare.merge(kind, spares(gaskets) * count, Integer::sum);
              });
    }
    List<LinePlan> shared = new ArrayList<>(plans);
    for (int i = plans.size() - 1; i >= 0; i--) {
      for (Map.Entry<String, Integer> kind : closed(plans.get(i)).entrySet()) {
        int over = spare.get(kind.getKey()) - spares(needed.get(kind.getKey()));
        int less = Math.min(over / counts.get(i), spares(kind.getValue()));
        if (less > 0) {
          shared.set(i, without(shared.get(i), kind.getKey(), less));
          spare.merge(kind.getKey(), -less * counts.get(i), Integer::sum);
        }
      }
    }
    return shared;
  }

  private static int spares(int gaskets) {
    return Math.max(1, (int) Math.ceil(gaskets * Limit.SPARE_GASKETS_SHARE.value()));
  }

  /**
   * Gaskets that close the joints of a plan, by size and family; none where the joints do not
   * account for every spare of the plan, whose spares then stay as they are.
   */
  private static Map<String, Integer> closed(LinePlan plan) {
    Map<String, Integer> lines = new HashMap<>();
    plan.layout().legs().forEach(leg -> lines.put(leg.name(), leg.lines()));
    Map<String, Integer> closed = new HashMap<>();
    for (Joint joint : plan.joints()) {
      if (joint.fit().seal() == Verdict.Seal.GASKET) {
        closed.merge(
            gasketed(joint).sizeAndFamily(),
            joint.count() * lines.getOrDefault(joint.leg(), 1),
            Integer::sum);
      }
    }
    int spares = closed.values().stream().mapToInt(SharedSpares::spares).sum();
    return spares == plan.bill().gaskets().spare() ? closed : Map.of();
  }

  private static End gasketed(Joint joint) {
    End upstream = joint.upstream().end();
    return upstream.carriesGasket() ? upstream : joint.downstream().end();
  }

  /** The plan with so many fewer spares, where it buys a gasket of that kind by itself. */
  private LinePlan without(LinePlan plan, String kind, int less) {
    List<Bill.Item> items = new ArrayList<>();
    int taken = 0;
    for (Bill.Item item : plan.items()) {
      if (taken == 0 && isGasket(item.item(), kind) && item.quantity() >= less) {
        taken = less;
        if (item.quantity() > less) {
          items.add(item.times(item.quantity() - less));
        }
      } else {
        items.add(item);
      }
    }
    return taken == 0
        ? plan
        : new LinePlan(
            plan.asked(),
            plan.answer(),
            plan.layout(),
            plan.hydraulics(),
            plan.checks(),
            bill(plan.bill(), items, taken),
            plan.weighed());
  }

  private static Bill bill(Bill bill, List<Bill.Item> items, int less) {
    Bill priced = bill.priced(items, bill.date());
    Bill.Gaskets gaskets = bill.gaskets();
    return new Bill(
        priced.items(),
        priced.unpriced(),
        priced.total(),
        priced.date(),
        new Bill.Gaskets(gaskets.fitted(), gaskets.bought(), Math.max(0, gaskets.spare() - less)),
        priced.spares(),
        priced.accessories());
  }

  private boolean isGasket(String number, String kind) {
    return catalogue
        .item(number)
        .filter(item -> item.kind() == ItemKind.GASKET)
        .filter(item -> item.ends().stream().map(End::sizeAndFamily).anyMatch(kind::equals))
        .isPresent();
  }
}
