package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

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
    Version version = new Version(built(), System.getProperty("java.version"));
    return Answer.of(version, "Hosewright " + version.version() + " on Java " + version.java());
  }

  private static String built() {
    Properties properties = new Properties();
    try (InputStream in = VersionCommand.class.getResourceAsStream("version.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version");
  }
}
