package hosewright.line.search;

import hosewright.job.Job;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.GasketCount;
import hosewright.line.check.Checks;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Billing;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.water.PlanHydraulics;
import java.util.List;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices and checks whole plans of one job. */
final class Evaluation {
  private final Job job;
  private final Billing billing;
  private final CurrencyUnit currency;

  Evaluation(Job job, Billing billing, CurrencyUnit currency) {
    this.job = job;
    this.billing = billing;
    this.currency = currency;
  }

  /** A plan priced, before the dearer work of checking it. */
  record Priced(Assembly line, List<GasketCount> gaskets, Billing.Priced bill, Money total) {}

  Priced price(Assembly line) {
    List<GasketCount> gaskets = GasketCount.of(line, job.conditions().spareSections());
    Billing.Priced bill = billing.of(line, gaskets);
    return new Priced(line, gaskets, bill, Basket.sum(bill.purchases(), currency));
  }

  Hydraulics water(Priced plan) {
    return PlanHydraulics.of(job, plan.line());
  }

  Evaluated check(Priced plan) {
    return check(plan, water(plan));
  }

  /** Checked, what its water does being known. */
  Evaluated check(Priced plan, Hydraulics hydraulics) {
    List<Check> checks = Checks.of(job, plan.line(), hydraulics, plan.bill().purchases());
    return new Evaluated(
        plan.line(), plan.gaskets(), plan.bill(), plan.total(), hydraulics, checks);
  }
}
