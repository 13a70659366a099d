package hosewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A room is small enough to be known as a whole, and says what it is. */
final class RoomsTest {
  private static final Path MAIN = Path.of("src/main/java/hosewright");
  private static final String WORDS = "package-info.java";
  private static final int MOST_FILES = 26;

  @Test
  void no_room_holds_more_files_than_a_newcomer_can_know() throws IOException {
    assertThat(rooms())
        .allSatisfy(
            (room, files) ->
                assertThat(files.stream().filter(file -> !file.equals(WORDS)))
                    .as("%s", room)
                    .hasSizeLessThanOrEqualTo(MOST_FILES));
  }

  @Test
  void every_room_says_what_it_knows() throws IOException {
    assertThat(rooms())
        .allSatisfy((room, files) -> assertThat(files).as("%s", room).contains(WORDS));
  }

  /** The files of every folder below the root, where the program starts. */
  private static Map<Path, List<String>> rooms() throws IOException {
    try (Stream<Path> files = Files.walk(MAIN)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(file -> !file.getParent().equals(MAIN))
          .collect(
              Collectors.groupingBy(
                  Path::getParent,
                  TreeMap::new,
                  Collectors.mapping(file -> file.getFileName().toString(), Collectors.toList())));
    }
  }
}
