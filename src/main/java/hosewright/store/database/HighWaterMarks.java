package hosewright.store.database;

import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.QUOTE_COUNTER;

import hosewright.store.db.tables.records.OrderCounterRecord;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
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
  static HighWaterMarks in(Path folder) {
    return new HighWaterMarks(folder, "");
  }

  static HighWaterMarks of(Server server, Path folder) {
    return new HighWaterMarks(
        folder,
        "-%s-%d-%s"
            .formatted(
                server.host().replaceAll("[^\\w.-]", "_"), server.port(), server.database()));
  }

  /** The names of an embedded store's files. */
  static List<String> files() {
    return Arrays.stream(Series.values()).map(series -> file(series, "")).toList();
  }

  public HighWaterMark of(Series series) {
    return new HighWaterMark(series, folder.resolve(file(series, ofStore)), !ofStore.isEmpty());
  }

  /** Raises every mark that is lower than another's. */
  void raiseTo(HighWaterMarks other) {
    for (Series series : Series.values()) {
      of(series).raise(other.of(series).read());
    }
  }

  /** Raises every mark to what a store has used, before another is put in its place. */
  void remember(DSLContext store) {
    of(Series.QUOTE)
        .raise(store.select(QUOTE_COUNTER.LAST_NUMBER).from(QUOTE_COUNTER).fetchSingle().value1());
    OrderCounterRecord orders = store.selectFrom(ORDER_COUNTER).fetchSingle();
    of(Series.ORDER).raise(orders.getLastOrder());
    of(Series.PURCHASE).raise(orders.getLastPurchase());
  }

  private static String file(Series series, String ofStore) {
    return "highest-" + series.paper().replace(' ', '-') + "-number" + ofStore + ".txt";
  }
}
