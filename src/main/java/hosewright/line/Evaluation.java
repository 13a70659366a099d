package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.hydraulics.FrictionLaw;
import hosewright.hydraulics.Physical;
import hosewright.line.LinePlan.Check;
import java.util.List;
import org.joda.money.CurrencyUnit;

/** Prices and checks whole plans of one job. */
final class Evaluation {
  private final Job job;
  private final Billing billing;
  private final CurrencyUnit currency;

  Evaluation(Job job, Catalogue catalogue, NetPrice prices, CurrencyUnit currency) {
    this.job = job;
    this.billing = new Billing(job, catalogue, prices);
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

  /**
   * Whether a frame can pass the pressure checks at all: its shortest lay alone, without the loss
   * of any adapter, already says no where the source is too weak or the hose too weak for it.
   */
  boolean mayPass(Frame frame, double shortestLayFt) {
    if (!job.service().isWater() || job.supply().isEmpty()) {
      return true;
    }
    FrictionLaw law = FrictionChoice.of(job, frame.hose()).law();
    double sourcePsi = job.supply().get().pressurePsi(job.flowGpm());
    double leastLossPsi =
        law.lossPsi(job.flowGpm() / frame.lines(), shortestLayFt)
            + job.run().riseFt() * Physical.PSI_PER_FT;
    return sourcePsi - leastLossPsi >= job.needPsi() - 1e-6;
  }
}
