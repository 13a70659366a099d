package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

final class LookalikesDocumentTest {

  @Test
  void the_list_names_every_pair_and_no_other() throws IOException {
    List<String> wanted =
        Lookalike.all().stream()
            .map(
                pair ->
                    String.format(
                        Locale.ROOT,
                        "| %s | %s | %.4f |",
                        pair.a().toString().replace(" male", ""),
                        pair.b().toString().replace(" male", ""),
                        pair.gapIn()))
            .toList();

    assertThat(Files.readAllLines(Path.of("src/docs/lookalike-threads.md")))
        .filteredOn(line -> line.matches("\\| .* \\| [0-9.]+ \\|"))
        .containsExactlyElementsOf(wanted);
  }
}
