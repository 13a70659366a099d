package hosewright.command;

import hosewright.shell.CommandTrial;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.springframework.beans.factory.ObjectProvider;

/** Books that take the invented demo catalogue on a day its prices are in force. */
final class DemoBooks {
  static final Clock DAY = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

  private DemoBooks() {}

  static ObjectProvider<Books> of(CommandTrial trial) {
    return at(trial, DAY);
  }

  /** The demo books, told the time by a clock of the test's. */
  static ObjectProvider<Books> at(CommandTrial trial, Clock clock) {
    return new ObjectProvider<>() {
      @Override
      public Books getObject() {
        return new Books(trial.workspace(), trial.notices(), clock);
      }
    };
  }
}
