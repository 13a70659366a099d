package hosewright.desk.purchase;

import hosewright.quote.ExtraLine;
import hosewright.quote.Group;
import hosewright.quote.terms.Customer;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Plans a purchase and keeps nothing. */
public final class PlanPurchase {
  private final Dealer dealer;

  public PlanPurchase(Dealer dealer) {
    this.dealer = dealer;
  }

  /**
   * A purchase as a quote would sell it.
   *
   * @param stuck the job without a safe plan; empty where all can be laid
   * @param free lines in free text, in the groups they belong to
   */
  public record Planned(
      String title,
      Customer customer,
      List<Group> groups,
      List<ExtraLine> free,
      Optional<MakePurchase.Stuck> stuck) {}

  /**
   * The purchase, planned at the prices of a day.
   *
   * @throws hosewright.problem.BadInputException naming everything that cannot be used
   */
  public Planned plan(AskedPurchase asked, LocalDate date) {
    PurchaseGroups groups = PurchaseGroups.of(asked, dealer, date);
    return new Planned(
        groups.title(),
        groups.customer(),
        groups.groups(),
        groups.freeLines(),
        groups.planned().stuck());
  }
}
