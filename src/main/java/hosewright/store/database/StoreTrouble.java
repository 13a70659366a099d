package hosewright.store.database;

import hosewright.problem.ConflictException;
import hosewright.problem.FullDisk;
import hosewright.problem.RefusalException;
import hosewright.problem.TroubleException;
import hosewright.problem.TroubleException.Kept;
import java.sql.SQLException;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.lang3.exception.ExceptionUtils;
import org.h2.api.ErrorCode;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;

/**
 * Says in the user's words what may befall a store that is in order itself: somebody else holds
 * what is wanted, the disk is full, the server is gone.
 */
record StoreTrouble(String where) implements ExecuteListener {
  private static final long serialVersionUID = 1L;

  @Override
  public void exception(ExecuteContext executed) {
    if (executed.sqlException() != null) {
      of(executed.sqlException(), where).ifPresent(executed::exception);
    }
  }

  /**
   * What to tell the user; empty for what only a fault of this program brings about.
   *
   * @param where the store, as the user knows it
   */
  static Optional<RefusalException> of(Throwable failure, String where) {
    Optional<SQLException> first =
        ExceptionUtils.getThrowableList(failure).stream()
            .filter(SQLException.class::isInstance)
            .map(SQLException.class::cast)
            .findFirst();
    return first.flatMap(e -> told(e, where));
  }

  private static Optional<RefusalException> told(SQLException e, String where) {
    String state = Optional.ofNullable(e.getSQLState()).orElse("");
    if (diskIsFull(e, state)) {
      return Optional.of(trouble(where, "its disk has no room left", Kept.NOTHING));
    }
    if (Stream.of("40001", "40P01", "55P03", "HYT00").anyMatch(state::equals)) {
      return Optional.of(
          ConflictException.somebodyWasFirst(
              "store",
              "in " + where,
              "is being changed in the same place by somebody else just now, nothing was kept"));
    }
    if (state.startsWith("08") || state.startsWith("57P")) {
      return Optional.of(trouble(where, "the server is gone", Kept.MAYBE));
    }
    if (state.equals("25006") || e.getErrorCode() == ErrorCode.DATABASE_IS_READ_ONLY) {
      return Optional.of(trouble(where, "it may not be written to", Kept.NOTHING));
    }
    if (state.equals("42501")) {
      return Optional.of(
          trouble(where, "this user may not make tables and write in it", Kept.NOTHING));
    }
    return Optional.empty();
  }

  private static RefusalException trouble(String where, String what, Kept kept) {
    return new TroubleException("store", where, what, kept);
  }

  /** The embedded store passes on the words of the system. */
  private static boolean diskIsFull(SQLException e, String state) {
    return state.equals("53100")
        || ExceptionUtils.getThrowableList(e).stream()
            .map(Throwable::getMessage)
            .anyMatch(FullDisk::isSaid);
  }
}
