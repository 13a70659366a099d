package hosewright.quote;

import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import hosewright.quote.terms.Customer;
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
 * @param offered lines the buyer may have besides or instead, not in the total
 * @param amendments what was changed by hand
 * @param tender the row of a tender it was made for; empty for most
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
    Instant madeAt,
    List<OfferedLine> offered,
    Amendments amendments,
    Optional<TenderRow> tender) {

  /** Documents kept before there were offers and amendments have neither. */
  public Quote {
    offered = offered == null ? List.of() : List.copyOf(offered);
    amendments = amendments == null ? Amendments.NONE : amendments;
    tender = tender == null ? Optional.empty() : tender;
  }

  /** This quote at another stage of its life. */
  public Quote withStatus(Status next) {
    return with(next, validUntil, leadDays);
  }

  /** This quote with what is promised on issuing it. */
  public Quote promising(LocalDate lastDay, int readyInDays) {
    return with(status, lastDay, readyInDays);
  }

  /** Parts the plan names that no line of the quote prices. */
  public List<Unpriced> stillToSource() {
    List<String> priced =
        amendments.extraLines().stream()
            .filter(line -> line.standing() == ExtraLine.Inclusion.INCLUDED)
            .map(ExtraLine::description)
            .toList();
    return plan.bill().unpriced().stream()
        .filter(lacking -> !priced.contains(lacking.what()))
        .toList();
  }

  /**
   * A row of a file that a run of a tender priced.
   *
   * @param sha256 first digits of the digest of the file, in hexadecimal
   * @param begun when the run began
   * @param line the line of the file the row begins on
   */
  public record TenderRow(String sha256, Instant begun, long line) {}

  /** This quote as one made for a row of a tender. */
  public Quote madeFor(TenderRow row) {
    return with(status, validUntil, leadDays, Optional.of(row));
  }

  private Quote with(Status next, LocalDate lastDay, int readyInDays) {
    return with(next, lastDay, readyInDays, tender);
  }

  private Quote with(Status next, LocalDate lastDay, int readyInDays, Optional<TenderRow> madeFor) {
    return new Quote(
        number,
        revision,
        next,
        customer,
        date,
        lastDay,
        readyInDays,
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
        madeAt,
        offered,
        amendments,
        madeFor);
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
   * @param item the item number; empty for free text
   * @param unitCode UN/ECE Recommendation 20 code
   * @param unitPrice after terms and line discount
   * @param breaks the price breaks in force, frozen: quantity from, unit price after terms and
   *     before a line discount
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
      Optional<String> note,
      Optional<Discount> discount) {

    /** What names this line among others: the item number, or the text of free text. */
    public String key() {
      return item.isEmpty() ? description : item;
    }

    /** The price breaks as the buyer sees them, after the line discount. */
    public List<Break> netBreaks() {
      return discount
          .map(
              less ->
                  breaks.stream()
                      .map(step -> new Break(step.minimumQuantity(), less.off(step.unitPrice())))
                      .toList())
          .orElse(breaks);
    }
  }

  /**
   * A line beside the total.
   *
   * @param insteadOf position of the line an alternate would replace
   */
  public record OfferedLine(
      ExtraLine.Inclusion standing, Optional<Integer> insteadOf, QuoteLine line) {

    /** Whether and for what the buyer may have it: {@code instead of line 3}. */
    public String words() {
      return insteadOf.map(position -> "instead of line " + position).orElse("optional");
    }
  }

  /** From this quantity up, this net unit price. */
  public record Break(int minimumQuantity, Money unitPrice) {}
}
