package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.CostRow;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemFacts;
import hosewright.catalogue.MoneyWords;
import hosewright.catalogue.PriceRow;
import hosewright.catalogue.Supplier;
import hosewright.line.PlanUse;
import hosewright.problem.BadInputException;
import hosewright.quote.Margin;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.store.CatalogueUses.QuoteUse;
import hosewright.thread.End;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.joda.money.Money;
import org.springframework.beans.factory.ObjectProvider;

/** Shows everything the books know about one item. */
final class CatalogueShowCommand extends ShellCommand {
  private static final int QUOTES_SHOWN = 10;

  private final ObjectProvider<Books> books;

  CatalogueShowCommand(ObjectProvider<Books> books) {
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

  /**
   * An item.
   *
   * @param prices price breaks in force today
   * @param costs absent unless asked for with {@code --internal}
   */
  record ShownItem(
      String item,
      String description,
      List<End> ends,
      Map<String, String> facts,
      int onHand,
      String unit,
      String unitCode,
      LocalDate date,
      List<BreakPrice> prices,
      Optional<SupplierTerms> supplier,
      List<String> planUses,
      List<QuoteUse> quotes,
      Optional<List<CostAndMargin>> costs) {}

  record BreakPrice(
      int minimumQuantity, Money unitPrice, LocalDate from, Optional<LocalDate> until) {}

  record SupplierTerms(String code, String name, int leadDays, int pack) {}

  /** Margin is that of the list price of one, as a fraction. */
  record CostAndMargin(
      String supplier, Money unitCost, Optional<BigDecimal> margin, List<String> unknownBecause) {}

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.getObject()) {
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
      return Answer.of(shown, screen -> text(shown, screen));
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

  private static String text(ShownItem item, Screen screen) {
    Prose prose = new Prose(screen).line(item.item() + ": " + item.description());
    Table facts = Table.of("fact", "value");
    item.facts().entrySet().stream()
        .filter(fact -> !fact.getKey().equals("description"))
        .forEach(fact -> facts.row(fact.getKey(), fact.getValue()));
    prose.block(facts.on(screen));
    prose.line(
        "%d %s on hand; %s."
            .formatted(
                item.onHand(),
                item.unit(),
                item.supplier()
                    .map(
                        s ->
                            "from %s (%s) in %d days, packs of %d"
                                .formatted(s.name(), s.code(), s.leadDays(), s.pack()))
                    .orElse("no supplier")));
    prices(prose, item, screen);
    for (String use : item.planUses()) {
      prose.line("Plans: " + use + ".");
    }
    quotes(prose, item, screen);
    item.costs().ifPresent(costs -> costs(prose, costs, screen));
    return prose.toString();
  }

  private static void prices(Prose prose, ShownItem item, Screen screen) {
    if (item.prices().isEmpty()) {
      prose.line("No price is in force on " + item.date() + ".");
      return;
    }
    Table prices = Table.of("from quantity", "list price", "in force from", "until").numbers(0, 1);
    for (BreakPrice price : item.prices()) {
      prices.row(
          price.minimumQuantity(),
          MoneyWords.of(price.unitPrice()),
          price.from(),
          price.until().map(LocalDate::toString).orElse("open"));
    }
    String one = item.unit().equals("each") ? "one" : "one " + item.unit();
    prose.line("Price of " + one + " on " + item.date() + ":");
    prose.block(prices.on(screen));
  }

  private static void quotes(Prose prose, ShownItem item, Screen screen) {
    if (item.quotes().isEmpty()) {
      prose.line("On no quote yet.");
      return;
    }
    Table quotes = Table.of("quote", "rev", "status", "customer", "date", "quantity").numbers(1, 5);
    for (QuoteUse use : item.quotes().subList(0, Math.min(QUOTES_SHOWN, item.quotes().size()))) {
      quotes.row(
          use.quote(),
          use.revision(),
          use.status().name().toLowerCase(Locale.ROOT),
          use.customer(),
          use.date(),
          use.quantity());
    }
    prose.line("Quoted %d times, newest first:".formatted(item.quotes().size()));
    prose.block(quotes.on(screen));
  }

  private static void costs(Prose prose, List<CostAndMargin> costs, Screen screen) {
    prose.line("INTERNAL, not for customers:");
    if (costs.isEmpty()) {
      prose.line("No cost is in force, so the margin is not known.");
      return;
    }
    Table table = Table.of("supplier", "cost", "margin at list price of one").numbers(1);
    for (CostAndMargin cost : costs) {
      table.row(
          cost.supplier(),
          MoneyWords.of(cost.unitCost()),
          cost.margin()
              .map(CatalogueShowCommand::percent)
              .orElse("not known: " + String.join(", ", cost.unknownBecause())));
    }
    prose.block(table.on(screen));
  }

  /** A fraction as people read it, 0.4217 as 42.2 %. */
  static String percent(BigDecimal fraction) {
    return fraction.movePointRight(2).setScale(1, RoundingMode.HALF_UP).toPlainString() + " %";
  }
}
