package hosewright.door.shell.end;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.door.shell.DemoBooks;
import hosewright.door.shell.run.CommandTrial;
import hosewright.door.shell.run.CommandTrial.Ended;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

final class EndShowCommandTest {
  @TempDir private Path data;
  private CommandTrial shell;

  @BeforeEach
  void open() {
    shell =
        CommandTrial.of(
            data,
            trial -> List.of(new EndShowCommand(), new JointCheckCommand(DemoBooks.of(trial))));
  }

  @Test
  void an_end_may_be_written_with_or_without_quotes() {
    assertThat(shell.run("end", "show", "2.5", "NH", "male").out())
        .isEqualTo(shell.run("end", "show", "2-1/2 NST M").out());
  }

  @Test
  void figures_come_with_limits_source_and_what_the_end_joins() {
    // 2.5-7.5 NH: Machinery's Handbook 27th ed. p.1875-1876 (NFPA 1963-1993).
    JsonNode shown = shell.run("end", "show", "2.5 NH male", "--json").json();

    assertThat(shown.get("figures").valueStream().map(f -> f.get("value").asDouble()))
        .contains(7.5, 3.0686, 3.0366, 2.9820, 2.9660);
    assertThat(shown.get("source").asString()).contains("Machinery's Handbook");
    assertThat(shown.get("joins").valueStream().map(JsonNode::asString))
        .containsExactly("2.5 NH female", "2.5 NH female swivel");
    assertThat(shown.get("picture").isNull()).isTrue();
  }

  @Test
  void a_thread_without_published_figures_is_to_be_measured() {
    Ended ended = shell.run("end", "show", "2.5 QST male");

    assertThat(ended.exitCode()).isZero();
    assertThat(ended.out()).contains("measure it").contains("common practice, no source");
  }

  @Test
  void an_unknown_family_is_answered_with_the_nearest() {
    Ended ended = shell.run("end", "show", "2.5 NHH male");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("end cannot be '2.5 NHH male'").contains("'2.5 NH male'?");
  }

  @Test
  void a_picture_is_written_once_and_replaced_only_when_asked() throws IOException {
    Path file = data.resolve("end.svg");

    assertThat(shell.run("end", "show", "2.5 NH male", "--picture", file.toString()).out())
        .contains(file.toString());
    assertThat(Files.readString(file)).startsWith("<svg ").contains("3.0686 in");

    Ended again = shell.run("end", "show", "1.5 NH male", "--picture", file.toString());
    assertThat(again.exitCode()).isEqualTo(2);
    assertThat(again.err()).contains("picture cannot be").contains("exists");
    assertThat(Files.readString(file)).contains("3.0686 in");

    shell.run("end", "show", "1.5 NH male", "--picture", file.toString(), "--overwrite");
    assertThat(Files.readString(file)).contains("1.9900 in");
  }

  @Test
  void a_picture_goes_into_a_file_that_ends_in_svg() {
    Ended ended = shell.run("end", "show", "2.5 NH male", "--picture", "end.png");

    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).contains("ends in .svg");
  }

  @Test
  void a_joint_is_drawn_facing_and_into_a_picture() throws IOException {
    Path file = data.resolve("joint.svg");
    Ended ended =
        shell.run(
            "joint",
            "check",
            "--a",
            "2 NPT male",
            "--b",
            "2 NPSH female swivel",
            "--picture",
            file.toString());

    assertThat(ended.out()).contains("\\/\\/\\/\\#+====").contains("# the gasket seals");
    assertThat(Files.readString(file)).contains("the gasket seals, here").contains("joins");
  }
}
