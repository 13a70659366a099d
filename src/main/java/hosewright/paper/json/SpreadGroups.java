package hosewright.paper.json;

import hosewright.fleet.budget.FleetBudget;
import hosewright.fleet.budget.FleetStatus;
import hosewright.fleet.record.HoseRecord;
import hosewright.line.model.Reasoning;
import hosewright.order.Order;
import hosewright.order.OrderLine;
import hosewright.order.PurchaseOrder;
import hosewright.order.SupplierAnswer;
import hosewright.quote.Basis;
import hosewright.quote.Quote;
import hosewright.quote.QuoteDiff;
import hosewright.quote.QuoteLine;
import hosewright.quote.Totals;
import hosewright.quote.life.QuoteHeading;
import hosewright.quote.terms.Customer;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderResult;
import java.util.Locale;
import java.util.Set;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedMember;
import tools.jackson.databind.introspect.NopAnnotationIntrospector;
import tools.jackson.databind.util.NameTransformer;

/**
 * Spreads the components of a group among those of the record it belongs to: the groups help a
 * reader of the program, and a document has the names it had before there were any.
 */
final class SpreadGroups extends NopAnnotationIntrospector {
  private static final long serialVersionUID = 1L;

  private static final Set<Class<?>> GROUPS =
      Set.of(
          Customer.Pricing.class,
          Customer.Taxation.class,
          FleetBudget.Asked.class,
          FleetBudget.Fleet.class,
          FleetBudget.Purchases.class,
          FleetBudget.Survival.History.class,
          FleetBudget.Survival.Law.class,
          FleetStatus.Ages.class,
          FleetStatus.Fit.class,
          FleetStatus.InUse.class,
          FleetStatus.OnRecord.class,
          FleetStatus.Tests.class,
          HoseRecord.Days.class,
          HoseRecord.Make.class,
          HoseRecord.Place.class,
          Order.Sold.class,
          Order.Timing.class,
          OrderLine.Counts.class,
          OrderLine.Ware.class,
          PurchaseOrder.PurchaseLine.Counts.class,
          PurchaseOrder.PurchaseLine.Ware.class,
          Basis.class,
          Totals.Charging.class,
          Quote.Name.class,
          Quote.Offer.class,
          QuoteLine.Goods.class,
          QuoteLine.Price.class,
          Totals.class,
          Quote.Validity.class,
          QuoteDiff.Sums.class,
          QuoteHeading.Buyer.class,
          QuoteHeading.Days.class,
          Reasoning.Considered.Plans.class,
          Reasoning.Considered.Stock.class,
          Reasoning.Considered.Ways.class,
          Reasoning.Rival.Laid.class,
          SupplierAnswer.Offer.class,
          TenderBasis.Source.class,
          TenderResult.Figures.Laid.class,
          TenderResult.Figures.Price.class,
          TenderResult.Figures.Water.class,
          TenderResult.Place.class);

  /**
   * Groups of which a record has several: {@code before} with quantity is {@code quantityBefore}.
   */
  private static final Set<Class<?>> NAMED = Set.of(QuoteDiff.LineChange.Deal.class);

  @Override
  public NameTransformer findUnwrappingNameTransformer(
      MapperConfig<?> config, AnnotatedMember member) {
    String name = member.getName();
    // A parameter of a constructor has no name here; what is named so is never read.
    if (NAMED.contains(member.getRawType()) && !name.isEmpty()) {
      return NameTransformer.simpleTransformer(
          "", name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1));
    }
    return GROUPS.contains(member.getRawType()) ? NameTransformer.NOP : null;
  }
}
