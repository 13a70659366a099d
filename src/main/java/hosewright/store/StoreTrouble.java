package hosewright.store;

import hosewright.problem.BadInputException;
import hosewright.problem.FullDisk;
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
  static Optional<RuntimeException> of(Throwable failure, String where) {
    Optional<SQLException> first =
        ExceptionUtils.getThrowableList(failure).stream()
            .filter(SQLException.class::isInstance)
            .map(SQLException.class::cast)
            .findFirst();
    return first.flatMap(e -> words(e)).map(words -> new BadInputException("store", where, words));
  }

  private static Optional<String> words(SQLException e) {
    String state = Optional.ofNullable(e.getSQLState()).orElse("");
    if (diskIsFull(e, state)) {
      return Optional.of("a disk with room left: nothing was kept");
    }
    if (Stream.of("40001", "40P01", "55P03", "HYT00").anyMatch(state::equals)) {
      return Optional.of(
          "somebody else is changing the same just now, nothing was kept: try again");
    }
    if (state.startsWith("08") || state.startsWith("57P")) {
      return Optional.of(
          "the server is gone: whether the last step was kept is not known, look before you"
              + " repeat it");
    }
    if (state.equals("25006") || e.getErrorCode() == ErrorCode.DATABASE_IS_READ_ONLY) {
      return Optional.of("a store that may be written to");
    }
    if (state.equals("42501")) {
      return Optional.of("a database in which this user may make tables and write");
    }
    return Optional.empty();
  }

  /** The embedded store passes on the words of the system. */
  private static boolean diskIsFull(SQLException e, String state) {
    return state.equals("53100")
        || ExceptionUtils.getThrowableList(e).stream()
            .map(Throwable::getMessage)
            .anyMatch(FullDisk::isSaid);
  }
}
