package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.Stocking;
import hosewright.quote.Quote.QuoteLine;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices a plan for a customer: lines, freight, tax and total, frozen from then on. */
public final class QuoteMaker {
  private static final int USUAL_VALIDITY_DAYS = 30;

  private final Catalogue catalogue;
  private final DealerTerms dealer;

  public QuoteMaker(Catalogue catalogue, DealerTerms dealer) {
    this.catalogue = catalogue;
    this.dealer = dealer;
  }

  /**
   * What a quote is made from.
   *
   * @param customer with the contract prices in force on the date
   */
  public record Draft(
      Quote.Name name,
      Customer customer,
      LocalDate date,
      Quote.Basis basis,
      Amendments amendments,
      Instant madeAt) {}

  /** A draft of any revision, its lines priced by the prices given. */
  public Quote make(Draft draft, LinePrices prices) {
    Customer customer = draft.customer();
    LineWriter writer = new LineWriter(draft.basis().groups(), draft.amendments(), prices);
    List<QuoteLine> lines = writer.lines();
    CurrencyUnit currency = draft.basis().plan().total().getCurrencyUnit();
    Money subtotal = sum(lines, currency);
    Freight freight = freight(customer, lines, currency);
    BigDecimal rate =
        customer.taxation().exemption().isPresent()
            ? BigDecimal.ZERO
            : customer.taxation().taxRate();
    boolean freightTaxed = dealer.setting("tax_on_freight").filter("yes"::equals).isPresent();
    Money taxable = freightTaxed ? subtotal.plus(freight.charge()) : subtotal;
    Money tax = taxable.multipliedBy(rate, RoundingMode.HALF_UP);
    return new Quote(
        draft.name(),
        Quote.Status.DRAFT,
        customer,
        new Quote.Validity(
            draft.date(),
            draft.date().plusDays(validityDays(dealer)),
            leadDays(lines),
            draft.madeAt()),
        draft.basis(),
        new Quote.Offer(lines, writer.offered(lines), draft.amendments()),
        new Quote.Totals(
            subtotal,
            freight.charge(),
            tax,
            subtotal.plus(freight.charge()).plus(tax),
            new Quote.Charging(freight.note(), freightTaxed, rate, taxNote(customer))));
  }

  static Money sum(List<QuoteLine> lines, CurrencyUnit currency) {
    return lines.stream()
        .map(line -> line.price().extended())
        .reduce(Money.zero(currency), Money::plus);
  }

  private record Freight(Money charge, String note) {}

  private Freight freight(Customer customer, List<QuoteLine> lines, CurrencyUnit currency) {
    double weightLb = lines.stream().mapToDouble(line -> line.goods().weightLb()).sum();
    String weight = String.format(Locale.ROOT, "%.0f lb", weightLb);
    Money none = Money.zero(currency);
    return switch (customer.freightTerms()) {
      case "prepaid" -> new Freight(none, "prepaid by us, " + weight);
      case "collect" -> new Freight(none, "collect: the carrier bills you, " + weight);
      default ->
          dealer
              .freightFor(weightLb)
              .map(charge -> new Freight(charge, "by weight table, " + weight))
              .orElseGet(
                  () -> new Freight(none, "to be quoted: heavier than the table, " + weight));
    };
  }

  /** How many days a quote holds when nothing else is said. */
  public static long validityDays(DealerTerms dealer) {
    return dealer.setting("validity_days").map(Long::parseLong).orElse((long) USUAL_VALIDITY_DAYS);
  }

  /**
   * Calendar days until everything is done: what is short in stock waits for its supplier, and work
   * begins when the goods are there.
   */
  private int leadDays(List<QuoteLine> lines) {
    return longest(lines, false) + longest(lines, true);
  }

  private int longest(List<QuoteLine> lines, boolean work) {
    int longest = 0;
    for (QuoteLine line : lines) {
      Optional<Item> item = catalogue.item(line.goods().item());
      if (item.isPresent() && item.get().kind().isWork() == work) {
        Stocking stocking = item.get().stocking();
        boolean there = stocking.onHand() >= line.quantity();
        longest = Math.max(longest, there ? 0 : stocking.leadDays());
      }
    }
    return longest;
  }

  private static String taxNote(Customer customer) {
    return customer
        .taxation()
        .exemption()
        .map(exempt -> "exempt: certificate " + exempt.certificate() + " of " + exempt.dated())
        .orElseGet(
            () ->
                customer.taxation().taxName()
                    + " "
                    + customer
                        .taxation()
                        .taxRate()
                        .movePointRight(2)
                        .stripTrailingZeros()
                        .toPlainString()
                    + " %");
  }
}
