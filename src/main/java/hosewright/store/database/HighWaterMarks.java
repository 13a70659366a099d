package hosewright.store.database;

import static hosewright.store.db.Tables.CUSTOMER_ORDER;
import static hosewright.store.db.Tables.ORDER_COUNTER;
import static hosewright.store.db.Tables.ORDER_VOID;
import static hosewright.store.db.Tables.PURCHASE_ORDER;
import static hosewright.store.db.Tables.QUOTE;
import static hosewright.store.db.Tables.QUOTE_COUNTER;
import static hosewright.store.db.Tables.QUOTE_VOID;

import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.problem.TroubleException;
import hosewright.store.db.tables.records.OrderCounterRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
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

  /** Every mark that was set right by hand; never rewritten. */
  private static final String LOG = "number-marks.log";

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

  /**
   * Sets one mark right, and writes the step into a log beside the marks that only grows.
   *
   * @param step who takes it when, and why
   */
  public Corrected setRight(DSLContext store, Series series, int number, Step step) {
    Path log = folder.resolve(LOG);
    refuseOther(log);
    String before = of(series).setRight(number, usedIn(store).of(series));
    String line =
        String.join(
            "\t",
            step.at().truncatedTo(ChronoUnit.SECONDS).toString(),
            onOneLine(step.by()),
            of(series).file().getFileName().toString(),
            onOneLine(before),
            String.valueOf(number),
            onOneLine(step.reason()));
    try (FileChannel channel = FileChannel.open(log, WholeFile.adding(), OwnerOnly.newFile(log))) {
      channel.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)));
      channel.force(true);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Corrected(of(series).file(), before, number, log);
  }

  /** Without its reason on the record no mark is set. */
  private static void refuseOther(Path log) {
    if (!WholeFile.mayAddTo(log)) {
      throw new TroubleException(
          "log of the marks",
          log.toString(),
          "a link, a folder or a device lies in its place: remove it, then set the mark",
          TroubleException.Kept.NOTHING);
    }
  }

  /** Who sets a mark right when, and why. */
  public record Step(Instant at, String by, String reason) {}

  /**
   * A mark that was set right.
   *
   * @param before as it stood in the file
   */
  public record Corrected(Path file, String before, int number, Path log) {}

  /** Text that cannot pass for two lines or cells of the log. */
  private static String onOneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
  }

  /**
   * At most the numbers that the papers in a store can have: no counter of ours is beyond them,
   * since every number has a paper or a note that it is lost.
   */
  public static Highest papersIn(DSLContext store) {
    int lost = store.fetchCount(ORDER_VOID);
    return new Highest(
        Map.of(
            Series.QUOTE,
            store.fetchCount(QUOTE) + store.fetchCount(QUOTE_VOID),
            Series.ORDER,
            store.fetchCount(CUSTOMER_ORDER) + lost,
            Series.PURCHASE,
            store.fetchCount(PURCHASE_ORDER) + lost));
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
