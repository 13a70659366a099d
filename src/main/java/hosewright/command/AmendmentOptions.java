package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.desk.Refusals;
import hosewright.desk.Signing;
import hosewright.desk.TextLines;
import hosewright.measure.Measures;
import hosewright.order.Asked;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.Discount;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Standing;
import hosewright.quote.Quote;
import hosewright.quote.Quote.OfferedLine;
import hosewright.quote.Quote.QuoteLine;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** The options that change a quote by hand, and what they make of it. */
final class AmendmentOptions {
  private static final String LINE = "LINE is its number on the quote or its item number";

  private final Quote quote;
  private final WantedLine wanted;
  private final Refusals refusals = new Refusals();
  private Amendments amendments;

  /**
   * @param quote whose lines are named
   * @param amendments what stands before anything is typed
   */
  AmendmentOptions(Quote quote, Amendments amendments, Catalogue catalogue) {
    this.quote = quote;
    this.wanted = new WantedLine(catalogue, quote.total().getCurrencyUnit());
    this.amendments = amendments;
  }

  static OptionSpec[] options() {
    return new OptionSpec[] {
      OptionSpec.value("quantity", "LINE=N", "set a line's quantity; " + LINE).asRepeatable(),
      OptionSpec.value("discount", "LINE=PERCENT", "take so much off a line; 0% ends it")
          .asRepeatable(),
      OptionSpec.value("discount-reason", "TEXT", "why; it is printed on the quote"),
      OptionSpec.value(
              "add", "WHAT", "a line more: '2 x W-SPAN-1', or free text '1 x Crating @ 35.00'")
          .asRepeatable(),
      OptionSpec.value("optional", "WHAT", "offer a line beside the total, written as for --add")
          .asRepeatable(),
      OptionSpec.value(
              "alternate", "LINE:WHAT", "offer a line instead of another: '3: 1 x W-SPAN-1'")
          .asRepeatable(),
      OptionSpec.value(
              "source", "N=PRICE", "price the N-th part still to be sourced, each; see quote ask")
          .asRepeatable(),
      OptionSpec.value("take", "LINE", "take an offered line into the total").asRepeatable(),
      OptionSpec.value("drop", "LINE", "leave a line out").asRepeatable(),
      OptionSpec.value("note", "TEXT", "a sentence for this buyer, beside those there")
          .asRepeatable(),
      OptionSpec.value("notes", "FILE", "put the sentences of a text file in place of the notes")
          .completingFiles(),
      terms()
    };
  }

  static OptionSpec terms() {
    return OptionSpec.value("terms", "FILE", "terms of sale from a text file, one a line")
        .withDefaultSaid("terms.txt in the data folder, where there is one")
        .completingFiles();
  }

  /**
   * The amendments after what was typed.
   *
   * @throws BadInputException naming everything that cannot be used
   */
  Amendments read(Invocation in) {
    each(in, "take", this::take);
    each(in, "drop", this::drop);
    each(in, "source", this::source);
    each(in, "add", (option, text) -> extra(option, text, Standing.INCLUDED, Optional.empty()));
    each(
        in, "optional", (option, text) -> extra(option, text, Standing.OPTIONAL, Optional.empty()));
    each(in, "alternate", this::alternate);
    each(in, "quantity", this::quantity);
    discounts(in);
    notes(in);
    refusals.throwAny();
    return amendments;
  }

  private void each(Invocation in, String option, BiFunction<String, String, Amendments> step) {
    for (String typed : in.values(option)) {
      refusals.read(() -> step.apply(option, typed)).ifPresent(next -> amendments = next);
    }
  }

  private void discounts(Invocation in) {
    List<String> typed = in.values("discount");
    Optional<String> reason = in.value("discount-reason");
    boolean given = typed.stream().anyMatch(text -> !text.replaceAll("\\s", "").endsWith("=0%"));
    if (given && reason.isEmpty()) {
      refusals.add("discount-reason", "", "say why the discount is given");
      return;
    }
    each(
        in,
        "discount",
        (option, text) -> {
          String[] parts = halves(option, text, "=", "a line and a percentage, such as 2=5%");
          String key = LineChoice.key(option, parts[0], inTotalOrOffered());
          double fraction = Measures.percent(option, parts[1]);
          if (fraction == 0) {
            return amendments.withoutDiscount(key);
          }
          if (fraction >= 1) {
            throw new BadInputException(option, parts[1], "over 0% and under 100%");
          }
          String why = Signing.sentence("discount-reason", reason.orElseThrow());
          return amendments.withDiscount(
              key, new Discount(BigDecimal.valueOf(fraction).stripTrailingZeros(), why));
        });
  }

