package hosewright.quote;

import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import hosewright.quote.terms.Customer;
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
}
