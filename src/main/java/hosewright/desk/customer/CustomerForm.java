package hosewright.desk.customer;

import hosewright.desk.Refusals;
import hosewright.measure.Measures;
import hosewright.quote.terms.Customer;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads a customer's terms as somebody says them. */
final class CustomerForm {
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
  private Optional<String> value(CustomerField field) {
    return Optional.ofNullable(said.get(field))
        .or(() -> Optional.of(field.standard()).filter(standard -> !standard.isEmpty()));
  }

  /** The customer; empty when something of it was refused. */
  Optional<Customer> customer() {
    Optional<String> id = needed(CustomerField.ID, 40);
    if (id.isPresent() && !ID.matcher(id.get()).matches()) {
      refusals.add(
          CustomerField.ID.word(),
          id.get(),
          "1 to 40 letters, digits, dots, hyphens or underscores");
    }
    Optional<String> name = needed(CustomerField.NAME, 200);
    Optional<String> customerClass = needed(CustomerField.CLASS, 40);
    Optional<String> address = text(CustomerField.ADDRESS, 500);
    Optional<String> taxName = text(CustomerField.TAX_NAME, 80);
    Optional<String> freight = text(CustomerField.FREIGHT, 200);
    Optional<BigDecimal> discount = fraction(CustomerField.DISCOUNT);
    Optional<BigDecimal> taxRate = fraction(CustomerField.TAX_RATE);
    if (taxRate.isPresent() && taxRate.get().signum() > 0 && taxName.isEmpty()) {
      refusals.add(CustomerField.TAX_NAME.word(), "", "the name of the tax, since it has a rate");
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
            new Customer.Pricing(customerClass.get(), discount.orElse(BigDecimal.ZERO), Map.of()),
            new Customer.Taxation(taxName.orElse(""), taxRate.orElse(BigDecimal.ZERO), exemption),
            freight.orElse("")));
  }

  private Optional<String> needed(CustomerField field, int longest) {
    if (!said.containsKey(field)) {
      refusals.add(field.word(), "", "no customer is kept without it");
    }
    return text(field, longest);
  }

  private Optional<String> text(CustomerField field, int longest) {
    Optional<String> text = value(field).map(String::strip);
    text.filter(t -> t.length() > longest || t.chars().anyMatch(Character::isISOControl))
        .ifPresent(
            t -> refusals.add(field.word(), t, "at most " + longest + " characters on one line"));
    return text;
  }

  private Optional<BigDecimal> fraction(CustomerField field) {
    String text = value(field).orElseThrow();
    return refusals
        .read(() -> Measures.percent(field.word(), text))
        .map(value -> BigDecimal.valueOf(Math.round(value * 1_000_000), 6))
        .filter(
            value -> {
              boolean whole = value.compareTo(BigDecimal.ONE) >= 0;
              if (whole) {
                refusals.add(field.word(), text, "less than 100 %");
              }
              return !whole;
            })
        .map(value -> value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros());
  }

  private Optional<Customer.Exemption> exemption() {
    Optional<String> certificate = text(CustomerField.EXEMPTION, 80);
    Optional<LocalDate> dated =
        value(CustomerField.EXEMPTION_DATE)
            .flatMap(day -> day(CustomerField.EXEMPTION_DATE.word(), day, refusals));
    if (certificate.isPresent() && !said.containsKey(CustomerField.EXEMPTION_DATE)) {
      refusals.add(
          CustomerField.EXEMPTION_DATE.word(),
          "",
          "the date of the certificate: an exemption needs both");
    }
    if (certificate.isEmpty() && said.containsKey(CustomerField.EXEMPTION_DATE)) {
      refusals.add(
          CustomerField.EXEMPTION.word(), "", "the certificate's number: an exemption needs both");
    }
    if (dated.isPresent() && dated.get().isAfter(today)) {
      refusals.add(
          CustomerField.EXEMPTION_DATE.word(), dated.get().toString(), "a day not after " + today);
    }
    return certificate.flatMap(number -> dated.map(day -> new Customer.Exemption(number, day)));
  }

  /** The day a text says; empty when it is refused. */
  static Optional<LocalDate> day(String field, String text, Refusals refusals) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      refusals.add(field, text, "a date written year-month-day, such as 2026-01-31");
      return Optional.empty();
    }
  }
}
