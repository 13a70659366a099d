package hosewright.store.database;

import org.jooq.DSLContext;
import org.jooq.SQLDialect;
import org.jooq.Table;

/** Lets processes that would rewrite the same rows do so one after the other. */
public final class Turns {
  private Turns() {}

  /**
   * Waits until nobody else changes a table, and keeps others from it until the transaction ends;
   * who only reads is not held up. The embedded store has one process in it and needs none of this.
   */
  public static void take(DSLContext inside, Table<?> table) {
    if (inside.family() == SQLDialect.POSTGRES) {
      inside.execute("LOCK TABLE {0} IN EXCLUSIVE MODE", table);
    }
  }
}
