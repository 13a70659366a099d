package hosewright.desk;

import hosewright.store.Server;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Books in a folder on a day the demo's prices are in force, as a deed gets them from any door. */
public record TrialBooks(Path folder) implements Supplier<Books>, BooksPlace {
  private static final Clock DAY =
      Clock.fixed(Instant.parse("2026-11-02T12:00:00Z"), ZoneOffset.UTC);

  private static Path demo;

  /** Books with the invented dealer's catalogue in them. */
  public static TrialBooks withDemo(Path folder) {
    try (Stream<Path> files = Files.list(demo())) {
      for (Path file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new TrialBooks(folder);
  }

  /** Made once: a new store and its catalogue take longer than most tests. */
  private static synchronized Path demo() throws IOException {
    if (demo == null) {
      Path made = Files.createTempDirectory("hosewright-desk");
      made.toFile().deleteOnExit();
      try (Books books = new TrialBooks(made).get()) {
        books.catalogue();
      }
      try (Stream<Path> files = Files.list(made)) {
        files.forEach(file -> file.toFile().deleteOnExit());
      }
      demo = made;
    }
    return demo;
  }

  @Override
  public Books get() {
    return new Books(this, remark -> {}, DAY);
  }

  @Override
  public Path where() {
    return folder;
  }

  @Override
  public Optional<Server> server() {
    return Optional.empty();
  }

  @Override
  public Optional<String> serverField() {
    return Optional.empty();
  }
}
