package hosewright.door.shell;

import hosewright.desk.Books;
import hosewright.door.shell.option.WorkspacePlace;
import hosewright.door.shell.run.CommandTrial;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.function.Supplier;

/** Books that take the invented demo catalogue on a day its prices are in force. */
public final class DemoBooks {
  static final Clock DAY = Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

  private DemoBooks() {}

  public static Supplier<Books> of(CommandTrial trial) {
    return at(trial, DAY);
  }

  /** The demo books, told the time by a clock of the test's. */
  static Supplier<Books> at(CommandTrial trial, Clock clock) {
    WorkspacePlace place = new WorkspacePlace(trial.workspace());
    return () -> new Books(place, trial.notices()::say, clock, trial.lastRead());
  }
}
