package hosewright.door.shell.catalogue;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.catalogue.ShownItem;
import hosewright.desk.catalogue.ShownItem.BreakPrice;
import hosewright.desk.catalogue.ShownItem.CostAndMargin;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.store.catalogue.CatalogueUses.QuoteUse;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** An item in words and tables. */
final class CatalogueShowText {
  private static final int QUOTES_SHOWN = 10;

  private CatalogueShowText() {}

  static String of(ShownItem item, Screen screen) {
    Prose prose = new Prose(screen).line(item.item() + ": " + item.description());
    Table facts = Table.of("fact", "value");
    item.facts().entrySet().stream()
        .filter(fact -> !fact.getKey().equals("description"))
        .forEach(fact -> facts.row(fact.getKey(), fact.getValue()));
    prose.block(facts.on(screen));
    prose.line(
        "%d %s on hand; %s."
            .formatted(
                item.stock().onHand(),
                item.stock().unit(),
                item.stock()
                    .supplier()
                    .map(
                        s ->
                            "from %s (%s) in %d days, packs of %d"
                                .formatted(s.name(), s.code(), s.leadDays(), s.pack()))
                    .orElse("no supplier")));
    prices(prose, item, screen);
    for (String use : item.uses().planUses()) {
      prose.line("Plans: " + use + ".");
    }
    quotes(prose, item, screen);
    item.pricing().costs().ifPresent(costs -> costs(prose, costs, screen));
    return prose.toString();
  }

  private static void prices(Prose prose, ShownItem item, Screen screen) {
    if (item.pricing().prices().isEmpty()) {
      prose.line("No price is in force on " + item.pricing().date() + ".");
      return;
    }
    Table prices = Table.of("from quantity", "list price", "in force from", "until").numbers(0, 1);
    for (BreakPrice price : item.pricing().prices()) {
      prices.row(
          price.minimumQuantity(),
          MoneyWords.of(price.unitPrice()),
          price.from(),
          price.until().map(LocalDate::toString).orElse("open"));
    }
    String one = item.stock().unit().equals("each") ? "one" : "one " + item.stock().unit();
    prose.line("Price of " + one + " on " + item.pricing().date() + ":");
    prose.block(prices.on(screen));
  }

  private static void quotes(Prose prose, ShownItem item, Screen screen) {
    if (item.uses().quotes().isEmpty()) {
      prose.line("On no quote yet.");
      return;
    }
    Table quotes = Table.of("quote", "rev", "status", "customer", "date", "quantity").numbers(1, 5);
    for (QuoteUse use :
        item.uses().quotes().subList(0, Math.min(QUOTES_SHOWN, item.uses().quotes().size()))) {
      quotes.row(
          use.quote(),
          use.revision(),
          use.status().name().toLowerCase(Locale.ROOT),
          use.customer(),
          use.date(),
          use.quantity());
    }
    prose.line("Quoted %d times, newest first:".formatted(item.uses().quotes().size()));
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
              .map(Prose::percent)
              .orElse("not known: " + String.join(", ", cost.unknownBecause())));
    }
    prose.block(table.on(screen));
  }
}
