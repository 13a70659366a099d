package hosewright.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Build;
import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Form;
import hosewright.catalogue.HoseFacts;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Rating;
import hosewright.catalogue.Selling;
import hosewright.catalogue.Stocking;
import hosewright.catalogue.UnitOfSale;
import hosewright.catalogue.WaterFacts;
import hosewright.line.goods.GoodsPlan;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import hosewright.quote.terms.DealerTerms;
import hosewright.quote.terms.FreightBand;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;

/** Money by hand-worked examples; the sums stand beside each. */
final class QuoteMakerTest {
  private static final LocalDate DATE = LocalDate.of(2026, 11, 2);
  private static final Catalogue CATALOGUE =
      new Catalogue(
          List.of(item("HOSE", 50, 20.0, 3), item("ADAPTER", 1, 1.5, 21)),
          List.of(
              price("HOSE", 1, "100.05"),
              price("HOSE", 10, "95.55"),
              price("ADAPTER", 1, "33.33"),
              new PriceRow(
                  "ADAPTER",
                  LocalDate.of(2025, 1, 1),
                  Optional.of(LocalDate.of(2025, 12, 31)),
                  1,
                  usd("30.00"))),
          List.of(),
          List.of());
  private static final DealerTerms DEALER =
      new DealerTerms(
          List.of(new FreightBand(100, usd("20.00")), new FreightBand(500, usd("60.00"))),
          Map.of("tax_on_freight", "yes", "validity_days", "45"));

  private static Item item(String number, int onHand, double weightLb, int leadDays) {
    return new Item(
        number,
        "an invented " + number,
        Form.of(ItemKind.SERVICE, List.of()),
        Optional.<HoseFacts>empty(),
        new Build("", weightLb, Set.of("water"), Rating.NONE, false, "", true),
        WaterFacts.NONE,
        new Selling(UnitOfSale.EACH, false, new Stocking("SUP", 1, leadDays, onHand)));
  }

  private static PriceRow price(String item, int from, String amount) {
    return new PriceRow(item, LocalDate.of(2026, 1, 1), Optional.empty(), from, usd(amount));
  }

  private static Money usd(String amount) {
    return Money.of(CurrencyUnit.USD, new BigDecimal(amount));
  }

  private static Customer customer(
      String discount, Map<String, Money> contract, Optional<Customer.Exemption> exemption) {
    return new Customer(
        "MILL",
        "An invented mill",
        "Port Harlow",
        new Customer.Pricing("trade", new BigDecimal(discount), contract),
        new Customer.Taxation("Harlow tax", new BigDecimal("0.0625"), exemption),
        "weight table");
  }

  private static Quote quote(Customer customer, int hoses, int adapters) {
    CustomerTerms terms = new CustomerTerms(CATALOGUE, customer, DATE);
    List<Bill.Item> items = new ArrayList<>();
    for (Map.Entry<String, Integer> bought :
        Map.of("HOSE", hoses, "ADAPTER", adapters).entrySet()) {
      Item item = CATALOGUE.item(bought.getKey()).orElseThrow();
      int quantity = bought.getValue();
      Money unit = terms.unitPrice(item, quantity).orElseThrow();
      items.add(
          new Bill.Item(
              item.number(),
              item.description(),
              quantity,
              0,
              "each",
              Optional.of(unit),
              item.weightLb() * quantity));
    }
    Instant madeAt = Instant.parse("2026-11-02T10:00:00Z");
    return new QuoteMaker(CATALOGUE, DEALER)
        .make(
            new QuoteMaker.Draft(
                new Quote.Name("Q-000001", 1),
                customer,
                DATE,
                new Basis("a job", "length: 1 ft\n", plan(items)),
                Amendments.NONE,
                madeAt),
            new PriceList(CATALOGUE, customer, DATE));
  }

  private static LinePlan plan(List<Bill.Item> items) {
    return GoodsPlan.of("", items, List.of(), List.of(), DATE, CurrencyUnit.USD);
  }

