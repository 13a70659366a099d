package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.disk.OwnerOnly;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Books with the demo catalogue, loaded once by the built program for tests of something else. */
public final class LoadedBooks {
  private static final Path DEMO = Path.of("catalogue").toAbsolutePath();

  private static Path loaded;

  private LoadedBooks() {}

  /** Puts a copy where these runs look for their books. */
  public static void putInto(RealProgram program) {
    try {
      copy(loaded(), program);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts a copy of the books of one program, which does not run, where another looks for them. */
  public static void copy(RealProgram from, RealProgram to) {
    try {
      copy(from.data(), to);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void copy(Path books, RealProgram program) throws IOException {
    try (Stream<Path> files = Files.list(books)) {
      OwnerOnly.folder(program.data());
      for (Path file : files.toList()) {
        Files.copy(file, program.data().resolve(file.getFileName()));
      }
    }
  }

  private static synchronized Path loaded() throws IOException {
    if (loaded == null) {
      Path folder = Files.createTempDirectory("hosewright-loaded");
      folder.toFile().deleteOnExit();
      RealProgram program = RealProgram.installed(folder);
      assertThat(program.run("catalogue", "load", DEMO.toString()).exitCode()).isZero();
      loaded = program.data();
      loaded.toFile().deleteOnExit();
      try (Stream<Path> files = Files.list(loaded)) {
        files.forEach(file -> file.toFile().deleteOnExit());
      }
    }
    return loaded;
  }
}
