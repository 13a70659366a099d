package hosewright.desk.purchase;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.thread.LocalThreads;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/**
 * Plans the jobs of a purchase, each on its own first, then each again at the prices that all of
 * them together reach, as long as that makes the purchase cheaper.
 */
final class PlanPackage {
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
  record Wanted(Job job, int count) {}

  /**
   * The plan of each job, in order.
   *
   * @param least no way of laying these jobs costs less in goods, whatever breaks they reach
   */
  record Planned(List<LinePlan> plans, Money least) {}

  /** Every job on its own, at the prices it reaches alone. */
  List<LinePlan> alone(List<Wanted> jobs) {
    return jobs.stream()
        .map(one -> planner(new TogetherPrices(prices, Map.of(), one.count())).plan(one.job()))
        .toList();
  }

  /**
   * The jobs planned together.
   *
   * @param alone a plan of each that can be laid
   * @param beside pieces bought beside the jobs, by item number
   */
  Planned together(List<Wanted> jobs, List<LinePlan> alone, Map<String, Integer> beside) {
    List<LinePlan> plans = new ArrayList<>(alone);
    boolean better = jobs.size() > 1 || !beside.isEmpty();
    while (better) {
      better = false;
      for (int i = 0; i < jobs.size(); i++) {
        List<LinePlan> tried = new ArrayList<>(plans);
        Map<String, Integer> others = new HashMap<>(beside);
        for (int other = 0; other < jobs.size(); other++) {
          if (other != i) {
            bought(plans.get(other), jobs.get(other).count())
                .forEach((item, count) -> others.merge(item, count, Integer::sum));
          }
        }
        tried.set(
            i,
            planner(new TogetherPrices(prices, others, jobs.get(i).count()))
                .plan(jobs.get(i).job()));
        if (tried.get(i).feasible()
            && cost(jobs, tried, beside).isLessThan(cost(jobs, plans, beside))) {
          plans = tried;
          better = true;
        }
      }
    }
    return new Planned(plans, least(jobs));
  }

  private Money least(List<Wanted> jobs) {
    NetPrice best = TogetherPrices.best(prices);
    Money sum = Money.zero(catalogue.currencyNeeded());
    for (Wanted one : jobs) {
      sum = sum.plus(planner(best).plan(one.job()).total().multipliedBy(one.count()));
    }
    return sum;
  }

  /** What all goods of the purchase cost at the breaks they reach together. */
  private Money cost(List<Wanted> jobs, List<LinePlan> plans, Map<String, Integer> beside) {
    Map<String, Integer> all = new HashMap<>(beside);
    for (int i = 0; i < jobs.size(); i++) {
      bought(plans.get(i), jobs.get(i).count())
          .forEach((item, count) -> all.merge(item, count, Integer::sum));
    }
    Money sum = Money.zero(catalogue.currencyNeeded());
    for (Map.Entry<String, Integer> one : all.entrySet()) {
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

  private static Map<String, Integer> bought(LinePlan plan, int count) {
    Map<String, Integer> bought = new HashMap<>();
    for (Bill.Item item : plan.items()) {
      bought.merge(item.item(), item.quantity() * count, Integer::sum);
    }
    return bought;
  }

  private Planner planner(NetPrice at) {
    return new Planner(catalogue, at, date, catalogue.currencyNeeded(), register);
  }
}
