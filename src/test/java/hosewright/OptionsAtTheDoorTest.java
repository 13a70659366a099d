package hosewright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who refuses names fields; only the door that has options puts their dashes before them. */
final class OptionsAtTheDoorTest {
  private static final Path MAIN = Path.of("src/main/java/hosewright");

  /** An option within a text, or at its beginning. */
  private static final Pattern OPTION = Pattern.compile("[ (\"]--[a-z][a-z-]");

  /** A whole command to be typed is one of the shell's, wherever it is named. */
  private static final Pattern COMMAND =
      Pattern.compile("'[a-z]+ [^']*('|$)|show --internal'|data mark .*");

  /** Speaks to a person at a terminal; prints which command takes the strip's figure. */
  private static final Set<String> AT_A_TERMINAL = Set.of("JobKeeper.java", "StripPdf.java");

  @Test
  void nobody_behind_the_door_names_an_option() throws IOException {
    List<Path> sources;
    try (Stream<Path> files = Files.walk(MAIN)) {
      sources =
          files
              .filter(file -> file.toString().endsWith(".java"))
              .filter(file -> !file.startsWith(MAIN.resolve("door")))
              .filter(file -> !AT_A_TERMINAL.contains(file.getFileName().toString()))
              .toList();
    }
    assertThat(sources).hasSizeGreaterThan(500);
    for (Path source : sources) {
      assertThat(
              Files.readString(source)
                  .lines()
                  .filter(line -> !line.strip().startsWith("*"))
                  .map(line -> COMMAND.matcher(line).replaceAll(""))
                  .filter(OPTION.asPredicate()))
          .as(source.toString())
          .isEmpty();
    }
  }
}
