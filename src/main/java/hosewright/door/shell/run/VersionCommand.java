package hosewright.door.shell.run;

import hosewright.desk.ProgramVersion;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;

/** Says which Hosewright this is. */
final class VersionCommand extends ShellCommand {

  VersionCommand() {
    super(
        CommandSpec.of(
            "version", Group.SHELL, "Says which version this is and what it runs on", "version"));
  }

  record Version(String version, String java) {}

  @Override
  protected Answer answer(Invocation in) {
    Version version = new Version(ProgramVersion.written(), System.getProperty("java.version"));
    return Answer.of(version, "Hosewright " + version.version() + " on Java " + version.java());
  }
}
