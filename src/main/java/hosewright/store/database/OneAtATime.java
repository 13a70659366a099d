package hosewright.store.database;

import java.util.concurrent.locks.ReentrantLock;
import org.jooq.TransactionContext;
import org.jooq.TransactionProvider;

/**
 * Transactions of the embedded store, of which one runs at a time.
 *
 * <p>Under several threads a rollback of H2 2.4.240 can undo what another transaction has committed
 * to the same row meanwhile, locked or not, so that numbers would be given out twice.
 */
final class OneAtATime implements TransactionProvider {
  private final TransactionProvider usual;
  private final ReentrantLock turn = new ReentrantLock(true);

  OneAtATime(TransactionProvider usual) {
    this.usual = usual;
  }

  @Override
  public void begin(TransactionContext context) {
    turn.lock();
    usual.begin(context);
  }

  /** When it fails a rollback follows, and that lets the next one in. */
  @Override
  public void commit(TransactionContext context) {
    usual.commit(context);
    turn.unlock();
  }

  @Override
  public void rollback(TransactionContext context) {
    try {
      usual.rollback(context);
    } finally {
      turn.unlock();
    }
  }
}
