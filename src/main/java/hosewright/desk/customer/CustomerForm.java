package hosewright.desk.customer;

import hosewright.csv.Limits;
import hosewright.desk.Refusals;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.quote.ContractPrice;
import hosewright.quote.Customer;
import hosewright.store.CatalogueStore;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Reads a customer's terms as somebody says them. */
final class CustomerForm {
  /** How a contract price is said. */
  static final String CONTRACT =
      "item, price and first day, such as 'H175-DJ-50-15NH 165.00 from 2026-01-01 until"
          + " 2026-12-31'";

  private static final Pattern CONTRACT_PARTS =
      Pattern.compile("(\\S+)\\s+(\\S+)\\s+from\\s+(\\S+)(?:\\s+until\\s+(\\S+))?");
  private static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,39}");

  private final Map<CustomerField, String> said;
  private final Refusals refusals;
  private final LocalDate today;

  /**
   * @param refusals takes everything that cannot be used
   */
  CustomerForm(Map<CustomerField, String> said, Refusals refusals, LocalDate today) {
    this.said = said;
    this.refusals = refusals;
    this.today = today;
  }

  /** What a field says, or what holds where it says nothing. */
  Optional<String> value(CustomerField field) {
    return Optional.ofNullable(said.get(field))
        .or(() -> Optional.of(field.standard()).filter(standard -> !standard.isEmpty()));
  }

  /** The name a refusal calls a field by. */
  static String called(CustomerField field) {
    return "--" + field.word();
  }

  /** The customer; empty when something of it was refused. */
  Optional<Customer> customer() {
    Optional<String> id = text(CustomerField.ID, 40);
    if (id.isPresent() && !ID.matcher(id.get()).matches()) {
      refusals.add(
          called(CustomerField.ID),
          id.get(),
          "1 to 40 letters, digits, dots, hyphens or underscores");
    }
    Optional<String> name = text(CustomerField.NAME, 200);
    Optional<String> customerClass = text(CustomerField.CLASS, 40);
    Optional<String> address = text(CustomerField.ADDRESS, 500);
    Optional<String> taxName = text(CustomerField.TAX_NAME, 80);
    Optional<String> freight = text(CustomerField.FREIGHT, 200);
    Optional<BigDecimal> discount = fraction(CustomerField.DISCOUNT);
    Optional<BigDecimal> taxRate = fraction(CustomerField.TAX_RATE);
    if (taxRate.isPresent() && taxRate.get().signum() > 0 && taxName.isEmpty()) {
      refusals.add(called(CustomerField.TAX_NAME), "", "the name of the tax, since it has a rate");
    }
    Optional<Customer.Exemption> exemption = exemption();
    if (id.isEmpty() || name.isEmpty() || customerClass.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Customer(
            id.get(),
            name.get(),
            address.orElse(""),
            customerClass.get(),
            discount.orElse(BigDecimal.ZERO),
            Map.of(),
            taxName.orElse(""),
            taxRate.orElse(BigDecimal.ZERO),
            exemption,
            freight.orElse("")));
  }

  private Optional<String> text(CustomerField field, int longest) {
    Optional<String> text = value(field).map(String::strip);
    text.filter(t -> t.length() > longest || t.chars().anyMatch(Character::isISOControl))
        .ifPresent(
            t -> refusals.add(called(field), t, "at most " + longest + " characters on one line"));
    return text;
  }

  private Optional<BigDecimal> fraction(CustomerField field) {
    String text = value(field).orElseThrow();
    return refusals
        .read(() -> Measures.percent(called(field), text))
        .map(value -> BigDecimal.valueOf(Math.round(value * 1_000_000), 6))
        .filter(
            value -> {
              boolean whole = value.compareTo(BigDecimal.ONE) >= 0;
              if (whole) {
                refusals.add(called(field), text, "less than 100 %");
              }
              return !whole;
            })
        .map(value -> value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros());
  }

  private Optional<Customer.Exemption> exemption() {
    Optional<String> certificate = text(CustomerField.EXEMPTION, 80);
    Optional<LocalDate> dated =
        value(CustomerField.EXEMPTION_DATE)
            .flatMap(day -> day(called(CustomerField.EXEMPTION_DATE), day));
    if (certificate.isPresent() && !said.containsKey(CustomerField.EXEMPTION_DATE)) {
      refusals.add(
          called(CustomerField.EXEMPTION_DATE),
          "",
          "the date of the certificate: an exemption needs both");
    }
    if (certificate.isEmpty() && said.containsKey(CustomerField.EXEMPTION_DATE)) {
      refusals.add(
          called(CustomerField.EXEMPTION), "", "the certificate's number: an exemption needs both");
    }
    if (dated.isPresent() && dated.get().isAfter(today)) {
      refusals.add(
          called(CustomerField.EXEMPTION_DATE), dated.get().toString(), "a day not after " + today);
    }
    return certificate.flatMap(number -> dated.map(day -> new Customer.Exemption(number, day)));
  }

  private Optional<LocalDate> day(String field, String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      refusals.add(field, text, "a date written year-month-day, such as 2026-01-31");
      return Optional.empty();
    }
  }

  /** The contract prices said; what is wrong with them is refused. */
  List<ContractPrice> contractPrices(List<String> contracts, CatalogueStore shelf) {
    List<ContractPrice> prices = new ArrayList<>();
    if (contracts.isEmpty()) {
      return prices;
    }
    List<String> numbers = shelf.numbersListed();
    Optional<CurrencyUnit> currency = shelf.currency();
    for (String terms : contracts) {
      Matcher parts = CONTRACT_PARTS.matcher(terms.strip());
      if (!parts.matches()) {
        refusals.add("--contract", terms, CONTRACT);
        continue;
      }
      String item = item(parts.group(1), numbers);
      Optional<Money> price = refusals.read(() -> price(parts.group(2), currency));
      Optional<LocalDate> from = day("--contract", parts.group(3));
      Optional<LocalDate> until =
          Optional.ofNullable(parts.group(4)).flatMap(text -> day("--contract", text));
      if (price.isPresent() && from.isPresent()) {
        add(
            new ContractPrice(
                value(CustomerField.ID).orElseThrow(), item, from.get(), until, price.get()),
            prices);
      }
    }
    return prices;
  }

  private void add(ContractPrice price, List<ContractPrice> prices) {
    if (price.until().isPresent() && price.until().get().isBefore(price.from())) {
      refusals.add(
          "--contract", price.until().get().toString(), "a day not before " + price.from());
    } else if (prices.stream().anyMatch(other -> overlap(price, other))) {
      refusals.add(
          "--contract",
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
              "--contract",
              typed,
              "the number of an item in the catalogue",
              Nearest.to(typed, numbers)));
    }
    return typed;
  }

  private static Money price(String typed, Optional<CurrencyUnit> currency) {
    CurrencyUnit unit =
        currency.orElseThrow(
            () -> new BadInputException("--contract", typed, "load a catalogue with prices first"));
    int places = unit.getDecimalPlaces();
    String allowed = "0 or more %s with at most %d decimals".formatted(unit, places);
    BigDecimal amount =
        new Limits(0, 999_999_999, allowed)
            .read(typed)
            .filter(number -> number.scale() <= places)
            .orElseThrow(() -> new BadInputException("--contract", typed, allowed));
    return Money.of(unit, amount);
  }
}
