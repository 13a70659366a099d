package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.FullDisk;
import hosewright.problem.PlainText;
import hosewright.problem.RefusalException;
import hosewright.problem.TroubleException;
import hosewright.problem.TroubleException.Kept;
import java.sql.SQLException;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.commons.lang3.exception.ExceptionUtils;
import org.h2.api.ErrorCode;
import org.h2.mvstore.DataUtils;
import org.h2.mvstore.MVStoreException;
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
    return ExceptionUtils.getThrowableList(failure).stream()
        .filter(SQLException.class::isInstance)
        .map(SQLException.class::cast)
        .flatMap(e -> told(e, where).stream())
        .findFirst();
  }

  /** The failure in the user's words where it is one of these, else as it is. */
  static RuntimeException toldOr(RuntimeException failure, String where) {
    return of(failure, where).map(RuntimeException.class::cast).orElse(failure);
  }

  private static Optional<RefusalException> told(SQLException e, String where) {
    String state = Optional.ofNullable(e.getSQLState()).orElse("");
    if (diskIsFull(e, state)) {
      return Optional.of(trouble(where, "its disk has no room left", Kept.NOTHING));
    }
    if (isOfWriting(e)) {
      return Optional.of(
          trouble(where, "its disk has no room left or cannot be written to", Kept.NOTHING));
    }
    if (Stream.of("40001", "40P01", "55P03", "HYT00").anyMatch(state::equals)) {
      return Optional.of(
          ConflictException.somebodyWasFirst(
              "store",
              "in " + where,
              "is being changed in the same place by somebody else just now, nothing was kept"));
    }
    Optional<RefusalException> ofServer = ofServer(state, where);
    if (ofServer.isPresent()) {
      return ofServer;
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

  /**
   * What befalls a server or the way to it.
   *
   * @param state as PostgreSQL's manual lists them, appendix A, and the driver's own among them
   */
  private static Optional<RefusalException> ofServer(String state, String where) {
    if (isLost(state)) {
      return Optional.of(trouble(where, "the server is gone", Kept.MAYBE));
    }
    if (state.equals("57014")) {
      return Optional.of(trouble(where, "the server broke off what was asked", Kept.NOTHING));
    }
    if (state.equals("22021")) {
      return Optional.of(new BadInputException("text", "", PlainText.ALLOWED));
    }
    return Optional.ofNullable(
            switch (state.length() < 2 ? "" : state.substring(0, 2)) {
              case "53" -> "the server has nothing left to do it with: try again later";
              case "55" -> "the server does not let it be used just now";
              case "58", "60", "F0", "XX" ->
                  "the server met with a failure of its own: ask who looks after it";
              case "28", "3D" -> "the server does not let this user in any more";
              default -> null;
            })
        .map(what -> trouble(where, what, Kept.NOTHING));
  }

  /** Connections that broke, servers that stop or cut off, and ends that nobody heard of. */
  private static boolean isLost(String state) {
    return state.startsWith("08")
        || state.startsWith("57P")
        || Stream.of("25P03", "25P04", "40003").anyMatch(state::equals);
  }

  private static RefusalException trouble(String where, String what, Kept kept) {
    return new TroubleException("store", where, what, kept);
  }

  /** A file that could not be written, told again by what follows without the system's words. */
  static boolean isOfWriting(Throwable failure) {
    return everyFailure(failure)
        .anyMatch(
            one ->
                one instanceof MVStoreException e
                    && e.getErrorCode() == DataUtils.ERROR_WRITING_FAILED);
  }

  /** A failure and what brought it about; of a batch, what comes next too. */
  private static Stream<Throwable> everyFailure(Throwable failure) {
    return failure instanceof SQLException e
        ? StreamSupport.stream(e.spliterator(), false)
        : ExceptionUtils.getThrowableList(failure).stream();
  }

  /** The embedded store passes on the words of the system, of a batch in what comes next. */
  private static boolean diskIsFull(SQLException e, String state) {
    return state.equals("53100")
        || everyFailure(e).map(Throwable::getMessage).anyMatch(FullDisk::isSaid);
  }
}
