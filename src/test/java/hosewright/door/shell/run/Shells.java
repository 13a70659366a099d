package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.ProbeCommands;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.springframework.shell.core.command.CommandRegistry;

/** A shell with the probe commands in it. */
public final class Shells {
  final Workspace workspace;
  public final CommandIndex index;
  public final CommandLineParser parser;
  final CommandRunner runner;
  final Standard standard = new Standard(false, StandardCharsets.UTF_8, Screen.PIPED);

  public Shells(Path data) {
    workspace = new Workspace(Map.of("HOSEWRIGHT_DATA", data.toString()));
    CommandRegistry registry = new CommandRegistry(new LinkedHashSet<>());
    index = new CommandIndex(registry, workspace);
    Set.of(
            new VersionCommand(),
            new QuitCommand(),
            new HelpCommand(index),
            new ProbeCommands.Echo(),
            new ProbeCommands.Ask(),
            new ProbeCommands.Paper(),
            new ProbeCommands.Unsafe(),
            new ProbeCommands.Keep(workspace))
        .forEach(registry::registerCommand);
    parser = new CommandLineParser(index);
    runner = new CommandRunner(registry, parser, new FailureReport(workspace, standard));
  }
}
