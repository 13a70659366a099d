package hosewright.quote.terms;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A buyer and its terms.
 *
 * @param id short id used in commands
 */
public record Customer(
    String id,
    String name,
    String address,
    Pricing pricing,
    Taxation taxation,
    String freightTerms) {

  /** What it has off list. */
  public BigDecimal discount() {
    return pricing.discount();
  }

  /** This buyer with other contract prices, as on another day. */
  public Customer withContractPrices(Map<String, Money> prices) {
    return new Customer(
        id,
        name,
        address,
        new Pricing(pricing.customerClass(), pricing.discount(), Map.copyOf(prices)),
        taxation,
        freightTerms);
  }

  /** A tax exemption needs both. */
  public record Exemption(String certificate, LocalDate dated) {}

  /**
   * What it pays for goods.
   *
   * @param customerClass for example retail, trade, agency
   * @param discount fraction off list after the quantity break, for example 0.10
   * @param contractPrices item number to agreed net price
   */
  public record Pricing(
      String customerClass, BigDecimal discount, Map<String, Money> contractPrices) {}

  /**
   * What tax it pays.
   *
   * @param taxRate fraction
   * @param exemption certificate number and date when exempt from tax
   */
  public record Taxation(String taxName, BigDecimal taxRate, Optional<Exemption> exemption) {}
}
