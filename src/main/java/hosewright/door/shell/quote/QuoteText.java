package hosewright.door.shell.quote;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.Revising.Revised;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.line.model.Unpriced;
import hosewright.quote.Group;
import hosewright.quote.OfferedLine;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A quote as a person reads it at a terminal. */
public final class QuoteText {
  private QuoteText() {}

  /** A new revision, with what it has otherwise than the one before. */
  static String of(Revised revised, Screen screen) {
    return of(revised.quote(), screen) + "\n\n" + DiffText.of(revised.diff(), screen);
  }

  public static String of(Quote quote, Screen screen) {
    StringBuilder text = new StringBuilder();
    text.append("Quote ")
        .append(quote.number())
        .append(" revision ")
        .append(quote.revision())
        .append(", ")
        .append(quote.status().name().toLowerCase(Locale.ROOT))
        .append(", for ")
        .append(quote.customer().name())
        .append('\n')
        .append(quote.basis().title())
        .append('\n');
    groups(quote, text, screen);
    Table sums = Table.of("", "").numbers(1);
    sums.row("subtotal", MoneyWords.of(quote.totals().subtotal()));
    sums.row(
        "freight, " + quote.totals().charging().freightNote(),
        quote.totals().knownFreight().map(MoneyWords::of).orElse("to be quoted"));
    sums.row("tax, " + quote.totals().charging().taxNote(), MoneyWords.of(quote.totals().tax()));
    sums.row("total" + quote.besideTotal(), MoneyWords.of(quote.total()));
    text.append(sums.on(screen)).append('\n');
    if (quote.savedTogether().isPositive()) {
      text.append("Bought together these goods cost ")
          .append(MoneyWords.of(quote.savedTogether()))
          .append(" less than group by group.\n");
    }
    for (OfferedLine offer : quote.offeredAlone()) {
      QuoteLine line = offer.line();
      text.append("Not in the total, line ")
          .append(line.position())
          .append(", ")
          .append(offer.words())
          .append(": ")
          .append(line.quantity())
          .append(" x ")
          .append(line.goods().key())
          .append(" for ")
          .append(MoneyWords.of(line.price().extended()))
          .append('\n');
    }
    for (Unpriced missing : quote.stillToSource()) {
      text.append("Not in the total, still to be sourced: ").append(missing.words()).append('\n');
    }
    quote.offer().amendments().notes().forEach(note -> text.append(note).append('\n'));
    return text.append("Valid until ")
        .append(quote.validity().validUntil())
        .append("; ready ")
        .append(ready(quote.validity().leadDays()))
        .append('.')
        .toString();
  }

  /** What is beside the total stands last, as its lines are numbered last. */
  private static void groups(Quote quote, StringBuilder text, Screen screen) {
    boolean several = quote.groups().size() > 1;
    List<Group> inOrder =
        Stream.concat(
                quote.groups().stream().filter(group -> !group.optional()),
                quote.groups().stream().filter(Group::optional))
            .toList();
    for (Group group : inOrder) {
      text.append('\n');
      if (several) {
        text.append(group.number())
            .append(". ")
            .append(group.heading().words())
            .append(group.optional() ? ", not in the total" : "")
            .append('\n');
      }
      text.append(lines(quote, quote.lines(group)).on(screen)).append('\n');
      if (several) {
        text.append("subtotal of ")
            .append(group.number())
            .append(": ")
            .append(MoneyWords.of(quote.subtotal(group)))
            .append('\n');
      }
    }
  }

  private static Table lines(Quote quote, List<QuoteLine> lines) {
    Table table =
        Table.of("#", "item", "description", "qty", "unit", "each", "amount").numbers(0, 3, 5, 6);
    for (QuoteLine line : lines) {
      quote.heading(line).ifPresent(words -> table.row("", "", words, "", "", "", ""));
      table.row(
          line.position(),
          line.goods().item(),
          line.goods().description() + line.note().map(note -> " (" + note + ")").orElse(""),
          line.quantity(),
          line.goods().unit(),
          line.price().unitPrice().getAmount().toPlainString(),
          line.price().extended().getAmount().toPlainString());
    }
    return table;
  }

  private static String ready(int days) {
    return switch (days) {
      case 0 -> "from stock";
      case 1 -> "in 1 day";
      default -> "in " + days + " days";
    };
  }
}
