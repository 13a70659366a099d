package hosewright.desk.words;

import hosewright.catalogue.Item;
import hosewright.csv.WrittenNumber;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.ExtraLine;
import hosewright.quote.ExtraLine.Inclusion;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads a line as a seller writes it: {@code 2 x W-SPAN-1}, {@code 1 x Crating @ 35.00}. */
public final class WantedLine {
  private static final int LONGEST = 200;
  private static final Pattern FORM =
      Pattern.compile("(?:(\\d{1,6})\\s*[xX\u00d7]\\s+)?(.+?)(?:\\s+@\\s*(.+))?");

  private final ItemWords words;
  private final CurrencyUnit currency;

  public WantedLine(ItemWords words, CurrencyUnit currency) {
    this.words = words;
    this.currency = currency;
  }

  /**
   * The line. An item number, or words that fit one item, is that item, priced as every other line;
   * with a price behind it, it is free text.
   */
  public ExtraLine read(String field, String text, Inclusion standing, Optional<String> insteadOf) {
    Matcher parts = FORM.matcher(text.strip());
    if (!parts.matches()) {
      throw new BadInputException(
          field, text, "'2 x ITEM', or free text with its price: '1 x Crating @ 35.00'");
    }
    int quantity = parts.group(1) == null ? 1 : Integer.parseInt(parts.group(1));
    if (quantity == 0) {
      throw new BadInputException(field, text, "a quantity of 1 or more");
    }
    String what = parts.group(2);
    Optional<String> price = Optional.ofNullable(parts.group(3));
    Optional<Item> item = words.numbered(what);
    if (item.isEmpty() && price.isEmpty()) {
      item = words.described(field, what);
    }
    if (item.isPresent() && price.isPresent()) {
      throw new BadInputException(
          field, text, "an item without a price: it has its own; see " + Given.as("discount"));
    }
    return new ExtraLine(
        standing,
        item.map(Item::number),
        item.isPresent() ? "" : Signing.text(field, what, LONGEST),
        quantity,
        item.isPresent() ? Optional.empty() : Optional.of(price(field, what, price)),
        insteadOf);
  }

  private Money price(String field, String what, Optional<String> typed) {
    if (typed.isEmpty()) {
      String nearest =
          Nearest.to(what, words.catalogue().items().stream().map(Item::number).toList());
      throw new BadInputException(
          List.of(
              new Problem(
                  field,
                  what,
                  "an item of the catalogue, or free text with its price behind @",
                  nearest)));
    }
    return money(field, typed.get(), currency);
  }

  /** An amount such as {@code 35.00} or {@code 35 USD}, never rounded. */
  public static Money money(String field, String typed, CurrencyUnit currency) {
    String code = currency.getCode();
    String amount = typed.strip().replaceAll("(?i)\\s*" + code + "$", "");
    int places = currency.getDecimalPlaces();
    String decimals = places == 0 ? "" : "(\\.\\d{1," + places + "})?";
    String allowed = "\\d{1,9}" + decimals;
    if (!amount.matches(allowed)) {
      String meant = WrittenNumber.plain(amount);
      throw new BadInputException(
          List.of(
              new Problem(
                  field,
                  typed,
                  "an amount of %s with at most %d decimals".formatted(code, places),
                  meant.matches(allowed) ? meant : "")));
    }
    return Money.of(currency, new BigDecimal(amount));
  }
}
