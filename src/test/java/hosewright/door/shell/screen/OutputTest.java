package hosewright.door.shell.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OutputTest {
  private static final String TEXT =
      "NO SAFE PLAN.\nTake care\n  - watch it\nitem qty\n--------\na      1";

  @TempDir private Path folder;

  @Test
  void colour_is_used_where_wanted_and_takes_no_word_away() {
    String plain = shown(new Screen(80, false), Optional.empty());
    String coloured = shown(new Screen(80, true), Optional.empty());

    assertThat(plain).isEqualTo(TEXT + "\n");
    assertThat(coloured).contains("\u001B[1;31mNO SAFE PLAN\u001B[0m", "\u001B[1mitem qty");
    assertThat(coloured.replaceAll("\u001B\\[[0-9;]*m", "")).isEqualTo(plain);
  }

  @Test
  void what_was_asked_for_on_the_command_line_wins() {
    StringWriter text = new StringWriter();
    new Output(text, new Screen(80, true)).coloured(Optional.of(false)).answer(TEXT);
    assertThat(text.toString()).isEqualTo(TEXT + "\n");
  }

  @Test
  void what_others_wrote_steers_no_terminal_with_colour_on() {
    StringWriter text = new StringWriter();
    new Output(text, new Screen(80, true)).answer("a \u001B[31mname");
    assertThat(text.toString()).contains("{U+001B}[31mname");
  }

  @Test
  void only_what_is_longer_than_the_screen_goes_to_the_pager() throws Exception {
    Path paged = folder.resolve("paged");
    Pager pager =
        new Pager(() -> 5, StandardCharsets.UTF_8, Map.of("PAGER", "cat > '" + paged + "'"));

    assertThat(shown(new Screen(80, false), Optional.of(pager))).isEmpty();
    assertThat(Files.readString(paged)).isEqualTo(TEXT + "\n");
    assertThat(pager.shows("short")).isFalse();
  }

  @Test
  void where_the_pager_cannot_be_started_the_answer_is_printed() {
    Pager pager =
        new Pager(
            () -> 5, StandardCharsets.UTF_8, Map.of("PAGER", folder.resolve("none") + " 2>&-"));
    assertThat(shown(new Screen(80, false), Optional.of(pager))).isEqualTo(TEXT + "\n");
  }

  private static String shown(Screen screen, Optional<Pager> pager) {
    StringWriter text = new StringWriter();
    new Output(text, screen, pager).answer(TEXT);
    return text.toString();
  }
}
