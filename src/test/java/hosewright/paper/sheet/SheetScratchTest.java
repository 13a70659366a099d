package hosewright.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.apache.poi.util.TempFile;
import org.junit.jupiter.api.Test;

final class SheetScratchTest {

  @Test
  void the_rows_of_a_streamed_sheet_lie_where_no_other_user_can_look_or_be_first()
      throws IOException {
    SheetScratch.use();

    File rows = TempFile.createTempFile("rows", ".xml");
    File folder = TempFile.createTempDirectory("parts");

    assertThat(folder.toPath()).hasParent(rows.toPath().getParent());
    Path scratch = folder.toPath().getParent();
    assertThat(scratch.getFileName().toString()).matches("hosewright-\\d+");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(scratch)))
        .isEqualTo("rwx------");
  }
}
