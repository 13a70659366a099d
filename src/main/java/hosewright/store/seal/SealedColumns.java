package hosewright.store.seal;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.TableRecord;

/**
 * The columns that a table's seals are worked out of, each value written one way whatever the
 * database: a sum of money is the same with two decimals or four, a moment in any time zone.
 */
final class SealedColumns {
  private static final int ROOM = 1024;

  private final byte[] table;
  private final Field<?>[] fields;
  private final int[] places;
  private final int width;
  private final Field<Long> kept;
  private final int keptAt;
  private final boolean documented;
  private final int[] names;
  private final int[] scales;

  private SealedColumns(Table<?> table, String seal, String document) {
    List<Field<?>> fields =
        Arrays.stream(table.fields())
            .filter(field -> !field.getName().equals(seal) && !field.getName().equals(document))
            .toList();
    this.kept = table.field(seal, Long.class);
    this.keptAt = kept == null ? -1 : table.indexOf(kept);
    this.documented = table.field(document) != null;
    this.table = table.getName().getBytes(StandardCharsets.UTF_8);
    this.fields = fields.toArray(Field[]::new);
    this.places = fields.stream().mapToInt(table::indexOf).toArray();
    this.width = table.fields().length;
    this.names = fields.stream().mapToInt(field -> field.getName().hashCode()).toArray();
    this.scales = fields.stream().mapToInt(field -> field.getDataType().scale()).toArray();
  }

  /**
   * The columns of a table.
   *
   * @param seal the name of the one that keeps the seal
   * @param document the name of the one that is held by a digest beside it
   */
  static SealedColumns of(Table<?> table, String seal, String document) {
    return new SealedColumns(table, seal, document);
  }

  /** Whether the rows of the table are sealed. */
  boolean sealed() {
    return kept != null;
  }

  /** Whether a document stands in the rows of the table. */
  boolean documented() {
    return documented;
  }

  /** The seal that a row keeps; null where it keeps none. */
  Long kept(Record row) {
    return isWhole(row) ? (Long) row.get(keptAt) : row.get(kept);
  }

  /** Looking a column up among all would take most of the time, for every row of a catalogue. */
  private boolean isWhole(Record row) {
    return row instanceof TableRecord && row.size() == width;
  }

  long sealOf(Record row) {
    boolean whole = isWhole(row);
    ByteBuffer bytes = ByteBuffer.allocate(ROOM).put(table);
    for (int i = 0; i < fields.length; i++) {
      Object value = whole ? row.get(places[i]) : row.get(fields[i]);
      if (value != null) {
        bytes = put(roomy(bytes, 2 * Integer.BYTES).putInt(names[i]), value, scales[i]);
      }
    }
    // Two sums by different polynomials: one alone would miss a change in four thousand million.
    CRC32C castagnoli = new CRC32C();
    castagnoli.update(bytes.array(), 0, bytes.position());
    CRC32 usual = new CRC32();
    usual.update(bytes.array(), 0, bytes.position());
    return castagnoli.getValue() << 32 | usual.getValue();
  }

  private static ByteBuffer put(ByteBuffer bytes, Object value, int scale) {
    if (value instanceof String text) {
      byte[] written = text.getBytes(StandardCharsets.UTF_8);
      return roomy(bytes, written.length + Integer.BYTES).putInt(written.length).put(written);
    }
    return roomy(bytes, Long.BYTES).putLong(number(value, scale));
  }

  private static long number(Object value, int scale) {
    if (value instanceof Double number) {
      // Databases know no negative zero.
      return Double.doubleToLongBits(number + 0.0);
    }
    if (value instanceof Integer || value instanceof Long) {
      return ((Number) value).longValue();
    }
    if (value instanceof BigDecimal number) {
      return number.setScale(scale, RoundingMode.HALF_UP).unscaledValue().longValueExact();
    }
    if (value instanceof LocalDate day) {
      return day.toEpochDay();
    }
    if (value instanceof Boolean yes) {
      return yes ? 1 : 0;
    }
    if (value instanceof OffsetDateTime time) {
      Instant moment = time.toInstant();
      return moment.getEpochSecond() * 1_000_000 + moment.getNano() / 1_000;
    }
    throw new IllegalArgumentException("no way to seal a " + value.getClass().getName());
  }

  private static ByteBuffer roomy(ByteBuffer bytes, int more) {
    if (bytes.remaining() >= more) {
      return bytes;
    }
    ByteBuffer larger = ByteBuffer.allocate(2 * (bytes.capacity() + more));
    return larger.put(bytes.flip());
  }
}
