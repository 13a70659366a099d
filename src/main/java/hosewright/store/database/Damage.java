package hosewright.store.database;

import hosewright.store.folder.DataFolder;
import java.io.EOFException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.lang3.exception.ExceptionUtils;
import org.h2.api.ErrorCode;
import org.h2.mvstore.MVStoreException;
import org.jooq.ExecuteContext;
import org.jooq.ExecuteListener;
import org.jooq.ExecuteType;

/**
 * Tells by what H2 ran into that the file of an embedded store is damaged, at once or when the
 * place is read.
 */
record Damage(Path folder) implements ExecuteListener {
  private static final long serialVersionUID = 1L;

  /** Not every damage is found out as such: H2 also reports whatever its readers stumbled over. */
  private static final Set<Integer> CODES =
      Set.of(
          ErrorCode.FILE_CORRUPTED_1,
          ErrorCode.FILE_VERSION_ERROR_1,
          ErrorCode.GENERAL_ERROR_1,
          // A value of another type than its column has: no statement of ours converts any.
          ErrorCode.DATA_CONVERSION_ERROR_1,
          ErrorCode.ROW_NOT_FOUND_IN_PRIMARY_INDEX,
          ErrorCode.ROW_NOT_FOUND_WHEN_DELETING_1);

  /** Class of SQLSTATE (ISO/IEC 9075-2, table 43). */
  private static final String DATA_EXCEPTION = "22";

  @Override
  public void exception(ExecuteContext executed) {
    if (executed.sqlException() != null) {
      of(executed.sqlException())
          .or(() -> isMisread(executed) ? Optional.of(told()) : Optional.empty())
          .ifPresent(executed::exception);
    }
  }

  /** Values kept as one type and taken for another: what we ask for converts and computes none. */
  private static boolean isMisread(ExecuteContext executed) {
    String state = executed.sqlException().getSQLState();
    return executed.type() == ExecuteType.READ
        && state != null
        && state.startsWith(DATA_EXCEPTION)
        && executed.sqlException().getErrorCode() != ErrorCode.LIKE_ESCAPE_ERROR_1;
  }

  /** What to tell the user; empty when something else is the matter. */
  Optional<DamagedStoreException> of(Throwable failure) {
    // A store that cannot be written stays as it was.
    boolean found =
        !StoreTrouble.isOfWriting(failure)
            && ExceptionUtils.getThrowableList(failure).stream()
                .anyMatch(
                    one ->
                        one instanceof MVStoreException
                            || one instanceof EOFException
                            || one instanceof SQLException e
                                && (CODES.contains(e.getErrorCode()) || isUnreadable(e)));
    return found ? Optional.of(told()) : Optional.empty();
  }

  /** A value that its type does not have, such as a day beyond every calendar; jOOQ's words. */
  private static boolean isUnreadable(SQLException e) {
    return e.getErrorCode() == 0
        && e.getMessage() != null
        && e.getMessage().startsWith("Error while reading field");
  }

  DamagedStoreException told() {
    return new DamagedStoreException(
        folder,
        DataFolder.lastBackup(folder)
            .map(last -> ", the last one with: data restore " + last)
            .orElse(""));
  }
}
