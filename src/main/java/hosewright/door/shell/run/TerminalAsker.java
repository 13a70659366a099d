package hosewright.door.shell.run;

import hosewright.desk.interview.Asker;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Screen;
import hosewright.problem.PlainText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import org.apache.commons.text.WordUtils;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.StringsCompleter;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.springframework.shell.core.InputReader;

/** Asks at the terminal, which is opened only when there is something to ask. */
final class TerminalAsker implements Asker, InputReader, AutoCloseable {
  private Terminal terminal;

  TerminalAsker() {}

  /** Asks at a terminal that is already open. */
  TerminalAsker(Terminal terminal) {
    this.terminal = terminal;
  }

  Terminal terminal() {
    if (terminal == null) {
      try {
        terminal = TerminalBuilder.builder().system(true).build();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    return terminal;
  }

  @Override
  public Optional<String> ask(String prompt, List<String> candidates) {
    LineReader reader =
        LineReaderBuilder.builder()
            .terminal(terminal())
            .completer(new StringsCompleter(candidates.stream().filter(PlainText::is).toList()))
            .variable(LineReader.DISABLE_HISTORY, true)
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .build();
    try {
      return Optional.of(reader.readLine(PlainText.spelt(prompt)).strip());
    } catch (UserInterruptException | EndOfFileException e) {
      return Optional.empty();
    }
  }

  @Override
  public void say(String text) {
    int width = Math.min(Math.max(terminal().getWidth(), 20), 100);
    String margin = " ".repeat(text.length() - text.stripLeading().length());
    new Output(terminal().writer(), new Screen(width, false))
        .println(
            margin
                + WordUtils.wrap(
                    text.strip(), width - margin.length() - 2, "\n" + margin + "  ", false));
  }

  @Override
  public String readInput(String prompt) {
    return ask(prompt, List.of()).orElse("");
  }

  @Override
  public void close() {
    if (terminal != null) {
      try {
        terminal.close();
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
