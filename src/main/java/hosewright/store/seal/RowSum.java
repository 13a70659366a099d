package hosewright.store.seal;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.jooq.Condition;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record1;
import org.jooq.Table;

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

  /**
   * What is read of rows to seal them together.
   *
   * @param digest the SHA-256 over their seals, least first, in hexadecimal digits
   */
  public record Read(RowSum sum, String digest) {}

  /** Reads the seals of rows, every one. */
  public static Read of(DSLContext context, Table<?> table, Condition which) {
    RowSum sum = NONE;
    MessageDigest digest = Seal.sha256();
    try (Cursor<Record1<Long>> seals =
        context
            .select(Seal.column(table))
            .from(table)
            .where(which)
            .orderBy(Seal.column(table))
            .fetchLazy()) {
      for (Record1<Long> row : seals) {
        sum = sum.with(row.value1());
        digest.update(ByteBuffer.allocate(Long.BYTES).putLong(row.value1()).flip());
      }
    }
    return new Read(sum, HexFormat.of().formatHex(digest.digest()));
  }
}
