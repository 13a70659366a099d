package hosewright.command;

import hosewright.catalogue.MoneyWords;
import hosewright.quote.ContractPrice;
import hosewright.quote.Customer;
import hosewright.quote.Customers;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/**
 * A customer with everything agreed.
 *
 * @param discount fraction off list
 * @param marginFloor least margin wanted of its class; absent unless asked for with {@code
 *     --internal}
 */
record CustomerDocument(
    String id,
    String name,
    String address,
    String customerClass,
    BigDecimal discount,
    String taxName,
    BigDecimal taxRate,
    Optional<Customer.Exemption> exemption,
    String freightTerms,
    List<Agreed> contractPrices,
    Optional<BigDecimal> marginFloor) {

  /** A contract price, and whether it is in force on the day asked. */
  record Agreed(
      String item, Money unitPrice, LocalDate from, Optional<LocalDate> until, boolean inForce) {}

  static CustomerDocument of(
      Customer customer, Customers all, LocalDate today, Optional<BigDecimal> marginFloor) {
    return new CustomerDocument(
        customer.id(),
        customer.name(),
        customer.address(),
        customer.customerClass(),
        customer.discount(),
        customer.taxName(),
        customer.taxRate(),
        customer.exemption(),
        customer.freightTerms(),
        all.contractPrices().stream()
            .filter(price -> price.customer().equals(customer.id()))
            .map(price -> agreed(price, today))
            .toList(),
        marginFloor);
  }

  private static Agreed agreed(ContractPrice price, LocalDate today) {
    return new Agreed(
        price.item(), price.unitPrice(), price.from(), price.until(), price.inForceOn(today));
  }

  String text(Screen screen, boolean internal) {
    Table facts = Table.of("fact", "value");
    facts.row("class", customerClass);
    facts.row("off list", CatalogueShowCommand.percent(discount));
    facts.row("address", address.replaceAll("\\R", ", "));
    facts.row(
        "tax",
        exemption
            .map(exempt -> "exempt: certificate " + exempt.certificate() + " of " + exempt.dated())
            .orElseGet(
                () -> taxName + " " + Prose.plain(taxRate.movePointRight(2).doubleValue()) + " %"));
    facts.row("freight", freightTerms);
    if (internal) {
      facts.row(
          "margin floor (internal)",
          marginFloor.map(CatalogueShowCommand::percent).orElse("none for this class"));
    }
    Prose prose = new Prose(screen).line(id + ": " + name).block(facts.on(screen));
    if (contractPrices.isEmpty()) {
      return prose.line("No contract prices.").toString();
    }
    Table prices = Table.of("item", "contract price", "from", "until", "").numbers(1);
    for (Agreed price : contractPrices) {
      prices.row(
          price.item(),
          MoneyWords.of(price.unitPrice()),
          price.from(),
          price.until().map(LocalDate::toString).orElse("open"),
          price.inForce() ? "in force" : "");
    }
    return prose.block(prices.on(screen)).toString();
  }
}
