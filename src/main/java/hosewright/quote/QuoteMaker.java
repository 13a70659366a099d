package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.Stocking;
import hosewright.problem.BadInputException;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.DealerTerms;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Prices a plan for a customer: lines, freight, tax and total, frozen from then on. */
public final class QuoteMaker {
  private static final int USUAL_VALIDITY_DAYS = 30;
  private static final BigDecimal MOST = BigDecimal.valueOf(1_000_000_000_000L);

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
      Basis basis,
      Amendments amendments,
      Instant madeAt) {}

  /** A draft of any revision, its lines priced by the prices given. */
  public Quote make(Draft draft, LinePrices prices) {
    Customer customer = draft.customer();
    LineWriter writer = new LineWriter(draft.basis().groups(), draft.amendments(), prices);
    Taxing taxing = Taxing.of(draft, dealer);
    List<QuoteLine> lines = taxing.marked(writer.lines(), catalogue);
    CurrencyUnit currency = draft.basis().plan().total().getCurrencyUnit();
    Money subtotal = sum(lines, currency);
    Freight freight = freight(draft, lines, currency);
    Money tax = taxing.on(lines, freight.charge());
    payable(subtotal.plus(freight.charge()).plus(tax));
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
        new Quote.Offer(lines, offered(writer, lines, taxing), draft.amendments()),
        new Totals(
            subtotal,
            freight.charge(),
            tax,
            subtotal.plus(freight.charge()).plus(tax),
            new Totals.Charging(
                freight.note(),
                taxing.charge().onFreight(),
                taxing.charge().rate(),
                taxing.note(),
                freight.carriage())));
  }

  private List<OfferedLine> offered(LineWriter writer, List<QuoteLine> lines, Taxing taxing) {
    return writer.offered(lines).stream()
        .map(
            offer ->
                taxing.taxes(offer.line(), catalogue)
                    ? offer
                    : new OfferedLine(offer.standing(), offer.insteadOf(), offer.line().untaxed()))
        .toList();
  }

  static Money sum(List<QuoteLine> lines, CurrencyUnit currency) {
    return lines.stream()
        .map(line -> line.price().extended())
        .reduce(Money.zero(currency), Money::plus);
  }

  /** More than this no column of the books holds, and nobody pays for hose. */
  private static void payable(Money total) {
    if (total.getAmount().compareTo(MOST) >= 0) {
      throw new BadInputException(
          "total",
          total.getAmount().toPlainString(),
          "less than " + MOST.toPlainString() + ": fewer pieces, or a lower price");
    }
  }

  private record Freight(Money charge, String note, Totals.Carriage carriage) {
    Freight(Money charge, String note) {
      this(charge, note, Totals.Carriage.BY_TERMS);
    }
  }

  private Freight freight(Draft draft, List<QuoteLine> lines, CurrencyUnit currency) {
    BigDecimal weightLb = weightLb(lines);
    String weight = weightLb.toPlainString() + " lb";
    Money none = Money.zero(currency);
    if (draft.amendments().shipping().freight().isPresent()) {
      Money agreed = draft.amendments().shipping().freight().get();
      return new Freight(agreed, "as agreed, " + weight, Totals.Carriage.BY_HAND);
    }
    if (weightLb.signum() == 0) {
      return new Freight(none, "nothing to carry");
    }
    return switch (draft.customer().freightTerms()) {
      case "prepaid" -> new Freight(none, "prepaid by us, " + weight);
      case "collect" -> new Freight(none, "collect: the carrier bills you, " + weight);
      default ->
          dealer
              .freightFor(weightLb.doubleValue())
              .map(charge -> new Freight(charge, "by weight table, " + weight))
              .orElseGet(
                  () ->
                      new Freight(
                          none,
                          "to be quoted: heavier than the table, " + weight,
                          Totals.Carriage.TO_BE_QUOTED));
    };
  }

  /** What it weighs to a hundredth of a pound: charged for as it is printed. */
  private static BigDecimal weightLb(List<QuoteLine> lines) {
    BigDecimal sum =
        BigDecimal.valueOf(lines.stream().mapToDouble(line -> line.goods().weightLb()).sum())
            .setScale(2, RoundingMode.HALF_UP);
    return sum.signum() == 0
        ? BigDecimal.ZERO
        : new BigDecimal(sum.stripTrailingZeros().toPlainString());
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
    // What lies on a shelf is there once, whichever groups it is for.
    Map<String, Integer> inAll =
        lines.stream()
            .collect(
                Collectors.toMap(
                    line -> line.goods().item(), QuoteLine::quantity, Integer::sum, TreeMap::new));
    int longest = 0;
    for (Map.Entry<String, Integer> one : inAll.entrySet()) {
      Optional<Item> item = catalogue.item(one.getKey());
      if (item.isPresent() && item.get().kind().isWork() == work) {
        Stocking stocking = item.get().stocking();
        boolean there = stocking.onHand() >= one.getValue();
        longest = Math.max(longest, there ? 0 : stocking.leadDays());
      }
    }
    return longest;
  }
}
