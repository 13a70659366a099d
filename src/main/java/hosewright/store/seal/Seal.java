package hosewright.store.seal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/**
 * A row's seal: 64 bits worked out of its table's name and of all its values, its key among them.
 *
 * <p>A text as long as a document stands in it by its SHA-256, which the row keeps beside it, so
 * that a list need not read documents to check its rows. Empty columns count for nothing: a column
 * that a later migration adds, empty, breaks no seal.
 */
public final class Seal {
  private static final String COLUMN = "SEAL";
  private static final String DOCUMENT = "DOCUMENT";
  private static final String DIGEST = "DOCUMENT_DIGEST";

  private static final Map<String, SealedColumns> KNOWN = new ConcurrentHashMap<>();

  private Seal() {}

  /** Whether the rows of a table are sealed. */
  public static boolean isOn(Table<?> table) {
    return columns(table).sealed();
  }

  /** The column of a table that holds the seals. */
  public static Field<Long> column(Table<?> table) {
    return Objects.requireNonNull(table.field(COLUMN, Long.class), "sealed");
  }

  /** Seals a row as its values are now; the database keeps times to the microsecond. */
  public static void put(Record row, Table<?> table) {
    for (Field<?> field : row.fields()) {
      if (row.get(field) instanceof OffsetDateTime time) {
        row.set(field.coerce(OffsetDateTime.class), time.truncatedTo(ChronoUnit.MICROS));
      }
    }
    Field<String> document = row.field(DOCUMENT, String.class);
    if (document != null) {
      row.set(table.field(DIGEST, String.class), digest(row.get(document)));
    }
    row.set(column(table), columns(table).sealOf(row));
  }

  /**
   * Whether a row reads as it was sealed.
   *
   * @param row has all columns of its table; it may lack the document
   */
  public static boolean holds(Record row, Table<?> table) {
    SealedColumns columns = columns(table);
    Long sealed = columns.kept(row);
    if (sealed == null || sealed != columns.sealOf(row)) {
      return false;
    }
    Field<String> document = columns.documented() ? row.field(DOCUMENT, String.class) : null;
    return document == null || digest(row.get(document)).equals(row.get(DIGEST, String.class));
  }

  /** The SHA-256 of a text in UTF-8, in hexadecimal digits. */
  public static String digest(String text) {
    return HexFormat.of().formatHex(sha256().digest(text.getBytes(StandardCharsets.UTF_8)));
  }

  /** A fresh SHA-256. */
  public static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static SealedColumns columns(Table<?> table) {
    return KNOWN.computeIfAbsent(
        table.getName(), name -> SealedColumns.of(table, COLUMN, DOCUMENT));
  }
}
