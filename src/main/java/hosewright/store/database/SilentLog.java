package hosewright.store.database;

import org.flywaydb.core.api.logging.Log;
import org.flywaydb.core.api.logging.LogCreator;

/**
 * Keeps migrations off the user's terminal; a migration that fails throws in any case.
 *
 * <p>Public because Flyway makes it itself, from its name.
 */
public final class SilentLog implements Log, LogCreator {
  @Override
  public Log createLogger(Class<?> type) {
    return this;
  }

  @Override
  public boolean isDebugEnabled() {
    return false;
  }

  @Override
  public void debug(String message) {}

  @Override
  public void info(String message) {}

  @Override
  public void warn(String message) {}

  @Override
  public void error(String message) {}

  @Override
  public void error(String message, Exception cause) {}

  @Override
  public void notice(String message) {}
}