  private static QuoteLine line(Quote quote, String item) {
    return quote.lines().stream()
        .filter(l -> l.goods().item().equals(item))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void break_then_discount_then_half_up_to_the_cent_for_each_unit() {
    Quote quote = quote(customer("0.10", Map.of(), Optional.empty()), 10, 1);
    // 95.55 x 0.90 = 85.995, half up 86.00; ten of them 860.00. 33.33 x 0.90 = 29.997 -> 30.00.
    assertThat(line(quote, "HOSE").price().unitPrice()).isEqualTo(usd("86.00"));
    assertThat(line(quote, "HOSE").price().extended()).isEqualTo(usd("860.00"));
    assertThat(line(quote, "ADAPTER").price().unitPrice()).isEqualTo(usd("30.00"));
    assertThat(quote.totals().subtotal()).isEqualTo(usd("890.00"));
  }

  @Test
  void a_contract_price_holds_only_where_it_is_the_lower() {
    Quote low = quote(customer("0.10", Map.of("HOSE", usd("80.00")), Optional.empty()), 10, 1);
    Quote high = quote(customer("0.10", Map.of("HOSE", usd("99.00")), Optional.empty()), 10, 1);
    assertThat(line(low, "HOSE").price().unitPrice()).isEqualTo(usd("80.00"));
    assertThat(line(high, "HOSE").price().unitPrice()).isEqualTo(usd("86.00"));
  }

  @Test
  void tax_is_rounded_once_on_goods_and_taxed_freight() {
    Quote quote = quote(customer("0", Map.of(), Optional.empty()), 3, 1);
    // Goods 3 x 100.05 + 33.33 = 333.48; 61.5 lb ships for 20.00; 353.48 x 0.0625 = 22.0925.
    assertThat(quote.totals().subtotal()).isEqualTo(usd("333.48"));
    assertThat(quote.totals().freight()).isEqualTo(usd("20.00"));
    assertThat(quote.totals().tax()).isEqualTo(usd("22.09"));
    assertThat(quote.total()).isEqualTo(usd("375.57"));
  }

  @Test
  void freight_goes_up_a_band_with_the_weight_and_beyond_the_table_is_to_be_quoted() {
    // 5 x 20 + 1.5 = 101.5 lb is over the 100 lb band; 26 x 20 + 1.5 is over the table.
    assertThat(quote(customer("0", Map.of(), Optional.empty()), 5, 1).totals().freight())
        .isEqualTo(usd("60.00"));
    Quote heavy = quote(customer("0", Map.of(), Optional.empty()), 26, 1);
    assertThat(heavy.totals().freight()).isEqualTo(usd("0.00"));
    assertThat(heavy.totals().charging().freightNote()).startsWith("to be quoted");
  }

  @Test
  void an_exempt_buyer_pays_no_tax_and_the_certificate_is_named() {
    Customer.Exemption exemption = new Customer.Exemption("PH-EX-1", LocalDate.of(2026, 1, 5));
    Quote quote = quote(customer("0", Map.of(), Optional.of(exemption)), 1, 1);
    assertThat(quote.totals().tax()).isEqualTo(usd("0.00"));
    assertThat(quote.totals().charging().taxNote()).contains("PH-EX-1").contains("2026-01-05");
  }

  @Test
  void a_quote_is_valid_as_long_as_the_dealer_says_and_ready_when_the_last_part_is() {
    Quote quote = quote(customer("0", Map.of(), Optional.empty()), 3, 2);
    assertThat(quote.validity().validUntil()).isEqualTo(DATE.plusDays(45));
    // Hose is on the shelf; only one adapter is, and its supplier takes 21 days.
    assertThat(quote.validity().leadDays()).isEqualTo(21);
  }

  @Test
  void the_price_breaks_in_force_are_frozen_into_each_line() {
    Quote quote = quote(customer("0.10", Map.of(), Optional.empty()), 3, 1);
    // 100.05 x 0.9 = 90.045, half up 90.05.
    assertThat(line(quote, "HOSE").price().breaks())
        .containsExactly(
            new QuoteLine.Break(1, usd("90.05"), Optional.of(usd("100.05"))),
            new QuoteLine.Break(10, usd("86.00"), Optional.of(usd("95.55"))));
    assertThat(line(quote, "ADAPTER").price().breaks()).hasSize(1);
  }
}
