package hosewright.quote;

import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import hosewright.quote.terms.Customer;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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

  /** The plan of its first group as it stood, which is all of it for most quotes. */
  public LinePlan plan() {
    return basis.plan();
  }

  /** What it sells, purpose by purpose; one group for most quotes. */
  public List<Group> groups() {
    return basis.groups();
  }

  /** The lines that make up the total. */
  public List<QuoteLine> lines() {
    return offer.lines();
  }

  /** The lines of one group: of an optional one those offered, else those in the total. */
  public List<QuoteLine> lines(Group group) {
    return (group.optional()
            ? offer.offered().stream()
                .filter(offered -> offered.standing() == ExtraLine.Inclusion.OPTIONAL)
                .map(OfferedLine::line)
            : offer.lines().stream())
        .filter(line -> line.group() == group.number())
        .toList();
  }

  /** Every line of a group: those of the total, then those of optional groups. */
  public List<QuoteLine> itemised() {
    return Stream.concat(
            lines().stream(),
            groups().stream().filter(Group::optional).flatMap(group -> lines(group).stream()))
        .toList();
  }

  /** Lines the buyer may have that belong to no optional group. */
  public List<OfferedLine> offeredAlone() {
    return offer.offered().stream()
        .filter(offered -> !basis.group(offered.line().group()).optional())
        .toList();
  }

  /** What the lines of one group come to. */
  public Money subtotal(Group group) {
    return lines(group).stream()
        .map(line -> line.price().extended())
        .reduce(Money.zero(total().getCurrencyUnit()), Money::plus);
  }

  /** What the groups save by being bought together; zero of one group. */
  public Money savedTogether() {
    return BoughtTogether.saved(this);
  }

  /**
   * A group with what it comes to, as papers head it.
   *
   * @param subtotal of its lines, before freight and tax
   */
  public record GroupSum(int group, String title, int count, boolean optional, Money subtotal) {}

  /** Every group with what it comes to. */
  public List<GroupSum> groupSums() {
    return groups().stream()
        .map(
            group ->
                new GroupSum(
                    group.number(),
                    group.title(),
                    group.count(),
                    group.optional(),
                    subtotal(group)))
        .toList();
  }

  /** Words above a line; empty where there are none. */
  public Optional<String> heading(QuoteLine line) {
    return Optional.ofNullable(offer.amendments().byHand().headings().get(line.key()));
  }

  /** What is to be paid. */
  public Money total() {
    return totals.total();
  }

  /** This quote at another stage of its life. */
  public Quote withStatus(Status next) {
    return new Quote(name, next, customer, validity, basis, offer, totals);
  }

  /** This quote as another revision. */
  public Quote as(int revision) {
    return new Quote(
        new Name(name.number(), revision), status, customer, validity, basis, offer, totals);
  }

  /** This quote with what is promised on issuing it. */
  public Quote promising(LocalDate lastDay, int readyInDays) {
    Validity promised = new Validity(validity.date(), lastDay, readyInDays, validity.madeAt());
    return new Quote(name, status, customer, promised, basis, offer, totals);
  }

  /** What stands beside the total while it does not hold everything; nothing where it does. */
  public String besideTotal() {
    String freight = totals.knownFreight().isEmpty() ? " without freight" : "";
    return freight + Unpriced.beside(stillToSource());
  }

  /** Parts the plan names that no line of the quote prices. */
  public List<Unpriced> stillToSource() {
    List<String> priced =
        offer.amendments().extraLines().stream()
            .filter(line -> line.standing() == ExtraLine.Inclusion.INCLUDED)
            .map(ExtraLine::description)
            .toList();
    Map<String, Unpriced> lacking = new LinkedHashMap<>();
    for (Group group : groups()) {
      if (!group.optional()) {
        group
            .plan()
            .bill()
            .unpriced()
            .forEach(
                part -> lacking.merge(part.what(), part.times(group.count()), Unpriced::together));
      }
    }
    return lacking.values().stream().filter(part -> !priced.contains(part.what())).toList();
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
    EXPIRED,
    /** A draft that nobody will issue. */
    DISCARDED
  }

  /**
   * One line of a quote.
   *
   * @param position 1 for the first
   * @param group number of the group it belongs to
   */
  public record QuoteLine(
      int position, int group, Goods goods, int quantity, Price price, Optional<String> note) {

    /** A line of the first group. */
    public QuoteLine(int position, Goods goods, int quantity, Price price, Optional<String> note) {
      this(position, Group.FIRST, goods, quantity, price, note);
    }

    /** What names this line among others: its group, and the item number or the free text. */
    public String key() {
      return Group.key(group, goods.key());
    }

    /** This line where it is not taxed. */
    QuoteLine untaxed() {
      return new QuoteLine(
          position,
          group,
          new Goods(
              goods.item(),
              goods.description(),
              goods.unit(),
              goods.unitCode(),
              goods.weightLb(),
              false),
          quantity,
          price,
          note);
    }

    /** The price breaks as the buyer sees them, after the line discount. */
    public List<Break> netBreaks() {
      List<Break> breaks =
          price.agreed().map(agreed -> List.of(new Break(1, agreed))).orElse(price.breaks());
      return price
          .discount()
          .map(less -> breaks.stream().map(step -> step.at(less.off(step.unitPrice()))).toList())
          .orElse(breaks);
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
     * @param agreed the price of one that was set by hand, before a line discount; no break holds
     *     then
     */
    public record Price(
        Money listPrice,
        Money unitPrice,
        Money extended,
        List<Break> breaks,
        Optional<Discount> discount,
        Optional<Money> agreed) {

      /** Documents kept before prices were set by hand have none. */
      public Price {
        agreed = agreed == null ? Optional.empty() : agreed;
      }

      /** At the price that terms and breaks give. */
      public Price(
          Money listPrice,
          Money unitPrice,
          Money extended,
          List<Break> breaks,
          Optional<Discount> discount) {
        this(listPrice, unitPrice, extended, breaks, discount, Optional.empty());
      }
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

  /**
   * From this quantity up, this net unit price.
   *
   * @param listPrice the list price from this quantity up; empty where it was not kept
   */
  public record Break(int minimumQuantity, Money unitPrice, Optional<Money> listPrice) {

    /** Documents kept before list prices stood in breaks have none. */
    public Break {
      listPrice = listPrice == null ? Optional.empty() : listPrice;
    }

    /** One of which no list price is known. */
    public Break(int minimumQuantity, Money unitPrice) {
      this(minimumQuantity, unitPrice, Optional.empty());
    }

    /** The same from the same quantity up at another net price. */
    public Break at(Money other) {
      return new Break(minimumQuantity, other, listPrice);
    }
  }

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
   * @param title of the whole purchase
   * @param jobYaml the job file its first group was made from, as text
   * @param plan of its first group as it stood
   * @param tender the row of a tender it was made for; empty for most
   * @param firstGroup how its first group is told from the further ones
   * @param furtherGroups what is sold beside the first group
   */
  public record Basis(
      String title,
      String jobYaml,
      LinePlan plan,
      Optional<TenderRow> tender,
      Group.Heading firstGroup,
      List<Group> furtherGroups) {

    /** Documents kept before tenders were noted, or before there were groups, say nothing of it. */
    public Basis {
      tender = tender == null ? Optional.empty() : tender;
      firstGroup = firstGroup == null ? Group.Heading.of(title) : firstGroup;
      furtherGroups = furtherGroups == null ? List.of() : List.copyOf(furtherGroups);
    }

    /** What a quote of one group was made from. */
    public Basis(String title, String jobYaml, LinePlan plan, Optional<TenderRow> tender) {
      this(title, jobYaml, plan, tender, null, null);
    }

    /** What a quote asked for alone was made from. */
    public Basis(String title, String jobYaml, LinePlan plan) {
      this(title, jobYaml, plan, Optional.empty());
    }

    /**
     * What a purchase of several groups is made from.
     *
     * @param groups numbered from 1; at least one
     */
    public static Basis of(String title, Optional<TenderRow> tender, List<Group> groups) {
      Group first = groups.get(0);
      return new Basis(
          title,
          first.jobYaml(),
          first.plan(),
          tender,
          first.heading(),
          groups.subList(1, groups.size()));
    }

    /** Every group, the first one first. */
    public List<Group> groups() {
      return Stream.concat(
              Stream.of(new Group(Group.FIRST, firstGroup, jobYaml, plan)), furtherGroups.stream())
          .toList();
    }

    /** The group of a number; the first where there is none of it. */
    public Group group(int number) {
      return groups().stream()
          .filter(group -> group.number() == number)
          .findFirst()
          .orElseGet(() -> groups().get(0));
    }

    /** The same purchase with other groups in the place of those there. */
    public Basis with(List<Group> groups) {
      return of(title, tender, groups);
    }

    /** The same purchase under another title; a quote of one group is titled as a whole. */
    public Basis titled(String other) {
      Group.Heading heading =
          furtherGroups.isEmpty()
              ? new Group.Heading(other, firstGroup.count(), firstGroup.optional())
              : firstGroup;
      return new Basis(other, jobYaml, plan, tender, heading, furtherGroups);
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
  }
}
