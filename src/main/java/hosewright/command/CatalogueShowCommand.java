package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemFacts;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.command.ShownItem.BreakPrice;
import hosewright.command.ShownItem.CostAndMargin;
import hosewright.command.ShownItem.SupplierTerms;
import hosewright.desk.Books;
import hosewright.line.PlanUse;
import hosewright.problem.BadInputException;
import hosewright.quote.Margin;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.Money;

/** Shows everything the books know about one item. */
final class CatalogueShowCommand extends ShellCommand {
  private final java.util.function.Supplier<Books> books;

  CatalogueShowCommand(java.util.function.Supplier<Books> books) {
    super(
        CommandSpec.of(
                "catalogue show",
                Group.BUY,
                "Shows an item: facts, ends, stock, price today, and where it is used",
                "catalogue show H175-DJ-50-15NH")
            .alias("item")
            .with(CatalogueChoice.item(books))
            .with(internal()));
    this.books = books;
  }

  static OptionSpec internal() {
    return OptionSpec.flag("internal", "show cost and margin too, for the dealer's own eyes");
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      String number = CatalogueChoice.known(in, open.shelf());
      Catalogue part = open.shelf().load(List.of(number));
      Item item =
          part.item(number)
              .orElseThrow(
                  () ->
                      new BadInputException(
                          "ITEM",
                          number,
                          "an item still listed; this one no longer is, 'catalogue history' has"
                              + " its prices"));
      LocalDate today = open.today();
      ShownItem shown =
          new ShownItem(
              number,
              item.description(),
              item.ends(),
              ItemFacts.of(item),
              item.stocking().onHand(),
              item.unit().word(),
              item.unit().code(),
              today,
              part.breaks(number, today).stream().map(CatalogueShowCommand::price).toList(),
              supplier(part, item),
              PlanUse.of(item),
              open.uses().quotes(number),
              in.flag("internal") ? Optional.of(costs(part, number, today)) : Optional.empty());
      return Answer.of(shown, screen -> CatalogueShowText.of(shown, screen));
    }
  }

  private static BreakPrice price(PriceRow row) {
    return new BreakPrice(row.minimumQuantity(), row.unitPrice(), row.from(), row.until());
  }

  private static Optional<SupplierTerms> supplier(Catalogue part, Item item) {
    return part.suppliers().stream()
        .filter(supplier -> supplier.code().equals(item.stocking().supplier()))
        .map(Supplier::name)
        .map(
            name ->
                new SupplierTerms(
                    item.stocking().supplier(),
                    name,
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

  /** A fraction as people read it, 0.4217 as 42.2 %. */
  static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
  }
}
