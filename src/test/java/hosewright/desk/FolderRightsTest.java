package hosewright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FolderRightsTest {
  @TempDir private Path place;

  @Test
  void a_folder_that_others_may_look_into_is_told_once_with_the_way_to_close_it()
      throws IOException {
    OpenDesk.withDemo(place.resolve("data"));
    Path data = place.resolve("data");
    Files.setPosixFilePermissions(data, PosixFilePermissions.fromString("rwxr-xr-x"));
    List<String> told = new ArrayList<>();

    for (int deed = 0; deed < 3; deed++) {
      FolderRights.tellOnce(data, told::add);
    }

    assertThat(told)
        .singleElement()
        .asString()
        .contains("chmod -R go-rwx '" + data + "'", "This is said once");
  }

  @Test
  void opening_the_books_tells_it() throws IOException {
    OpenDesk desk = OpenDesk.withDemo(place.resolve("data"));
    Files.setPosixFilePermissions(
        place.resolve("data"), PosixFilePermissions.fromString("rwxrwx---"));

    try (Books books = desk.get()) {
      books.customers();
    }

    assertThat(desk.remarks()).singleElement().asString().contains("chmod -R go-rwx");
  }

  @Test
  void a_closed_folder_is_not_spoken_of() throws IOException {
    OpenDesk desk = OpenDesk.withDemo(place.resolve("data"));

    try (Books books = desk.get()) {
      books.customers();
    }

    assertThat(desk.remarks()).isEmpty();
    assertThat(place.resolve("data").resolve(FolderRights.TOLD)).doesNotExist();
  }
}
