package hosewright.desk.catalogue;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemFacts;
import hosewright.catalogue.PriceRow;
import hosewright.desk.Books;
import hosewright.desk.catalogue.ShownItem.BreakPrice;
import hosewright.desk.catalogue.ShownItem.CostAndMargin;
import hosewright.desk.catalogue.ShownItem.SupplierTerms;
import hosewright.line.goods.PlanUse;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.quote.Margin;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Shows everything the books know about one item. */
public final class ShowItem {
  private final Supplier<Books> books;

  public ShowItem(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The item.
   *
   * @param named its number, in any case of its letters
   * @param internal whether cost and margin are wanted too
   * @throws BadInputException when there is no such item, or it is no longer listed
   */
  public ShownItem show(String named, boolean internal) {
    try (Books open = books.get()) {
      String number = KnownItem.number(named, open.shelf());
      Catalogue part = open.shelf().load(List.of(number));
      Item item = part.item(number).orElseThrow(() -> noLongerListed(number));
      LocalDate today = open.today();
      return new ShownItem(
          number,
          item.description(),
          item.ends(),
          ItemFacts.of(item),
          new ShownItem.Stock(
              item.stocking().onHand(),
              item.unit().word(),
              item.unit().code(),
              supplier(part, item)),
          new ShownItem.Pricing(
              today,
              part.breaks(number, today).stream().map(ShowItem::price).toList(),
              internal ? Optional.of(costs(part, number, today)) : Optional.empty()),
          new ShownItem.Uses(PlanUse.of(item), open.uses().quotes(number)));
    }
  }

  private static ConflictException noLongerListed(String number) {
    return ConflictException.stateForbids(
        "item", number, "is no longer listed", "'catalogue history' has its prices");
  }

  private static BreakPrice price(PriceRow row) {
    return new BreakPrice(row.minimumQuantity(), row.unitPrice(), row.from(), row.until());
  }

  private static Optional<SupplierTerms> supplier(Catalogue part, Item item) {
    return part.suppliers().stream()
        .filter(supplier -> supplier.code().equals(item.stocking().supplier()))
        .map(
            supplier ->
                new SupplierTerms(
                    supplier.code(),
                    supplier.name(),
                    item.stocking().leadDays(),
                    item.stocking().packSize()))
        .findFirst();
  }

  private static List<CostAndMargin> costs(Catalogue part, String number, LocalDate today) {
    Optional<Money> list = part.listPrice(number, 1, today);
    return part.costHistory(number).stream()
        .filter(row -> row.inForceOn(today))
        .map(row -> cost(row, list))
        .toList();
  }

  private static CostAndMargin cost(CostRow row, Optional<Money> list) {
    return list.map(net -> Margin.of(net, Optional.of(row.unitCost())))
        .map(
            margin ->
                new CostAndMargin(
                    row.supplier(), row.unitCost(), margin.fraction(), margin.unknownBecause()))
        .orElseGet(
            () ->
                new CostAndMargin(
                    row.supplier(),
                    row.unitCost(),
                    Optional.empty(),
                    List.of("no price is in force")));
  }
}
