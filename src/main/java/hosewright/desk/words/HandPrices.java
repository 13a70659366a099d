package hosewright.desk.words;

import hosewright.desk.Refusals;
import hosewright.desk.Signing;
import hosewright.problem.BadInputException;
import hosewright.quote.ByHand;
import hosewright.quote.ByHand.SetPrice;
import hosewright.quote.QuoteLine;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads prices set by hand: {@code 2=150.00}, {@code H175-DJ-50-15NH=150}, {@code 2=list}. */
public final class HandPrices {
  private static final String FIELD = "price";
  private static final String LIST = "list";

  private final CurrencyUnit currency;
  private final List<QuoteLine> lines;
  private final Optional<String> reason;

  /**
   * @param lines those of the quote
   * @param reason why prices are set
   */
  public HandPrices(CurrencyUnit currency, List<QuoteLine> lines, Optional<String> reason) {
    this.currency = currency;
    this.lines = lines;
    this.reason = reason;
  }

  /**
   * With the prices typed.
   *
   * @throws BadInputException naming all that cannot be used: an item has one price in a quote
   */
  public ByHand set(ByHand before, List<String> typed) {
    Refusals refusals = new Refusals();
    Map<String, String> given = new HashMap<>();
    ByHand set = before;
    for (String text : typed) {
      Optional<ByHand> next = refusals.read(one(set, text, given));
      set = next.orElse(set);
    }
    refusals.throwAny();
    return set;
  }

  private Supplier<ByHand> one(ByHand set, String text, Map<String, String> given) {
    return () -> {
      int at = text.lastIndexOf('=');
      if (at <= 0 || at == text.length() - 1) {
        throw new BadInputException(
            FIELD, text, "a line and the price of one, such as 2=150.00; 2=list ends it");
      }
      String goods = LineChoice.goods(FIELD, text.substring(0, at), lines);
      String price = text.substring(at + 1).strip();
      String before = given.putIfAbsent(goods, price);
      if (before != null && !before.equals(price)) {
        throw new BadInputException(
            FIELD, text, "one price for " + goods + " in the whole quote; " + before + " is given");
      }
      if (price.equalsIgnoreCase(LIST)) {
        return set.withoutPrice(goods);
      }
      Money amount = WantedLine.money(FIELD, price, currency);
      return set.withPrice(
          goods,
          new SetPrice(
              amount,
              reason
                  .map(why -> Signing.sentence("price-reason", why))
                  .orElseThrow(
                      () ->
                          new BadInputException(
                              "price-reason", "", "say why the price is set; no paper says it"))));
    };
  }
}
