package hosewright.store;

import org.flywaydb.core.api.logging.Log;

/** Keeps migrations off the user's terminal; a migration that fails throws in any case. */
final class SilentLog implements Log {
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
