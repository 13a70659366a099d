package hosewright.door.shell.customer;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.desk.customer.CustomerDocument;
import hosewright.desk.customer.CustomerDocument.Agreed;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.time.LocalDate;

/** A customer in words and tables. */
final class CustomerText {
  private CustomerText() {}

  static String of(CustomerDocument customer, Screen screen, boolean internal) {
    Prose prose = new Prose(screen).line(customer.id() + ": " + customer.name());
    prose.block(facts(customer, internal).on(screen));
    if (customer.pricing().contractPrices().isEmpty()) {
      return prose.line("No contract prices.").toString();
    }
    Table prices = Table.of("item", "contract price", "from", "until", "").numbers(1);
    for (Agreed price : customer.pricing().contractPrices()) {
      prices.row(
          price.item(),
          MoneyWords.of(price.unitPrice()),
          price.from(),
          price.until().map(LocalDate::toString).orElse("open"),
          price.inForce() ? "in force" : "");
    }
    return prose.block(prices.on(screen)).toString();
  }

  private static Table facts(CustomerDocument customer, boolean internal) {
    Table facts = Table.of("fact", "value");
    facts.row("class", customer.pricing().customerClass());
    facts.row("off list", Prose.percent(customer.pricing().discount()));
    facts.row("address", customer.address().replaceAll("\\R", ", "));
    facts.row("tax", tax(customer));
    facts.row("freight", customer.freightTerms());
    if (internal) {
      facts.row(
          "margin floor (internal)",
          customer.pricing().marginFloor().map(Prose::percent).orElse("none for this class"));
    }
    return facts;
  }

  private static String tax(CustomerDocument customer) {
    return customer
        .taxation()
        .exemption()
        .map(exempt -> "exempt: certificate " + exempt.certificate() + " of " + exempt.dated())
        .orElseGet(
            () ->
                customer.taxation().taxName()
                    + " "
                    + PlainNumber.of(customer.taxation().taxRate().movePointRight(2).doubleValue())
                    + " %");
  }
}
