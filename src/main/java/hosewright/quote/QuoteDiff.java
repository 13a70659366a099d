package hosewright.quote;

import hosewright.catalogue.MoneyWords;
import hosewright.line.model.Unpriced;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * What changed from one quote to another. The differences of the lines, of freight and of tax add
 * up to the difference of the totals.
 *
 * @param why the reason given for the later revision; may be empty
 * @param job answers of the job that differ
 * @param rest what else differs: buyer, validity, notes and terms
 */
public record QuoteDiff(
    String from,
    String to,
    String why,
    List<Change> job,
    List<LineChange> lines,
    List<Change> rest,
    Sums sums) {

  /** Something that was one thing and is another; empty for nothing. */
  public record Change(String what, String before, String after) {}

  /**
   * A line that came, went or changed.
   *
   * @param before what was quoted; of none, without a price, for a line that came
   * @param after the same for a line that went
   * @param difference of the extended amounts
   */
  public record LineChange(
      String item, String description, Deal before, Deal after, Money difference, String why) {

    /** So many at so much each. */
    public record Deal(int quantity, Optional<Money> unit) {

      static Deal of(Optional<QuoteLine> line) {
        return new Deal(
            line.map(QuoteLine::quantity).orElse(0),
            line.map(quoted -> quoted.price().unitPrice()));
      }
    }
  }

  /**
   * The difference.
   *
   * @param jobBefore the answers the earlier quote was made from
   * @throws BadInputException when the two are in different currencies
   */
  public static QuoteDiff between(
      Quote before, Map<String, String> jobBefore, Quote after, Map<String, String> jobAfter) {
    if (!before.total().isSameCurrency(after.total())) {
      throw new BadInputException(
          "quote",
          after.name().words(),
          "a quote in " + before.total().getCurrencyUnit().getCode());
    }
    return new QuoteDiff(
        before.name().words(),
        after.name().words(),
        after.offer().amendments().reason(),
        jobChanges(jobBefore, jobAfter),
        lineChanges(before, after),
        rest(before, after),
        new Sums(
            after.totals().freight().minus(before.totals().freight()),
            after.totals().tax().minus(before.totals().tax()),
            before.total(),
            after.total(),
            after.total().minus(before.total())));
  }

  private static List<Change> jobChanges(Map<String, String> before, Map<String, String> after) {
    List<Change> changes = new ArrayList<>();
    Set<String> words = new LinkedHashSet<>(before.keySet());
    words.addAll(after.keySet());
    for (String word : words) {
      note(changes, word, before.getOrDefault(word, ""), after.getOrDefault(word, ""));
    }
    return changes;
  }

  private static List<Change> rest(Quote before, Quote after) {
    List<Change> changes = new ArrayList<>();
    groups(before, after, changes);
    note(changes, "customer", before.customer().name(), after.customer().name());
    note(
        changes,
        "valid until",
        before.validity().validUntil().toString(),
        after.validity().validUntil().toString());
    note(
        changes,
        "ready in days",
        "" + before.validity().leadDays(),
        "" + after.validity().leadDays());
    note(
        changes,
        "freight",
        before.totals().charging().freightNote(),
        after.totals().charging().freightNote());
    note(changes, "tax", before.totals().charging().taxNote(), after.totals().charging().taxNote());
    note(changes, "offered", offers(before), offers(after));
    note(changes, "to be sourced", sourced(before), sourced(after));
    note(
        changes,
        "notes",
        joined(before.offer().amendments().notes()),
        joined(after.offer().amendments().notes()));
    note(
        changes,
        "terms",
        joined(before.offer().amendments().terms()),
        joined(after.offer().amendments().terms()));
    return changes;
  }

  /**
   * Groups that came, went, or have another job, count or standing; of one group its job says it.
   */
  private static void groups(Quote before, Quote after, List<Change> changes) {
    if (before.groups().size() == 1 && after.groups().size() == 1) {
      return;
    }
    Map<Integer, String> was = told(before);
    Map<Integer, String> is = told(after);
    Set<Integer> numbers = new TreeSet<>(was.keySet());
    numbers.addAll(is.keySet());
    for (int number : numbers) {
      note(changes, "group " + number, was.getOrDefault(number, ""), is.getOrDefault(number, ""));
    }
  }

  private static Map<Integer, String> told(Quote quote) {
    return quote.groups().stream()
        .collect(
            Collectors.toMap(
                Group::number,
                group ->
                    group.heading().words()
                        + (group.optional() ? ", optional: " : ": ")
                        + group.plan().summary()));
  }

  private static void note(List<Change> changes, String what, String before, String after) {
    if (!before.equals(after)) {
      changes.add(new Change(what, before, after));
    }
  }

  private static String offers(Quote quote) {
    return joined(
        quote.offer().offered().stream()
            .map(
                offer ->
                    "%d x %s for %s, %s"
                        .formatted(
                            offer.line().quantity(),
                            offer.line().key(),
                            MoneyWords.of(offer.line().price().extended()),
                            offer.words()))
            .toList());
  }

  private static String sourced(Quote quote) {
    return joined(quote.stillToSource().stream().map(Unpriced::words).toList());
  }

  private static String joined(List<String> sentences) {
    return String.join(" / ", sentences);
  }

  private static List<LineChange> lineChanges(Quote before, Quote after) {
    Map<String, QuoteLine> old = byKey(before);
    Map<String, QuoteLine> fresh = byKey(after);
    Set<String> keys = new LinkedHashSet<>(old.keySet());
    keys.addAll(fresh.keySet());
    List<LineChange> changes = new ArrayList<>();
    LineReason reason = new LineReason(before, after);
    for (String key : keys) {
      Optional<QuoteLine> was = Optional.ofNullable(old.get(key));
      Optional<QuoteLine> is = Optional.ofNullable(fresh.get(key));
      QuoteLine shown = is.or(() -> was).orElseThrow();
      if (!sameDeal(was, is)) {
        Money none = Money.zero(after.total().getCurrencyUnit());
        changes.add(
            new LineChange(
                shown.goods().item(),
                shown.goods().description(),
                LineChange.Deal.of(was),
                LineChange.Deal.of(is),
                is.map(line -> line.price().extended())
                    .orElse(none)
                    .minus(was.map(line -> line.price().extended()).orElse(none)),
                reason.of(was, is)));
      }
    }
    return changes;
  }

  private static boolean sameDeal(Optional<QuoteLine> was, Optional<QuoteLine> is) {
    return was.isPresent()
        && is.isPresent()
        && was.get().quantity() == is.get().quantity()
        && was.get().price().unitPrice().equals(is.get().price().unitPrice());
  }

  /** Lines by their key; a second line of the same key is told apart by a count. */
  private static Map<String, QuoteLine> byKey(Quote quote) {
    Map<String, QuoteLine> lines = new LinkedHashMap<>();
    for (QuoteLine line : quote.lines()) {
      String key = line.key();
      for (int copy = 2; lines.containsKey(key); copy++) {
        key = line.key() + " #" + copy;
      }
      lines.put(key, line);
    }
    return lines;
  }

  /** What it makes of freight, tax and total. */
  public record Sums(
      Money freightDifference,
      Money taxDifference,
      Money totalBefore,
      Money totalAfter,
      Money totalDifference) {}
}
