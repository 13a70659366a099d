package hosewright.disk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On file systems that know owners; those of the systems this is built on do. */
final class OwnerOnlyTest {
  @TempDir Path place;

  @Test
  void a_folder_is_made_for_its_owner_alone_and_those_above_it_as_usual() throws IOException {
    Path folder = OwnerOnly.folder(place.resolve("above").resolve("data"));

    assertThat(rights(folder)).isEqualTo("rwx------");
    assertThat(OwnerOnly.isOpenToOthers(folder)).isFalse();
    assertThat(rights(place.resolve("above"))).startsWith("rwxr");
  }

  @Test
  void a_folder_that_is_there_stays_as_its_owner_made_it() throws IOException {
    Path folder = Files.createDirectory(place.resolve("data"));
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-x---"));

    OwnerOnly.folder(folder);

    assertThat(rights(folder)).isEqualTo("rwxr-x---");
    assertThat(OwnerOnly.isOpenToOthers(folder)).isTrue();
  }

  @Test
  void a_file_in_the_place_of_a_folder_is_an_error() throws IOException {
    Path file = Files.createFile(place.resolve("data"));

    assertThatThrownBy(() -> OwnerOnly.folder(file)).isInstanceOf(FileAlreadyExistsException.class);
  }

  @Test
  void a_file_is_made_for_its_owner_alone_and_an_open_one_is_closed_with_what_it_holds()
      throws IOException {
    Path fresh = place.resolve("fresh");
    Path old = Files.writeString(place.resolve("old"), "kept");
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("rw-rw-r--"));

    OwnerOnly.file(fresh);
    OwnerOnly.file(old);

    assertThat(rights(fresh)).isEqualTo("rw-------");
    assertThat(rights(old)).isEqualTo("rw-------");
    assertThat(old).hasContent("kept");
  }

  @Test
  void a_file_put_in_the_place_of_a_link_leaves_alone_what_the_link_points_at() throws IOException {
    Path theirs = Files.writeString(place.resolve("theirs"), "theirs");
    Path link = Files.createSymbolicLink(place.resolve("mark.txt"), theirs);

    WholeFile.put(link, "ours", true);

    assertThat(theirs).hasContent("theirs");
    assertThat(link).isRegularFile().hasContent("ours");
    assertThat(Files.isSymbolicLink(link)).isFalse();
    assertThat(rights(link)).isEqualTo("rw-------");
    assertThat(place).isDirectoryNotContaining("glob:**/.*");
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }
}
