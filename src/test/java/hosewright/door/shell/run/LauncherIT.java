package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledForJreRange;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.JRE;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher for POSIX shells, copied to a folder whose name has a space in it. */
@EnabledOnOs({OS.LINUX, OS.MAC})
final class LauncherIT {
  @TempDir private Path temporary;
  private Path home;
  private Path work;

  @BeforeEach
  void copy_the_program() throws IOException {
    home = temporary.resolve("my programs");
    work = Files.createDirectory(temporary.resolve("work"));
    try (Stream<Path> files = Files.walk(RealProgram.HOME)) {
      for (Path file : files.toList()) {
        Path copy = home.resolve(RealProgram.HOME.relativize(file).toString());
        Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
      }
    }
  }

  @Test
  void it_runs_where_it_was_built() {
    answersOnce(RealProgram.HOME.resolve("bin/hosewright"));
  }

  @Test
  void it_runs_from_any_folder_through_links() throws IOException {
    Path links = Files.createDirectory(temporary.resolve("some links"));
    Path first = Files.createSymbolicLink(links.resolve("hw"), home.resolve("bin/hosewright"));
    Path second = Files.createSymbolicLink(links.resolve("relative"), Path.of("hw"));
    for (Path link : List.of(first, second)) {
      answersOnce(link);
    }
  }

  @Test
  void a_touched_jar_makes_the_archive_stale_and_nothing_is_said() throws IOException {
    Files.setLastModifiedTime(
        home.resolve("app/hosewright.jar"), FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
    answersOnce(home.resolve("bin/hosewright"));
  }

  @Test
  void a_missing_or_broken_archive_is_passed_over_in_silence() throws IOException {
    Path cache = cache();
    // As if another start were making it, so that none is made while this test deletes its folder.
    Files.createDirectories(cache.resolveSibling(cache.getFileName() + ".made"));
    for (Path kept : List.of(home.resolve("app/hosewright.jsa"), cache)) {
      Files.deleteIfExists(kept);
      answersOnce(home.resolve("bin/hosewright"));
      Files.writeString(kept, "not an archive");
      answersOnce(home.resolve("bin/hosewright"));
    }
  }

  @Test
  @EnabledForJreRange(min = JRE.JAVA_25)
  @Timeout(180)
  void a_first_start_makes_the_cache_on_the_side_and_once() throws Exception {
    Path cache = cache();
    Files.deleteIfExists(cache);
    Files.deleteIfExists(cache.resolveSibling(cache.getFileName() + ".made"));
    answersOnce(home.resolve("bin/hosewright"));
    answersOnce(home.resolve("bin/hosewright"));
    while (!Files.exists(cache)) {
      Thread.sleep(100);
    }
    answersOnce(home.resolve("bin/hosewright"));
  }

  private Path cache() {
    return home.resolve("app/hosewright-" + System.getProperty("java.version") + ".aot");
  }

  @Test
  void exit_codes_and_words_pass_through() {
    RealProgram.Ended ended =
        RealProgram.launcher(home.resolve("bin/hosewright"), work)
            .run("help", "no such 'thing' $HOME");
    assertThat(ended.exitCode()).isEqualTo(2);
    assertThat(ended.err()).startsWith("command cannot be 'no");
  }

  private void answersOnce(Path launcher) {
    RealProgram.Ended ended = RealProgram.launcher(launcher, work).run("version", "--json");
    assertThat(ended.err()).isEmpty();
    assertThat(ended.exitCode()).isZero();
    assertThat(OneDocument.in(ended.out()).has("version")).isTrue();
  }
}
