package hosewright.quote;

import java.math.BigDecimal;
import java.util.Optional;
import org.joda.money.Money;

/**
 * Sums that add up to what is to be paid.
 *
 * @param subtotal sum of the lines
 * @param freight freight charged
 * @param tax tax on taxable lines (and freight where taxed), rounded half-up once
 */
public record Totals(Money subtotal, Money freight, Money tax, Money total, Charging charging) {

  /** The freight charged; empty while it is still to be quoted. */
  public Optional<Money> knownFreight() {
    return charging.carriage() == Carriage.TO_BE_QUOTED ? Optional.empty() : Optional.of(freight);
  }

  /**
   * How freight and tax are charged.
   *
   * @param freightTaxed whether tax is due on freight
   * @param taxRate fraction, for example 0.0625; zero for an exempt customer
   * @param taxNote why no tax is charged, or the rate's name
   * @param carriage where the freight charged comes from
   */
  public record Charging(
      String freightNote,
      boolean freightTaxed,
      BigDecimal taxRate,
      String taxNote,
      Carriage carriage) {

    /** Documents kept before freight could be open or set by hand do not say. */
    public Charging {
      carriage = carriage == null ? Carriage.BY_TERMS : carriage;
    }

    /** Freight as the customer's terms have it. */
    public Charging(String freightNote, boolean freightTaxed, BigDecimal taxRate, String taxNote) {
      this(freightNote, freightTaxed, taxRate, taxNote, Carriage.BY_TERMS);
    }
  }

  /** Where the freight charged comes from. */
  public enum Carriage {
    /** The customer's terms and the dealer's table. */
    BY_TERMS,
    BY_HAND,
    /** Nobody knows it yet: it is in no total. */
    TO_BE_QUOTED
  }
}
