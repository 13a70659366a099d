package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.util.Map;

/** Ends a session or a script; the session watches for its name. */
final class QuitCommand extends ShellCommand {
  static final String NAME = "quit";

  QuitCommand() {
    super(
        CommandSpec.of(NAME, Group.SHELL, "Leaves the shell, or ends a script here", NAME)
            .alias("exit"));
  }

  @Override
  protected Answer answer(Invocation in) {
    return Answer.of(Map.of("done", true), "");
  }
}
