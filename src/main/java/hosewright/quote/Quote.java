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
 * @param status draft, issued, accepted, declined or expired
 */
public record Quote(
    Name name,
    Status status,
    Customer customer,
    Validity validity,
    Basis basis,
    Offer offer,
    Totals totals) {

  /** The number of the quote, which its revisions share. */
  public String number() {
    return name.number();
  }

  /** 1 for the first. */
  public int revision() {
    return name.revision();
  }

  /** The plan as it stood. */
  public LinePlan plan() {
    return basis.plan();
  }

  /** The lines that make up the total. */
  public List<QuoteLine> lines() {
    return offer.lines();
  }

  /** What is to be paid. */
  public Money total() {
    return totals.total();
  }

  /** This quote at another stage of its life. */
  public Quote withStatus(Status next) {
    return new Quote(name, next, customer, validity, basis, offer, totals);
  }

  /** This quote with what is promised on issuing it. */
  public Quote promising(LocalDate lastDay, int readyInDays) {
    Validity promised = new Validity(validity.date(), lastDay, readyInDays, validity.madeAt());
    return new Quote(name, status, customer, promised, basis, offer, totals);
  }

  /** Parts the plan names that no line of the quote prices. */
  public List<Unpriced> stillToSource() {
    List<String> priced =
        offer.amendments().extraLines().stream()
            .filter(line -> line.standing() == ExtraLine.Inclusion.INCLUDED)
            .map(ExtraLine::description)
            .toList();
    return basis.plan().bill().unpriced().stream()
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
   */
  public record QuoteLine(
      int position, Goods goods, int quantity, Price price, Optional<String> note) {

    /** What names this line among others: the item number, or the text of free text. */
    public String key() {
      return goods.key();
    }

    /** The price breaks as the buyer sees them, after the line discount. */
    public List<Break> netBreaks() {
      return price
          .discount()
          .map(
              less ->
                  price.breaks().stream()
                      .map(step -> new Break(step.minimumQuantity(), less.off(step.unitPrice())))
                      .toList())
          .orElse(price.breaks());
    }

    /**
     * What is sold.
     *
     * @param item the item number; empty for free text
     * @param unitCode UN/ECE Recommendation 20 code
     */
    public record Goods(
        String item,
        String description,
        String unit,
        String unitCode,
        double weightLb,
        boolean taxable) {

      /** What names it among others: the item number, or the text of free text. */
      public String key() {
        return item.isEmpty() ? description : item;
      }
    }

    /**
     * What it costs.
     *
     * @param unitPrice after terms and line discount
     * @param breaks the price breaks in force, frozen: quantity from, unit price after terms and
     *     before a line discount
     */
    public record Price(
        Money listPrice,
        Money unitPrice,
        Money extended,
        List<Break> breaks,
        Optional<Discount> discount) {}
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

  /**
   * What tells a quote from every other.
   *
   * @param number gapless quote number, for example Q-000001
   * @param revision 1 for the first
   */
  public record Name(String number, int revision) {

    /** As its papers are named: {@code Q-000001-r2}. */
    public String words() {
      return number + "-r" + revision;
    }
  }

  /** When it was made, how long its prices hold and when the goods are ready. */
  public record Validity(LocalDate date, LocalDate validUntil, int leadDays, Instant madeAt) {}

  /**
   * What it was made from.
   *
   * @param jobYaml the job file the quote was made from, as text
   * @param plan the plan as it stood
   * @param tender the row of a tender it was made for; empty for most
   */
  public record Basis(String title, String jobYaml, LinePlan plan, Optional<TenderRow> tender) {

    /** Documents kept before tenders were noted have none. */
    public Basis {
      tender = tender == null ? Optional.empty() : tender;
    }

    /** What a quote asked for alone was made from. */
    public Basis(String title, String jobYaml, LinePlan plan) {
      this(title, jobYaml, plan, Optional.empty());
    }
  }

  /**
   * What is offered, and what was changed in it by hand.
   *
   * @param offered lines the buyer may have besides or instead, not in the total
   * @param amendments what was changed by hand
   */
  public record Offer(List<QuoteLine> lines, List<OfferedLine> offered, Amendments amendments) {

    /** Documents kept before there were offers and amendments have neither. */
    public Offer {
      offered = offered == null ? List.of() : List.copyOf(offered);
      amendments = amendments == null ? Amendments.NONE : amendments;
    }
  }

  /**
   * How freight and tax are charged.
   *
   * @param freightTaxed whether tax is due on freight
   * @param taxRate fraction, for example 0.0625; zero for an exempt customer
   * @param taxNote why no tax is charged, or the rate's name
   */
  public record Charging(
      String freightNote, boolean freightTaxed, BigDecimal taxRate, String taxNote) {}

  /**
   * Sums that add up to what is to be paid.
   *
   * @param subtotal sum of the lines
   * @param freight freight charged
   * @param tax tax on taxable lines (and freight where taxed), rounded half-up once
   */
  public record Totals(Money subtotal, Money freight, Money tax, Money total, Charging charging) {}
}
