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
 * @param customerClass for example retail, trade, agency
 * @param discount fraction off list after the quantity break, for example 0.10
 * @param contractPrices item number to agreed net price
 * @param taxRate fraction
 * @param exemption certificate number and date when exempt from tax
 */
public record Customer(
    String id,
    String name,
    String address,
    String customerClass,
    BigDecimal discount,
    Map<String, Money> contractPrices,
    String taxName,
    BigDecimal taxRate,
    Optional<Exemption> exemption,
    String freightTerms) {

  /** This buyer with other contract prices, as on another day. */
  public Customer withContractPrices(Map<String, Money> prices) {
    return new Customer(
        id,
        name,
        address,
        customerClass,
        discount,
        Map.copyOf(prices),
        taxName,
        taxRate,
        exemption,
        freightTerms);
  }

  /** A tax exemption needs both. */
  public record Exemption(String certificate, LocalDate dated) {}
}
