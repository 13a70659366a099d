package hosewright.store.seal;

import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Table;
import org.jooq.impl.DSL;

/**
 * How many rows there are and the sum of their seals: the same in any order, another one when a row
 * is missing, there twice or changed with its seal.
 */
public record RowSum(int rows, long seals) {
  /** Of no rows. */
  public static final RowSum NONE = new RowSum(0, 0);

  /** With one row more. */
  public RowSum with(long seal) {
    return new RowSum(rows + 1, seals + seal);
  }

  /** Of rows as the database adds them up; it reads every one. */
  public static RowSum of(DSLContext context, Table<?> table, Condition which) {
    var row =
        context
            .select(DSL.count(), DSL.sum(Seal.column(table)))
            .from(table)
            .where(which)
            .fetchSingle();
    BigDecimal sum = row.value2() == null ? BigDecimal.ZERO : row.value2();
    // Beyond 64 bits the sum goes round, as adding longs does.
    return new RowSum(row.value1(), sum.toBigInteger().longValue());
  }

  /** The SHA-256 over the seals of rows, least first, in hexadecimal digits. */
  public static String digest(DSLContext context, Table<?> table, Condition which) {
    MessageDigest digest = Seal.sha256();
    try (Cursor<Record1<Long>> seals =
        context
            .select(Seal.column(table))
            .from(table)
            .where(which)
            .orderBy(Seal.column(table))
            .fetchLazy()) {
      for (Record1<Long> row : seals) {
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(row.value1()).flip());
      }
    }
    return HexFormat.of().formatHex(digest.digest());
  }
}
