package hosewright.store.database;

import java.sql.Connection;
import org.h2.api.Trigger;

/** Leaves a file where the embedded store is brought to make one. */
public final class CanaryTrigger implements Trigger {
  public CanaryTrigger() {
    CanaryEngine.sing();
  }

  @Override
  public void fire(Connection connection, Object[] before, Object[] after) {}
}
