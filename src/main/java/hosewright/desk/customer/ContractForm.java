package hosewright.desk.customer;

import hosewright.csv.Limits;
import hosewright.desk.Refusals;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.terms.ContractPrice;
import hosewright.store.catalogue.CatalogueStore;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads contract prices as somebody says them. */
final class ContractForm {
  /** How a contract price is said. */
  static final String WORDS =
      "item, price and first day, such as 'H175-DJ-50-15NH 165.00 from 2026-01-01 until"
          + " 2026-12-31'";

  private static final String FIELD = "contract";
  private static final Pattern PARTS =
      Pattern.compile("(\\S+)\\s+(\\S+)\\s+from\\s+(\\S+)(?:\\s+until\\s+(\\S+))?");

  private final CatalogueStore shelf;
  private final Refusals refusals;

  /**
   * @param refusals takes everything that cannot be used
   */
  ContractForm(CatalogueStore shelf, Refusals refusals) {
    this.shelf = shelf;
    this.refusals = refusals;
  }

  /**
   * The prices; what is wrong with them is refused.
   *
   * @param customer whose they are
   */
  List<ContractPrice> prices(List<String> contracts, String customer) {
    List<ContractPrice> prices = new ArrayList<>();
    if (contracts.isEmpty()) {
      return prices;
    }
    List<String> numbers = shelf.numbersListed();
    Optional<CurrencyUnit> currency = shelf.currency();
    for (String terms : contracts) {
      Matcher parts = PARTS.matcher(terms.strip());
      if (!parts.matches()) {
        refusals.add(FIELD, terms, WORDS);
        continue;
      }
      String item = item(parts.group(1), numbers);
      Optional<Money> price = refusals.read(() -> price(parts.group(2), currency));
      Optional<LocalDate> from = CustomerForm.day(FIELD, parts.group(3), refusals);
      Optional<LocalDate> until =
          Optional.ofNullable(parts.group(4))
              .flatMap(text -> CustomerForm.day(FIELD, text, refusals));
      if (price.isPresent() && from.isPresent()) {
        add(new ContractPrice(customer, item, from.get(), until, price.get()), prices);
      }
    }
    return prices;
  }

  private void add(ContractPrice price, List<ContractPrice> prices) {
    if (price.until().isPresent() && price.until().get().isBefore(price.from())) {
      refusals.add(FIELD, price.until().get().toString(), "a day not before " + price.from());
    } else if (prices.stream().anyMatch(other -> overlap(price, other))) {
      refusals.add(
          FIELD,
          price.item() + " from " + price.from(),
          "one price for an item on any day; two of them overlap");
    } else {
      prices.add(price);
    }
  }

  private static boolean overlap(ContractPrice one, ContractPrice other) {
    return one.item().equals(other.item())
        && !one.until().map(day -> day.isBefore(other.from())).orElse(false)
        && !other.until().map(day -> day.isBefore(one.from())).orElse(false);
  }

  private String item(String typed, List<String> numbers) {
    if (!numbers.contains(typed)) {
      refusals.add(
          new Problem(
              FIELD, typed, "the number of an item in the catalogue", Nearest.to(typed, numbers)));
    }
    return typed;
  }

  private static Money price(String typed, Optional<CurrencyUnit> currency) {
    CurrencyUnit unit =
        currency.orElseThrow(
            () -> new BadInputException(FIELD, typed, "load a catalogue with prices first"));
    int places = unit.getDecimalPlaces();
    String allowed = "0 or more %s with at most %d decimals".formatted(unit, places);
    BigDecimal amount =
        new Limits(0, 999_999_999, allowed)
            .read(typed)
            .filter(number -> number.scale() <= places)
            .orElseThrow(() -> new BadInputException(FIELD, typed, allowed));
    return Money.of(unit, amount);
  }
}
