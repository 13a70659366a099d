package hosewright.desk.end;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.desk.OpenDesk;
import hosewright.problem.BadInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class CheckJointTest {
  @TempDir private Path folder;

  @Test
  void ends_that_do_not_mate_are_told_the_adapter_the_books_have() {
    var checked =
        new CheckJoint(OpenDesk.withDemo(folder))
            .check("2 NPT male", "1.5 NH female swivel", Optional.empty());

    assertThat(checked.verdict().mates()).isFalse();
    assertThat(checked.instead().bridge().chain()).hasSize(1);
    assertThat(checked.instead().sentence()).startsWith("an adapter 2 NPSH female swivel x");
  }

  @Test
  void ends_that_mate_open_no_books() {
    var checked =
        new CheckJoint(
                () -> {
                  throw new AssertionError("the books were opened");
                })
            .check("1.5 NH male", "1.5 NH female", Optional.empty());

    assertThat(checked.verdict().mates()).isTrue();
    assertThat(checked.instead().bridge()).isNull();
  }

  @Test
  void a_wrong_end_and_a_wrong_picture_are_refused_together_and_nothing_is_drawn() {
    PictureFile picture = new PictureFile(folder.resolve("joint.gif").toString(), false);

    assertThatThrownBy(
            () ->
                new CheckJoint(OpenDesk.unused(folder))
                    .check("1.5 NG male", "1.5 NH female", Optional.of(picture)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("a cannot be '1.5 NG male'")
        .hasMessageContaining("a file that ends in .svg");
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_picture_that_is_there_stays_unless_it_may_be_replaced() throws Exception {
    Path file = Files.writeString(folder.resolve("joint.svg"), "mine");
    CheckJoint check = new CheckJoint(OpenDesk.unused(folder));

    assertThatThrownBy(
            () ->
                check.check(
                    "1.5 NH male",
                    "1.5 NH female",
                    Optional.of(new PictureFile(file.toString(), false))))
        .hasMessageContaining("picture cannot be");
    assertThat(file).hasContent("mine");
    check.check(
        "1.5 NH male", "1.5 NH female", Optional.of(new PictureFile(file.toString(), true)));
    assertThat(file).content().contains("<svg");
  }
}
