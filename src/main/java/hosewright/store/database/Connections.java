package hosewright.store.database;

import java.sql.Connection;
import org.jooq.ConnectionProvider;
import org.jooq.exception.DataAccessException;

/** Connections whose failing to come is told to the user in the same words as a statement's. */
record Connections(ConnectionProvider usual, String where) implements ConnectionProvider {

  @Override
  public Connection acquire() {
    try {
      return usual.acquire();
    } catch (DataAccessException e) {
      throw StoreTrouble.toldOr(e, where);
    }
  }

  @Override
  public void release(Connection connection) {
    try {
      usual.release(connection);
    } catch (DataAccessException e) {
      // What was asked of it is done, or told already; a connection that is gone needs no closing.
    }
  }
}
