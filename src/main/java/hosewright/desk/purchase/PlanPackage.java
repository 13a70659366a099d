package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.desk.Planning;
import hosewright.desk.WrittenJob;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.thread.LocalThreads;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * Plans the jobs of a purchase, each on its own first; then, where two would take the same pieces
 * of the shelf or the same sections that the buyer has, one after another; then each again at the
 * prices that all of them together reach, as long as that makes the purchase cheaper.
 */
final class PlanPackage {
  /** More orders than these are not tried where things must be shared out. */
  private static final int MOST_ORDERS = 6;

  private final Catalogue catalogue;
  private final NetPrice prices;
  private final LocalDate date;
  private final LocalThreads register;

  PlanPackage(Catalogue catalogue, NetPrice prices, LocalDate date, LocalThreads register) {
    this.catalogue = catalogue;
    this.prices = prices;
    this.date = date;
    this.register = register;
  }

  /** A job and how often it is bought. */
  record Wanted(WrittenJob job, int count) {}

  /**
   * A job as it is planned.
   *
   * @param job with the sections that it may lay of those the buyer has
   */
  record Laid(Wanted wanted, WrittenJob job, LinePlan plan) {
    Laid with(LinePlan other) {
      return new Laid(wanted, job, other);
    }
  }

  /** A job on its own, at the prices it reaches alone. */
  Laid alone(Wanted job, Scarce scarce) {
    return lay(job, Map.of(), scarce, Taken.NOTHING);
  }

  /** Counts the spare gaskets of jobs bought together. */
  SharedSpares spares() {
    return new SharedSpares(catalogue);
  }

  /**
   * The jobs planned together, in order; one of them has no safe plan where there is too little for
   * all of them in whatever order they take it.
   *
   * @param alone a plan of each that can be laid
   * @param beside pieces bought beside the jobs, by item number
   */
  List<Laid> together(List<Laid> alone, Map<String, Integer> beside, Scarce scarce) {
    List<Laid> laid = sharedOut(alone, beside, scarce);
    boolean better = laid.size() > 1 || !beside.isEmpty();
    while (better && laid.stream().allMatch(one -> one.plan().feasible())) {
      better = false;
      for (int i = 0; i < laid.size(); i++) {
        List<Laid> others = new ArrayList<>(laid);
        others.remove(i);
        List<Laid> tried = new ArrayList<>(laid);
        tried.set(
            i,
            lay(
                laid.get(i).wanted(),
                bought(others, beside),
                scarce,
                taken(others, scarce, beside)));
        if (tried.get(i).plan().feasible() && cost(tried, beside).isLessThan(cost(laid, beside))) {
          laid = tried;
          better = true;
        }
      }
    }
    return laid;
  }

  /** A job beside the total, with what the total leaves of shelves and of the buyer's sections. */
  Laid beside(Laid alone, List<Laid> total, Map<String, Integer> parts, Scarce scarce) {
    Taken others = taken(total, scarce, parts);
    return scarce.suffices(others.and(scarce.taken(alone)))
        ? alone
        : lay(alone.wanted(), Map.of(), scarce, others);
  }

  private List<Laid> sharedOut(List<Laid> alone, Map<String, Integer> beside, Scarce scarce) {
    if (scarce.suffices(taken(alone, scarce, beside))) {
      return alone;
    }
    List<Laid> best = List.of();
    for (int first = 0; first < Math.min(alone.size(), MOST_ORDERS); first++) {
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < alone.size(); i++) {
        order.add(i);
      }
      Collections.rotate(order, -first);
      List<Laid> tried = inTurn(order, alone, beside, scarce);
      if (best.isEmpty() || isBetter(tried, best, beside)) {
        best = tried;
      }
    }
    return best;
  }

  private List<Laid> inTurn(
      List<Integer> order, List<Laid> alone, Map<String, Integer> beside, Scarce scarce) {
    List<Laid> laid = new ArrayList<>(alone);
    Taken before = scarce.taken(beside);
    for (int i : order) {
      if (!scarce.suffices(before.and(scarce.taken(laid.get(i))))) {
        laid.set(i, lay(alone.get(i).wanted(), Map.of(), scarce, before));
      }
      before = before.and(scarce.taken(laid.get(i)));
    }
    return laid;
  }

  private boolean isBetter(List<Laid> tried, List<Laid> best, Map<String, Integer> beside) {
    boolean all = tried.stream().allMatch(one -> one.plan().feasible());
    boolean allBefore = best.stream().allMatch(one -> one.plan().feasible());
    return all == allBefore ? cost(tried, beside).isLessThan(cost(best, beside)) : all;
  }

  private Laid lay(Wanted wanted, Map<String, Integer> others, Scarce scarce, Taken taken) {
    WrittenJob job = scarce.left(wanted, taken);
    Planner planner =
        planner(
            scarce.left(taken, wanted.count()), new TogetherPrices(prices, others, wanted.count()));
    return new Laid(wanted, job, Planning.plan(planner, job));
  }

  private static Taken taken(List<Laid> jobs, Scarce scarce, Map<String, Integer> beside) {
    return jobs.stream().map(scarce::taken).reduce(scarce.taken(beside), Taken::and);
  }

  /**
   * No way of laying these jobs costs less in goods, whatever breaks they reach and whoever takes
   * what is scarce. Gaskets count for nothing, since jobs bought together share their spares.
   */
  Money least(List<Wanted> jobs) {
    NetPrice best = TogetherPrices.best(prices);
    Money sum = Money.zero(catalogue.currencyNeeded());
    for (Wanted one : jobs) {
      LinePlan cheapest = Planning.plan(planner(catalogue, best), one.job());
      sum = sum.plus(cheapest.total().multipliedBy(one.count()));
    }
    return sum;
  }

  /** What all goods of the purchase cost at the breaks they reach together. */
  private Money cost(List<Laid> jobs, Map<String, Integer> beside) {
    Money sum = Money.zero(catalogue.currencyNeeded());
    for (Map.Entry<String, Integer> one : bought(jobs, beside).entrySet()) {
      sum =
          sum.plus(
              catalogue
                  .item(one.getKey())
                  .flatMap(item -> prices.unitPrice(item, one.getValue()))
                  .map(each -> each.multipliedBy(one.getValue(), RoundingMode.UNNECESSARY))
                  .orElse(Money.zero(sum.getCurrencyUnit())));
    }
    return sum;
  }

  private static Map<String, Integer> bought(List<Laid> jobs, Map<String, Integer> beside) {
    Map<String, Integer> bought = new HashMap<>(beside);
    for (Laid one : jobs) {
      for (Bill.Item item : one.plan().items()) {
        bought.merge(item.item(), item.quantity() * one.wanted().count(), Integer::sum);
      }
    }
    return bought;
  }

  private Planner planner(Catalogue shop, NetPrice at) {
    return new Planner(shop, at, date, catalogue.currencyNeeded(), register);
  }
}
