package hosewright.quote;

import hosewright.line.LinePlan;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A plan priced for a customer on a date. Its prices are frozen: nothing here is looked up again.
 *
 * @param number gapless quote number, for example Q-000001
 * @param revision 1 for the first
 * @param status draft, issued, accepted, declined or expired
 * @param jobYaml the job file the quote was made from, as text
 * @param plan the plan as it stood
 * @param subtotal sum of the lines
 * @param freight freight charged
 * @param freightTaxed whether tax is due on freight
 * @param taxRate fraction, for example 0.0625; zero for an exempt customer
 * @param taxNote why no tax is charged, or the rate's name
 * @param tax tax on taxable lines (and freight where taxed), rounded half-up once
 */
public record Quote(
    String number,
    int revision,
    Status status,
    Customer customer,
    LocalDate date,
    LocalDate validUntil,
    int leadDays,
    String title,
    String jobYaml,
    LinePlan plan,
    List<QuoteLine> lines,
    Money subtotal,
    Money freight,
    String freightNote,
    boolean freightTaxed,
    BigDecimal taxRate,
    String taxNote,
    Money tax,
    Money total,
    Instant madeAt) {

  /** The same quote at another stage of its life. */
  public Quote withStatus(Status next) {
    return new Quote(
        number,
        revision,
        next,
        customer,
        date,
        validUntil,
        leadDays,
        title,
        jobYaml,
        plan,
        lines,
        subtotal,
        freight,
        freightNote,
        freightTaxed,
        taxRate,
        taxNote,
        tax,
        total,
        madeAt);
  }

  /** Where a quote stands. */
  public enum Status {
    DRAFT,
    ISSUED,
    ACCEPTED,
    DECLINED,
    EXPIRED
  }

  /**
   * One line of a quote.
   *
   * @param position 1 for the first
   * @param unitCode UN/ECE Recommendation 20 code
   * @param breaks the price breaks in force, frozen: quantity from, unit price after terms
   */
  public record QuoteLine(
      int position,
      String item,
      String description,
      int quantity,
      String unit,
      String unitCode,
      Money listPrice,
      Money unitPrice,
      Money extended,
      boolean taxable,
      double weightLb,
      List<Break> breaks,
      Optional<String> note) {}

  /** From this quantity up, this net unit price. */
  public record Break(int minimumQuantity, Money unitPrice) {}
}
