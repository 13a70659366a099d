package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.PriceRow;
import hosewright.line.LinePlan;
import hosewright.line.LinePlan.PlanItem;
import hosewright.quote.Quote.Break;
import hosewright.quote.Quote.QuoteLine;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
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
   * A first revision, as a draft.
   *
   * @param plan priced with the customer's {@link Terms} on the date
   * @param jobText the job file it was made from
   * @param madeAt stamped into the quote
   */
  public Quote make(
      String number,
      Customer customer,
      LocalDate date,
      String title,
      String jobText,
      LinePlan plan,
      Instant madeAt) {
    Terms terms = new Terms(catalogue, customer, date);
    List<QuoteLine> lines = lines(plan, terms, date);
    CurrencyUnit currency = plan.total().getCurrencyUnit();
    Money subtotal = sum(lines, currency);
    Freight freight = freight(customer, lines, currency);
    BigDecimal rate = customer.exemption().isPresent() ? BigDecimal.ZERO : customer.taxRate();
    boolean freightTaxed = dealer.setting("tax_on_freight").filter("yes"::equals).isPresent();
    Money taxable = freightTaxed ? subtotal.plus(freight.charge()) : subtotal;
    Money tax = taxable.multipliedBy(rate, RoundingMode.HALF_UP);
    return new Quote(
        number,
        1,
        Quote.Status.DRAFT,
        customer,
        date,
        date.plusDays(validityDays()),
        leadDays(lines),
        title,
        jobText,
        plan,
        lines,
        subtotal,
        freight.charge(),
        freight.note(),
        freightTaxed,
        rate,
        taxNote(customer),
        tax,
        subtotal.plus(freight.charge()).plus(tax),
        madeAt);
  }

  private List<QuoteLine> lines(LinePlan plan, Terms terms, LocalDate date) {
    List<QuoteLine> lines = new ArrayList<>();
    for (PlanItem bought : plan.items()) {
      if (bought.unitPrice().isPresent()) {
        Item item = catalogue.item(bought.item()).orElseThrow();
        lines.add(line(lines.size() + 1, bought, item, terms, date));
      }
    }
    return lines;
  }

  private QuoteLine line(int position, PlanItem bought, Item item, Terms terms, LocalDate date) {
    Money unitPrice = bought.unitPrice().orElseThrow();
    return new QuoteLine(
        position,
        item.number(),
        item.description(),
        bought.quantity(),
        item.unit().word(),
        item.unit().code(),
        catalogue.listPrice(item.number(), bought.quantity(), date).orElse(unitPrice),
        unitPrice,
        bought.extended().orElseThrow(),
        true,
        bought.weightLb(),
        breaks(item, terms, date),
        spareNote(bought));
  }

  private List<Break> breaks(Item item, Terms terms, LocalDate date) {
    return catalogue.breaks(item.number(), date).stream()
        .map(PriceRow::minimumQuantity)
        .distinct()
        .map(from -> new Break(from, terms.unitPrice(item, from).orElseThrow()))
        .toList();
  }

  private static Optional<String> spareNote(PlanItem bought) {
    return bought.spare() == 0
        ? Optional.empty()
        : Optional.of(bought.spare() + " spare: the price break makes more cost less");
  }

  static Money sum(List<QuoteLine> lines, CurrencyUnit currency) {
    return lines.stream().map(QuoteLine::extended).reduce(Money.zero(currency), Money::plus);
  }

  private record Freight(Money charge, String note) {}

  private Freight freight(Customer customer, List<QuoteLine> lines, CurrencyUnit currency) {
    double weightLb = lines.stream().mapToDouble(QuoteLine::weightLb).sum();
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

  private long validityDays() {
    return dealer.setting("validity_days").map(Long::parseLong).orElse((long) USUAL_VALIDITY_DAYS);
  }

  /** Calendar days until everything is there: what is short in stock waits for its supplier. */
  private int leadDays(List<QuoteLine> lines) {
    return lines.stream()
        .mapToInt(
            line -> {
              Item item = catalogue.item(line.item()).orElseThrow();
              return item.stocking().onHand() >= line.quantity() ? 0 : item.stocking().leadDays();
            })
        .max()
        .orElse(0);
  }

  private static String taxNote(Customer customer) {
    return customer
        .exemption()
        .map(exempt -> "exempt: certificate " + exempt.certificate() + " of " + exempt.dated())
        .orElseGet(
            () ->
                customer.taxName()
                    + " "
                    + customer.taxRate().movePointRight(2).stripTrailingZeros().toPlainString()
                    + " %");
  }
}
