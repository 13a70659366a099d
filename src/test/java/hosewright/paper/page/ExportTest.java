package hosewright.paper.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class ExportTest {

  @TempDir Path folder;

  @Test
  void an_existing_file_is_kept_unless_overwriting_was_asked_for() throws IOException {
    write("paper.csv", false, "first");

    assertThatThrownBy(() -> write("paper.csv", false, "second"))
        .isInstanceOfSatisfying(
            BadInputException.class, e -> assertThat(e.problems().get(0).field()).isEqualTo("out"));
    assertThat(folder.resolve("paper.csv")).hasContent("first");

    write("paper.csv", true, "third");
    assertThat(folder.resolve("paper.csv")).hasContent("third");
  }

  @Test
  void a_file_that_appears_meanwhile_is_kept_too() throws IOException {
    Export export = Export.to(folder, "paper.csv", false);
    Files.writeString(folder.resolve("paper.csv"), "theirs");

    assertThatThrownBy(() -> export.write(out -> out.write('x')))
        .isInstanceOf(BadInputException.class);
    assertThat(folder.resolve("paper.csv")).hasContent("theirs");
    assertThat(folder).isDirectoryNotContaining(file -> !file.endsWith("paper.csv"));
  }

  @ParameterizedTest
  @CsvSource({"theirs.txt", "not-there-yet.txt"})
  void a_link_in_the_place_of_a_paper_is_refused_whatever_it_points_at(String pointedAt)
      throws IOException {
    Path theirs = Files.writeString(folder.resolve("theirs.txt"), "theirs");
    Files.createSymbolicLink(folder.resolve("paper.csv"), folder.resolve(pointedAt));

    for (boolean overwrite : new boolean[] {false, true}) {
      assertThatThrownBy(() -> write("paper.csv", overwrite, "ours"))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining("a link lies there");
    }
    assertThat(theirs).hasContent("theirs");
    assertThat(folder.resolve("not-there-yet.txt")).doesNotExist();
  }

  @Test
  void a_failure_half_way_leaves_nothing_behind() throws IOException {
    write("kept.csv", false, "kept");

    assertThatThrownBy(
            () ->
                Export.to(folder, "kept.csv", true)
                    .write(
                        out -> {
                          out.write('x');
                          throw new IOException("disk full");
                        }))
        .hasMessage("disk full");

    assertThat(folder.resolve("kept.csv")).hasContent("kept");
    assertThat(folder).isDirectoryNotContaining(file -> !file.endsWith("kept.csv"));
  }

  @Test
  void a_folder_that_cannot_be_written_to_is_bad_input() throws IOException {
    Path file = Files.writeString(folder.resolve("not-a-folder"), "");

    for (Path wrong : new Path[] {file, folder.resolve("missing")}) {
      assertThatThrownBy(() -> Export.to(wrong, "paper.csv", false))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining("out cannot be '" + wrong + "'");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "Q-000001-r1.xlsx, Q-000001-r1.xlsx",
    "../../etc/passwd, etc-passwd",
    "..\\secret.CSV, secret.csv",
    ".hidden.csv, hidden.csv",
    "a/b:c*d?.pdf, a-b-c-d.pdf",
    "con.xlsx, _con.xlsx",
    "'Ünal & Söhne.pdf', Ünal-Söhne.pdf",
    "???.csv, quote.csv"
  })
  void file_names_are_safe_everywhere(String wanted, String safe) {
    assertThat(Export.safeName(wanted)).isEqualTo(safe);
    assertThat(folder.resolve(Export.safeName(wanted)).getParent()).isEqualTo(folder);
  }

  private void write(String name, boolean overwrite, String content) throws IOException {
    Export.to(folder, name, overwrite)
        .write(out -> out.write(content.getBytes(StandardCharsets.UTF_8)));
  }
}
