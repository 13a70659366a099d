package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.command.GlobalOptions;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jline.terminal.Size;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person at a terminal, played by keys that are pressed once something has appeared. */
final class InteractiveShellTest {
  private static final String PROMPT = "hosewright> ";
  private static final String CTRL_C = "\u0003";
  private static final String CTRL_D = "\u0004";

  @TempDir private Path data;

  @Test
  void a_failed_command_and_an_empty_line_do_not_end_the_shell() throws IOException {
    String screen =
        typing(
            at(PROMPT, "verson\r"),
            at(PROMPT, "\r"),
            at(PROMPT, "probe echo --text here\r"),
            at(PROMPT, "quit\r"));
    assertThat(screen).contains("said here");
  }

  @Test
  void ctrl_c_drops_the_line_and_ctrl_d_leaves() throws IOException {
    String screen =
        typing(
            at(PROMPT, "probe echo --text dropped"),
            at("dropped", CTRL_C),
            at(PROMPT, "probe echo --text kept\r"),
            at(PROMPT, CTRL_D));
    assertThat(screen).contains("said kept").doesNotContain("said dropped");
  }

  @Test
  void a_newcomer_is_greeted_once() throws IOException {
    Files.delete(data);
    assertThat(typing(at(PROMPT, "quit\r"))).startsWith("Welcome.");
    assertThat(typing(at(PROMPT, "quit\r"))).doesNotContain("Welcome.");
  }

  @Test
  void history_is_kept_in_the_data_folder() throws IOException {
    typing(at(PROMPT, "probe echo --text remembered\r"), at(PROMPT, "exit\r"));
    assertThat(Files.readString(data.resolve("history"))).contains("probe echo --text remembered");
  }

  @Test
  void no_history_is_written_through_a_link() throws IOException {
    Path other = Files.writeString(data.resolve("other"), "untouched");
    Files.createSymbolicLink(data.resolve("history"), other);

    assertThat(typing(at(PROMPT, "probe echo --text here\r"), at(PROMPT, "exit\r")))
        .contains("said here");

    assertThat(other).hasContent("untouched");
  }

  @Test
  void answers_to_questions_stay_out_of_the_history() throws IOException {
    String screen =
        typing(at(PROMPT, "probe ask\r"), at("name? ", "Quillback\r"), at(PROMPT, "quit\r"));
    assertThat(screen).contains("hello Quillback");
    assertThat(Files.readString(data.resolve("history"))).doesNotContain("Quillback");
  }

  @Test
  void ctrl_c_at_a_question_goes_back_to_the_prompt() throws IOException {
    String screen = typing(at(PROMPT, "probe ask\r"), at("name? ", CTRL_C), at(PROMPT, "quit\r"));
    assertThat(screen).contains("hello nobody");
  }

  @Test
  void tab_twice_picks_what_is_wanted_first_and_joins_no_words() throws IOException {
    String screen =
        typingAtTheSystem(
            at(PROMPT, "probe paper \t\t\t\r\r"),
            at(PROMPT, "probe paper x --as \t\t\r\r"),
            at(PROMPT, "quit\r"));
    assertThat(screen).contains("paper Q-000002 as nothing").contains("paper x as csv");
  }

  @Test
  void a_value_of_several_words_is_completed_in_quotes_that_are_closed() throws IOException {
    String screen =
        typingAtTheSystem(at(PROMPT, "probe paper x --end \"2.5 NH f\t\r"), at(PROMPT, "quit\r"));
    assertThat(screen).contains("x as nothing on 2.5 NH female swivel");
  }

  @Test
  void every_command_of_a_paste_is_run() throws IOException {
    String paste = "\u001b[200~probe echo --text one\nprobe echo --text two\n\u001b[201~";
    String screen =
        typingAtTheSystem(
            at(PROMPT, paste + "\r"), at("said two\r\n\u001b[?2004h" + PROMPT, "quit\r"));
    assertThat(screen).contains("said one").contains("said two");
  }

  /** Keys to press once the text has appeared. */
  private record Step(String appears, String keys) {}

  private static Step at(String appears, String keys) {
    return new Step(appears, keys);
  }

  /** Takes each step in turn and gives all that was shown, once the shell has been left. */
  private String typing(Step... steps) throws IOException {
    return typing(
        (keyboard, display) ->
            new ExternalTerminal("test", "ansi", keyboard, display, StandardCharsets.UTF_8),
        steps);
  }

  /** The same through a pseudo-terminal of the system. */
  private String typingAtTheSystem(Step... steps) throws IOException {
    return typing(
        (keyboard, display) ->
            TerminalBuilder.builder()
                .system(false)
                .name("test")
                .type("ansi")
                .streams(keyboard, display)
                .encoding(StandardCharsets.UTF_8)
                .size(new Size(80, 24))
                .build(),
        steps);
  }

  /** Makes a terminal between a person's keys and what they see. */
  private interface TerminalMaker {
    Terminal terminal(InputStream keyboard, OutputStream display) throws IOException;
  }

  private String typing(TerminalMaker make, Step... steps) throws IOException {
    PipedOutputStream keys = new PipedOutputStream();
    Display display = new Display(keys, List.of(steps));
    try (PipedInputStream keyboard = new PipedInputStream(keys);
        Terminal terminal = make.terminal(keyboard, display);
        TerminalAsker asker = new TerminalAsker(terminal)) {
      Shells shell = new Shells(data);
      int exitCode =
          new InteractiveShell(
                  shell.runner,
                  shell.index,
                  shell.workspace,
                  asker,
                  shell.standard,
                  new Greeting("Welcome."))
              .run(GlobalOptions.of(List.of()));
      assertThat(exitCode).isZero();
      return display.toString();
    }
  }

  /** What is shown; the next step is taken when the text it waits for has been shown. */
  private static final class Display extends OutputStream {
    private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
    private final OutputStream keys;
    private final Deque<Step> steps;
    private int read;

    Display(OutputStream keys, List<Step> steps) {
      this.keys = keys;
      this.steps = new ArrayDeque<>(steps);
    }

    @Override
    public synchronized void write(int b) throws IOException {
      shown.write(b);
      if (!steps.isEmpty() && toString().substring(read).endsWith(steps.peek().appears())) {
        read = shown.size();
        keys.write(steps.remove().keys().getBytes(StandardCharsets.UTF_8));
        keys.flush();
      }
    }

    @Override
    public synchronized String toString() {
      return shown.toString(StandardCharsets.UTF_8);
    }
  }
}
