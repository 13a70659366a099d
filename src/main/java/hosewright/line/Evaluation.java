package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.line.LinePlan.Check;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Prices and checks whole plans of one job. */
final class Evaluation {
  private final Job job;
  private final Billing billing;
  private final CurrencyUnit currency;

  Evaluation(
      Job job, Catalogue catalogue, NetPrice prices, PriceFloor floor, CurrencyUnit currency) {
    this.job = job;
    this.billing = new Billing(job, catalogue, prices, floor);
    this.currency = currency;
  }

  Evaluated of(Assembly line) {
    List<GasketCount> gaskets = GasketCount.of(line);
    Billing.Bill bill = billing.of(line, gaskets);
    LineHydraulicsResult hydraulics = PlanHydraulics.of(job, line);
    List<Check> checks = Checks.of(job, line, hydraulics, bill.purchases());
    return new Evaluated(
        line,
        gaskets,
        bill.purchases(),
        bill.unpriced(),
        Basket.sum(bill.purchases(), currency),
        hydraulics,
        checks);
  }
}
