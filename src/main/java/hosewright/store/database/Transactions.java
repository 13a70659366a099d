package hosewright.store.database;

import org.jooq.TransactionContext;
import org.jooq.TransactionProvider;
import org.jooq.exception.DataAccessException;

/** Transactions whose end, when it fails, is told to the user in the same words as a statement. */
record Transactions(TransactionProvider usual, String where) implements TransactionProvider {

  @Override
  public void begin(TransactionContext context) {
    try {
      usual.begin(context);
    } catch (DataAccessException e) {
      throw StoreTrouble.toldOr(e, where);
    }
  }

  @Override
  public void commit(TransactionContext context) {
    try {
      usual.commit(context);
    } catch (DataAccessException e) {
      throw StoreTrouble.toldOr(e, where);
    }
  }

  @Override
  public void rollback(TransactionContext context) {
    try {
      usual.rollback(context);
    } catch (DataAccessException e) {
      throw StoreTrouble.toldOr(e, where);
    }
  }
}
