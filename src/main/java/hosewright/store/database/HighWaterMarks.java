package hosewright.store.database;

import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.QUOTE_COUNTER;

import hosewright.store.db.tables.records.OrderCounterRecord;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.jooq.DSLContext;

/**
 * The highest numbers this machine ever saw used, one file for each series, kept outside the store.
 *
 * @param folder the data folder
 * @param ofStore what tells the files of a store on a server from others'; empty for the embedded
 *     one
 */
public record HighWaterMarks(Path folder, String ofStore) {

  /** The marks of an embedded store, beside it. */
  public static HighWaterMarks in(Path folder) {
    return new HighWaterMarks(folder, "");
  }

  static HighWaterMarks of(Server server, Path folder) {
    return new HighWaterMarks(
        folder,
        "-%s-%d-%s"
            .formatted(
                server.host().replaceAll("[^\\w.-]", "_"), server.port(), server.database()));
  }

  public HighWaterMark of(Series series) {
    return new HighWaterMark(series, folder.resolve(file(series, ofStore)), !ofStore.isEmpty());
  }

  /** What the marks say. */
  public Highest read() {
    Map<Series, Integer> numbers = new EnumMap<>(Series.class);
    for (Series series : Series.values()) {
      numbers.put(series, of(series).read());
    }
    return new Highest(numbers);
  }

  /** Raises every mark that is lower. */
  public void raiseTo(Highest other) {
    for (Series series : Series.values()) {
      of(series).raise(other.of(series));
    }
  }

  /** What a store itself has used. */
  public static Highest usedIn(DSLContext store) {
    OrderCounterRecord orders = store.selectFrom(ORDER_COUNTER).fetchSingle();
    return new Highest(
        Map.of(
            Series.QUOTE,
            store.select(QUOTE_COUNTER.LAST_NUMBER).from(QUOTE_COUNTER).fetchSingle().value1(),
            Series.ORDER,
            orders.getLastOrder(),
            Series.PURCHASE,
            orders.getLastPurchase()));
  }

  private static String file(Series series, String ofStore) {
    return "highest-" + series.paper().replace(' ', '-') + "-number" + ofStore + ".txt";
  }
}
