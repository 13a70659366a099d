package hosewright.door.shell.catalogue;

import hosewright.door.shell.order.ServedText;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.order.OrderBook.Counted;
import java.util.List;

/**
 * What the stock column of a catalogue counts, and which promises there are no longer pieces for.
 */
final class CountsText {
  private static final int SHOWN = 20;

  private final List<Counted> counted;
  private final int most;

  CountsText(List<Counted> counted, boolean all) {
    this.counted = counted;
    this.most = all ? Integer.MAX_VALUE : SHOWN;
  }

  /** Lines to be put behind others; nothing where nothing was counted. */
  String on(Screen screen, boolean written) {
    if (counted.isEmpty()) {
      return "";
    }
    Prose prose = new Prose(screen);
    prose.line(
        "%s %s counted by the stock column."
            .formatted(
                counted.size() == 1 ? "1 shelf" : counted.size() + " shelves",
                written ? (counted.size() == 1 ? "is" : "are") : "would be"));
    // What a first load counts was never another number, and is no news.
    boolean again = counted.stream().anyMatch(one -> one.before() > 0);
    if (again) {
      Table table = Table.of("item", "before", "after").numbers(1, 2);
      counted.stream()
          .limit(most)
          .forEach(one -> table.row(one.stockCode(), one.before(), one.after()));
      prose.block(table.on(screen));
      if (counted.size() > most) {
        prose.line("and %d more; --all shows them.".formatted(counted.size() - most));
      }
    }
    counted.forEach(one -> ServedText.shortened(prose, one.shortened()));
    return "\n" + prose;
  }
}
