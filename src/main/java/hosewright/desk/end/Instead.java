package hosewright.desk.end;

import hosewright.desk.Books;
import hosewright.desk.Stock;
import hosewright.line.bridge.StockBridges;
import hosewright.line.bridge.StockBridges.Way;
import hosewright.problem.RefusalException;
import hosewright.thread.End;
import hosewright.thread.Mating;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What to buy where two ends do not mate.
 *
 * @param bridge null when there is nothing to name
 * @param sentence the same in words; empty when there is nothing to say
 */
public record Instead(BridgeDocument bridge, String sentence) {
  static final Instead NOTHING = new Instead(null, "");

  /** The shortest bridge in the books, else the adapter to look for elsewhere. */
  static Instead of(End a, End b, Supplier<Books> books) {
    try (Books open = books.get()) {
      return of(a, b, Stock.bridges(open));
    } catch (RefusalException e) {
      // A verdict is a matter of safety: it is given even where the books are out of reach.
      return new Instead(null, "the catalogue cannot be read. " + e.getMessage());
    }
  }

  private static Instead of(End a, End b, StockBridges stock) {
    Optional<Way> shortest = stock.shortest(a, b);
    if (shortest.isPresent()) {
      BridgeDocument bridge = BridgeDocument.of(a, b, shortest.get());
      String neck = bridge.neckIn() == null ? "" : ", which necks to " + bridge.neck();
      String permanent = (bridge.removable() ? "" : ", with a permanent joint") + neck;
      return new Instead(bridge, "an adapter " + bridge.toBuy() + ", " + bridge.cost() + permanent);
    }
    Optional<Way> wanted = Mating.sameByName(a, b) ? Optional.empty() : stock.toSource(a, b);
    return wanted
        .map(way -> BridgeDocument.of(a, b, way))
        .map(way -> new Instead(way, "nothing in the catalogue does it: " + way.inWords()))
        .orElse(NOTHING);
  }
}