  private void notes(Invocation in) {
    in.value("notes")
        .flatMap(file -> refusals.read(() -> TextLines.read("notes", file)))
        .ifPresent(notes -> amendments = amendments.withNotes(notes));
    each(
        in,
        "note",
        (option, text) -> {
          List<String> notes = new ArrayList<>(amendments.notes());
          notes.add(Signing.sentence(option, text));
          return amendments.withNotes(notes);
        });
    in.value("terms")
        .flatMap(file -> refusals.read(() -> TextLines.read("terms", file)))
        .ifPresent(terms -> amendments = amendments.withTerms(terms));
  }

  private Amendments quantity(String option, String text) {
    String[] parts = halves(option, text, "=", "a line and a quantity, such as 2=12");
    if (!parts[1].matches("\\d{1,6}")) {
      throw new BadInputException(option, parts[1], "a whole number from 0 to 999999");
    }
    return amendments.withQuantity(
        LineChoice.key(option, parts[0], inTotalOrOffered()), Integer.parseInt(parts[1]));
  }

  private Amendments take(String option, String text) {
    return amendments.taking(LineChoice.key(option, text, offered()));
  }

  private Amendments drop(String option, String text) {
    String key = LineChoice.key(option, text, inTotalOrOffered());
    boolean added = amendments.extraLines().stream().anyMatch(line -> line.key().equals(key));
    return added ? amendments.withoutLine(key) : amendments.withQuantity(key, 0);
  }

  private Amendments source(String option, String text) {
    String[] parts = halves(option, text, "=", "a part and its price, such as 1=62.00");
    List<Asked> asked = Asked.of(quote);
    Asked part =
        asked.stream()
            .filter(one -> String.valueOf(one.line()).equals(parts[0]))
            .findFirst()
            .orElseThrow(
                () ->
                    new BadInputException(
                        option,
                        parts[0],
                        asked.isEmpty()
                            ? "nothing is still to be sourced"
                            : "a part among 1 to " + asked.size()));
    return amendments.withLine(
        new ExtraLine(
            Standing.INCLUDED,
            Optional.empty(),
            part.wanted(),
            part.quantity(),
            Optional.of(WantedLine.money(option, parts[1], quote.total().getCurrencyUnit())),
            Optional.empty()));
  }

  private Amendments alternate(String option, String text) {
    String[] parts =
        halves(option, text, ":", "the line it replaces, then what: '3: 1 x W-SPAN-1'");
    String replaced = LineChoice.key(option, parts[0], quote.lines());
    return extra(option, parts[1], Standing.ALTERNATE, Optional.of(replaced));
  }

  private Amendments extra(
      String option, String text, Standing standing, Optional<String> insteadOf) {
    ExtraLine line = wanted.read(option, text, standing, insteadOf);
    boolean left = amendments.quantities().getOrDefault(line.key(), 1) == 0;
    boolean there =
        !left
            && Stream.concat(
                    inTotalOrOffered().stream().map(QuoteLine::key),
                    amendments.extraLines().stream().map(ExtraLine::key))
                .anyMatch(line.key()::equals);
    if (there) {
      throw new BadInputException(
          option, text, "a line the quote has not yet; change one it has with --quantity");
    }
    return amendments.withLine(line);
  }

  private List<QuoteLine> offered() {
    return quote.offered().stream().map(OfferedLine::line).toList();
  }

  private List<QuoteLine> inTotalOrOffered() {
    return Stream.concat(quote.lines().stream(), offered().stream()).toList();
  }

  private static String[] halves(String option, String text, String between, String allowed) {
    int at = text.indexOf(between);
    if (at <= 0 || at == text.length() - 1) {
      throw new BadInputException(option, text, allowed);
    }
    return new String[] {text.substring(0, at).strip(), text.substring(at + 1).strip()};
  }
}
