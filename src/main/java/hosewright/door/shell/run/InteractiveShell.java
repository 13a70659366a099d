package hosewright.door.shell.run;

import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.GlobalOptions;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Standard;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;

/** Reads commands from a person until they leave; a failed command never ends it. */
final class InteractiveShell {
  private static final String PROMPT = "hosewright> ";
  private static final int INTERRUPTED = 130;

  private final CommandRunner commands;
  private final CommandIndex index;
  private final Workspace workspace;
  private final TerminalAsker asker;
  private final Standard standard;
  private final Greeting greeting;

  InteractiveShell(
      CommandRunner commands,
      CommandIndex index,
      Workspace workspace,
      TerminalAsker asker,
      Standard standard,
      Greeting greeting) {
    this.commands = commands;
    this.index = index;
    this.workspace = workspace;
    this.asker = asker;
    this.standard = standard;
    this.greeting = greeting;
  }

  int run(GlobalOptions session) {
    Terminal terminal = asker.terminal();
    boolean newcomer = !Files.exists(workspace.where());
    LineReader reader = reader(terminal, history());
    if (newcomer) {
      say(terminal, greeting.firstTime());
    }
    index.own().problems().forEach(problem -> say(terminal, problem.sentence()));
    say(terminal, "Hosewright. Type help for the commands, quit to leave.");
    while (true) {
      String line;
      try {
        line = reader.readLine(PROMPT).strip();
      } catch (UserInterruptException e) {
        continue;
      } catch (EndOfFileException e) {
        return Answer.DONE;
      }
      if (leaves(line.lines().map(String::strip).toList(), session, terminal)) {
        return Answer.DONE;
      }
    }
  }

  /** Runs every line: what is pasted comes as one text of several. */
  private boolean leaves(List<String> lines, GlobalOptions session, Terminal terminal) {
    boolean several = lines.size() > 1;
    for (String line : lines) {
      if (line.isEmpty() || line.startsWith("#")) {
        continue;
      }
      if (several) {
        say(terminal, PROMPT + line);
      }
      if (command(line, session, terminal).leave()) {
        return true;
      }
    }
    return false;
  }

  private CommandRunner.Outcome command(String line, GlobalOptions session, Terminal terminal) {
    AtomicBoolean pressedBefore = new AtomicBoolean();
    Terminal.SignalHandler usual =
        terminal.handle(Terminal.Signal.INT, signal -> interrupted(terminal, pressedBefore));
    try {
      boolean colour = session.colour().orElse(standard.screen().colour());
      Screen screen = new Screen(Math.max(terminal.getWidth(), 20), colour);
      Output out = new Output(terminal.writer(), screen, standard.pager(terminal::getHeight));
      return commands.line(line, session, out, asker, "");
    } finally {
      terminal.handle(Terminal.Signal.INT, usual);
    }
  }

  // A command may be writing to the store, so it is left to finish unless the person insists.
  private static void interrupted(Terminal terminal, AtomicBoolean pressedBefore) {
    if (pressedBefore.getAndSet(true)) {
      System.exit(INTERRUPTED);
    }
    say(terminal, "Still working; press Ctrl-C again to leave Hosewright.");
  }

  private static void say(Terminal terminal, String sentence) {
    new Output(terminal.writer(), Screen.PIPED).println(sentence);
  }

  /**
   * What was typed, prices and names of customers with it, is for nobody else.
   *
   * @return empty where it cannot be kept, which is no reason to keep a person from their work
   */
  private Optional<Path> history() {
    Path history = workspace.folder().resolve("history");
    if (!WholeFile.mayAddTo(history)) {
      return Optional.empty();
    }
    try {
      OwnerOnly.file(history);
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.of(history);
  }

  private LineReader reader(Terminal terminal, Optional<Path> history) {
    LineReaderBuilder reader =
        LineReaderBuilder.builder()
            .appName("hosewright")
            .terminal(terminal)
            .parser(new LineParser())
            .completer(new LineCompleter(index))
            .option(LineReader.Option.INSERT_TAB, false)
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            // An exclamation mark in a description is just that.
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true);
    history.ifPresent(file -> reader.variable(LineReader.HISTORY_FILE, file));
    return reader.build();
  }
}
