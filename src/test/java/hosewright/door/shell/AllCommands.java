package hosewright.door.shell;

import hosewright.door.shell.run.CommandTrial;
import java.time.Clock;
import java.util.List;
import org.springframework.shell.core.command.Command;

/** Every command of the trade, over books on a day of the demo catalogue. */
public final class AllCommands {
  private AllCommands() {}

  public static List<Command> of(CommandTrial trial) {
    return of(trial, DemoBooks.DAY);
  }

  static List<Command> of(CommandTrial trial, Clock clock) {
    return Commands.over(DemoBooks.at(trial, clock), trial.workspace(), trial.notices());
  }
}
