package hosewright.door.shell.order;

import hosewright.door.shell.words.Prose;
import hosewright.order.OrderBook.Change;
import java.util.List;

/** Which lines of orders got pieces, or lost them, in words. */
public final class ServedText {
  private ServedText() {}

  /** One sentence for each line that got pieces. */
  static void served(Prose prose, List<Change> served) {
    served.forEach(
        change ->
            prose.line(
                "%d of %s for line %d of %s"
                    .formatted(change.pieces(), change.item(), change.line(), change.order())));
  }

  /** One sentence for each promise there are no longer pieces for. */
  public static void shortened(Prose prose, List<Change> shortened) {
    shortened.forEach(
        change ->
            prose.line(
                "%s is short of %d of %s now, line %d: 'order buy %s' buys what nobody brings."
                    .formatted(
                        change.order(),
                        change.pieces(),
                        change.item(),
                        change.line(),
                        change.order())));
  }
}
