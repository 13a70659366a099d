package hosewright.door.shell.catalogue;

import hosewright.catalogue.CatalogueDifference;
import hosewright.catalogue.CatalogueDifference.FactChange;
import hosewright.catalogue.CatalogueDifference.PriceChange;
import hosewright.catalogue.Item;
import hosewright.catalogue.MoneyWords;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.joda.money.Money;

/** What a new catalogue changes, in words and tables. */
final class DifferenceText {
  private static final int SHOWN = 20;

  private final CatalogueDifference difference;
  private final int most;

  DifferenceText(CatalogueDifference difference, boolean all) {
    this.difference = difference;
    this.most = all ? Integer.MAX_VALUE : SHOWN;
  }

  /** One sentence. */
  static String summary(CatalogueDifference difference) {
    if (difference.isEmpty()) {
      return "Nothing differs from what stands.";
    }
    return String.format(
        Locale.ROOT,
        "%,d added, %,d no longer listed, %,d newly discontinued; %,d prices up, %,d down, %,d new"
            + " or gone; %,d other facts changed.",
        difference.added().size(),
        difference.dropped().size(),
        difference.discontinued().size(),
        difference.risen(),
        difference.fallen(),
        difference.prices().size() - difference.risen() - difference.fallen(),
        difference.facts().size());
  }

  String on(Screen screen) {
    Prose prose = new Prose(screen).line(summary(difference));
    items(prose, screen, "Added", difference.added());
    items(prose, screen, "No longer listed", difference.dropped());
    items(prose, screen, "Newly discontinued", difference.discontinued());
    Table prices =
        Table.of("item", "from", "quantity", "before", "after", "change").numbers(2, 3, 4, 5);
    for (PriceChange change : capped(difference.prices())) {
      prices.row(
          change.item(),
          change.from(),
          change.minimumQuantity(),
          sum(change.before()),
          sum(change.after()),
          percent(change.percent()));
    }
    block(prose, screen, "Prices", prices, difference.prices().size());
    Table facts = Table.of("item", "column", "before", "after");
    for (FactChange change : capped(difference.facts())) {
      facts.row(change.item(), change.column(), change.before(), change.after());
    }
    block(prose, screen, "Other facts", facts, difference.facts().size());
    return prose.toString();
  }

  private void items(Prose prose, Screen screen, String title, List<Item> items) {
    Table table = Table.of("item", "kind", "description");
    capped(items).forEach(item -> table.row(item.number(), item.kind().word(), item.description()));
    block(prose, screen, title, table, items.size());
  }

  private void block(Prose prose, Screen screen, String title, Table table, int count) {
    if (count == 0) {
      return;
    }
    prose.line("").line(title + ":").block(table.on(screen));
    if (count > most) {
      prose.line(String.format(Locale.ROOT, "and %,d more; --all shows them.", count - most));
    }
  }

  private <T> List<T> capped(List<T> all) {
    return all.subList(0, Math.min(most, all.size()));
  }

  private static String sum(Optional<Money> money) {
    return money.map(MoneyWords::of).orElse("none");
  }

  private static String percent(Optional<BigDecimal> percent) {
    return percent
        .map(value -> (value.signum() > 0 ? "+" : "") + value.toPlainString() + " %")
        .orElse("");
  }
}
