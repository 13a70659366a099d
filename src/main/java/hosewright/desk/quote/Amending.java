package hosewright.desk.quote;

import hosewright.desk.Refusals;
import hosewright.desk.Signing;
import hosewright.desk.TextLines;
import hosewright.desk.quote.LineChange.Kind;
import hosewright.desk.words.HandPrices;
import hosewright.desk.words.ItemWords;
import hosewright.desk.words.LineChoice;
import hosewright.desk.words.WantedLine;
import hosewright.measure.Measures;
import hosewright.order.RequestForPrice;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.quote.Amendments;
import hosewright.quote.Discount;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import hosewright.quote.Group;
import hosewright.quote.OfferedLine;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** What changes by hand make of a quote's amendments. */
final class Amending {
  private static final int LONGEST_WORDS = 200;
  private static final int LONGEST_PLACE = 80;

  private final Quote quote;
  private final WantedLine wanted;
  private final Refusals refusals = new Refusals();
  private Amendments amendments;
  private int group = Group.FIRST;

  /**
   * @param quote whose lines are named
   * @param amendments what stands before anything is changed
   * @param words finds the items that lines to add are named by
   */
  Amending(Quote quote, Amendments amendments, ItemWords words) {
    this.quote = quote;
    this.wanted = new WantedLine(words, quote.total().getCurrencyUnit());
    this.amendments = amendments;
  }

  /**
   * The amendments after the changes.
   *
   * @throws BadInputException naming everything that cannot be used
   */
  Amendments after(Changes changes) {
    group = changes.group().orElse(Group.FIRST);
    each(
        Kind.TAKE.word(),
        changes.of(Kind.TAKE).stream().filter(text -> GroupTaken.named(text).isEmpty()).toList(),
        this::take);
    each(changes, Kind.DROP, this::drop);
    each(changes, Kind.SOURCE, this::source);
    each(changes, Kind.ADD, (field, text) -> extra(field, text, Inclusion.INCLUDED));
    each(changes, Kind.OPTIONAL, (field, text) -> extra(field, text, Inclusion.OPTIONAL));
    each(changes, Kind.ALTERNATE, this::alternate);
    each(changes, Kind.QUANTITY, this::quantity);
    prices(changes);
    each(changes, Kind.FREIGHT, this::freight);
    each(
        changes,
        Kind.SHIP_TO,
        (field, text) ->
            amendments.shippedTo(
                Optional.of(Signing.text(field, text, LONGEST_PLACE))
                    .filter(place -> !place.equals("usual"))));
    discounts(changes);
    arrange(changes);
    notes(changes);
    refusals.throwAny();
    return amendments;
  }

  private void each(Changes changes, Kind kind, BiFunction<String, String, Amendments> step) {
    each(kind.word(), changes.of(kind), step);
  }

  private void each(String field, List<String> texts, BiFunction<String, String, Amendments> step) {
    for (String text : texts) {
      refusals.read(() -> step.apply(field, text)).ifPresent(next -> amendments = next);
    }
  }

  private void discounts(Changes changes) {
    String field = Kind.DISCOUNT.word();
    List<Less> read = new ArrayList<>();
    for (String text : changes.of(Kind.DISCOUNT)) {
      refusals.read(() -> less(field, text)).ifPresent(read::add);
    }
    Optional<String> reason = changes.discountReason();
    if (reason.isEmpty() && !read.stream().allMatch(Less::takenBack)) {
      refusals.add("discount-reason", "", "say why the discount is given");
      return;
    }
    for (Less less : read) {
      refusals.read(() -> discounted(less, reason)).ifPresent(next -> amendments = next);
    }
  }

  /** A line and the fraction of its price it is to cost less. */
  private record Less(String key, double fraction) {

    boolean takenBack() {
      return fraction == 0;
    }
  }

  private void prices(Changes changes) {
    HandPrices hand =
        new HandPrices(quote.total().getCurrencyUnit(), inTotalOrOffered(), changes.priceReason());
    refusals
        .read(() -> hand.set(amendments.byHand(), changes.of(Kind.PRICE)))
        .ifPresent(set -> amendments = amendments.with(set));
  }

  private void arrange(Changes changes) {
    each(
        changes,
        Kind.ORDER,
        (field, text) ->
            amendments.with(
                amendments
                    .byHand()
                    .ordered(
                        Arrays.stream(text.split(","))
                            .map(one -> LineChoice.key(field, one, inTotalOrOffered()))
                            .toList())));
    each(
        changes,
        Kind.HEADING,
        (field, text) -> {
          String[] parts = worded(field, text);
          return amendments.with(amendments.byHand().headed(parts[0], parts[1]));
        });
    each(
        changes,
        Kind.REMARK,
        (field, text) -> {
          String[] parts = worded(field, text);
          return amendments.with(amendments.byHand().remarked(parts[0], parts[1]));
        });
  }

  /** The key of a line and words for it, which may be none. */
  private String[] worded(String field, String text) {
    int at = text.indexOf('=');
    if (at <= 0) {
      throw new BadInputException(field, text, "a line and words, such as 2=Hose");
    }
    String words = text.substring(at + 1).strip();
    return new String[] {
      LineChoice.key(field, text.substring(0, at), inTotalOrOffered()),
      words.isEmpty() ? "" : Signing.text(field, words, LONGEST_WORDS)
    };
  }

