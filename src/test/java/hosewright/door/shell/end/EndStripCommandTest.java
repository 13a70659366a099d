package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class EndStripCommandTest {
  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell = CommandTrial.of(data, trial -> List.of(new EndStripCommand()));
  }

  @Test
  void it_says_which_file_it_wrote_on_which_paper() throws Exception {
    Ended ended = shell.run("end", "strip", "--out", data.toString(), "--paper", "A4", "--json");

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.json().get("paper").asString()).isEqualTo("a4");
    Path file = Path.of(ended.json().get("file").asString());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      assertThat(document.getPage(0).getMediaBox().getHeight())
          .isEqualTo(PDRectangle.A4.getHeight());
    }
  }

  @Test
  void a_strip_that_is_there_is_replaced_only_when_asked() {
    assertThat(shell.run("end", "strip", "--out", data.toString()).exitCode()).isZero();
    Ended again = shell.run("end", "strip", "--out", data.toString());

    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("exists");
    assertThat(shell.run("end", "strip", "--out", data.toString(), "--overwrite").exitCode())
        .isZero();
  }

  @Test
  void an_unknown_paper_is_refused() {
    Ended ended = shell.run("end", "strip", "--out", data.toString(), "--paper", "legal");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("paper cannot be 'legal': letter or a4");
    assertThat(data).isEmptyDirectory();
  }
}
