package hosewright.quote;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.PriceRow;
import hosewright.quote.QuoteLine.Break;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** The prices one customer pays on one day, from the catalogue as it stands. */
public final class PriceList implements LinePrices {
  private final Catalogue catalogue;
  private final CustomerTerms terms;
  private final LocalDate date;

  public PriceList(Catalogue catalogue, Customer customer, LocalDate date) {
    this.catalogue = catalogue;
    this.terms = new CustomerTerms(catalogue, customer, date);
    this.date = date;
  }

  @Override
  public Optional<Priced> of(String number, int quantity) {
    return catalogue
        .item(number)
        .flatMap(
            item -> terms.unitPrice(item, quantity).map(price -> priced(item, quantity, price)));
  }

  private Priced priced(Item item, int quantity, Money unitPrice) {
    return new Priced(
        item.description(),
        item.unit().word(),
        item.unit().code(),
        item.weightLb(),
        catalogue.listPrice(item.number(), quantity, date).orElse(unitPrice),
        unitPrice,
        breaks(item, unitPrice));
  }

  private List<Break> breaks(Item item, Money unitPrice) {
    List<Break> breaks =
        catalogue.breaks(item.number(), date).stream()
            .map(PriceRow::minimumQuantity)
            .distinct()
            .map(
                from ->
                    new Break(
                        from,
                        terms.unitPrice(item, from).orElseThrow(),
                        catalogue.listPrice(item.number(), from, date)))
            .toList();
    return breaks.isEmpty() ? List.of(new Break(1, unitPrice)) : breaks;
  }
}