  private Less less(String field, String text) {
    String[] parts = halves(field, text, "=", "a line and a percentage, such as 2=5%");
    String key = LineChoice.key(field, parts[0], inTotalOrOffered());
    double fraction = Measures.percent(field, parts[1]);
    if (fraction >= 1) {
      throw new BadInputException(field, parts[1], "over 0% and under 100%");
    }
    return new Less(key, fraction);
  }

  private Amendments discounted(Less less, Optional<String> reason) {
    if (less.takenBack()) {
      return amendments.withoutDiscount(less.key());
    }
    String why = Signing.sentence("discount-reason", reason.orElseThrow());
    return amendments.withDiscount(
        less.key(), new Discount(BigDecimal.valueOf(less.fraction()).stripTrailingZeros(), why));
  }

  private void notes(Changes changes) {
    changes
        .notesFile()
        .flatMap(file -> refusals.read(() -> TextLines.read("notes", file)))
        .ifPresent(notes -> amendments = amendments.withNotes(notes));
    each(
        "note",
        changes.notes(),
        (field, text) -> {
          List<String> notes = new ArrayList<>(amendments.notes());
          notes.add(Signing.sentence(field, text));
          return amendments.withNotes(notes);
        });
    changes
        .termsFile()
        .flatMap(file -> refusals.read(() -> TextLines.read("terms", file)))
        .ifPresent(terms -> amendments = amendments.withTerms(terms));
  }

  private Amendments quantity(String field, String text) {
    String[] parts = halves(field, text, "=", "a line and a quantity, such as 2=12");
    if (!parts[1].matches("\\d{1,6}")) {
      throw new BadInputException(field, parts[1], "a whole number from 0 to 999999");
    }
    return amendments.withQuantity(
        LineChoice.key(field, parts[0], inTotalOrOffered()), Integer.parseInt(parts[1]));
  }

  private Amendments take(String field, String text) {
    return amendments.taking(LineChoice.key(field, text, offered()));
  }

  private Amendments drop(String field, String text) {
    String key = LineChoice.key(field, text, inTotalOrOffered());
    boolean added = amendments.extraLines().stream().anyMatch(line -> line.key().equals(key));
    return added ? amendments.withoutLine(key) : amendments.withQuantity(key, 0);
  }

  private Amendments source(String field, String text) {
    String[] parts = halves(field, text, "=", "a part and its price, such as 1=62.00");
    List<RequestForPrice> asked = RequestForPrice.of(quote);
    RequestForPrice part =
        asked.stream()
            .filter(one -> String.valueOf(one.line()).equals(parts[0]))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadInputException(
                        field,
                        parts[0],
                        asked.isEmpty()
                            ? "nothing is still to be sourced"
                            : "a part among 1 to " + asked.size()));
    return amendments.withLine(
        new ExtraLine(
            Inclusion.INCLUDED,
            Optional.empty(),
            part.wanted(),
            part.quantity(),
            Optional.of(WantedLine.money(field, parts[1], quote.total().getCurrencyUnit())),
            Optional.empty()));
  }

  private Amendments freight(String field, String text) {
    return amendments.withFreight(
        text.strip().equals("terms")
            ? Optional.empty()
            : Optional.of(WantedLine.money(field, text, quote.total().getCurrencyUnit())));
  }

  private Amendments alternate(String field, String text) {
    String[] parts = halves(field, text, ":", "the line it replaces, then what: '3: 1 x W-SPAN-1'");
    String replaced = LineChoice.key(field, parts[0], quote.lines());
    return extra(field, parts[1], Inclusion.ALTERNATE, Optional.of(replaced));
  }

  private Amendments extra(String field, String text, Inclusion standing) {
    return extra(field, text, standing, Optional.empty());
  }

  private Amendments extra(
      String field, String text, Inclusion standing, Optional<String> insteadOf) {
    ExtraLine line = wanted.read(field, text, standing, insteadOf).in(group);
    boolean left = amendments.quantities().getOrDefault(line.key(), 1) == 0;
    boolean there =
        !left
            && Stream.concat(
                    inTotalOrOffered().stream().map(QuoteLine::key),
                    amendments.extraLines().stream().map(ExtraLine::key))
                .anyMatch(line.key()::equals);
    if (there) {
      throw new BadInputException(
          field,
          text,
          "a line the quote has not yet; change one it has with " + Given.as("quantity"));
    }
    return amendments.withLine(line);
  }

  private List<QuoteLine> offered() {
    return quote.offer().offered().stream().map(OfferedLine::line).toList();
  }

  private List<QuoteLine> inTotalOrOffered() {
    return Stream.concat(quote.lines().stream(), offered().stream()).toList();
  }

  private static String[] halves(String field, String text, String between, String allowed) {
    int at = text.indexOf(between);
    if (at <= 0 || at == text.length() - 1) {
      throw new BadInputException(field, text, allowed);
    }
    return new String[] {text.substring(0, at).strip(), text.substring(at + 1).strip()};
  }
}
