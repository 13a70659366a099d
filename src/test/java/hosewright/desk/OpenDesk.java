package hosewright.desk;

import hosewright.disk.OwnerOnly;
import hosewright.store.database.Server;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** A desk without a door: books with the demo catalogue in them, on a day that a test sets. */
public final class OpenDesk implements Supplier<Books> {
  private static final String DEMO_DAY = "2026-11-02";

  private static Path loaded;

  private final Path data;
  private final List<String> remarks = new ArrayList<>();
  private Clock clock;

  /**
   * @param data a folder with nothing in it, or one that is not there yet
   */
  public OpenDesk(Path data, String day) {
    this.data = data;
    copy(loaded(), data);
    on(day);
  }

  private OpenDesk(Path data) {
    this.data = data;
    on(DEMO_DAY);
  }

  /** Books with the demo catalogue in them, on a day its prices are in force. */
  public static OpenDesk withDemo(Path data) {
    return new OpenDesk(data, DEMO_DAY);
  }

  /** Puts books with the demo catalogue where a test's commands will look for them. */
  public static void putDemoInto(Path data) {
    copy(loaded(), data);
  }

  /** Nothing kept yet. */
  public static OpenDesk unused(Path data) {
    return new OpenDesk(data);
  }

  /** What was said beside the answers. */
  List<String> remarks() {
    return List.copyOf(remarks);
  }

  public BooksPlace place() {
    return new InFolder(data);
  }

  /** Lets it be noon of a day. */
  public void on(String day) {
    clock =
        Clock.fixed(
            LocalDate.parse(day).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC), ZoneOffset.UTC);
  }

  @Override
  public Books get() {
    return new Books(place(), remarks::add, clock);
  }

  /** Made once: a new store and its catalogue take longer than most tests. */
  private static synchronized Path loaded() {
    if (loaded == null) {
      try {
        loaded = Files.createTempDirectory("hosewright-open-desk");
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
      loaded.toFile().deleteOnExit();
      try (Books books = new OpenDesk(loaded).get()) {
        books.catalogue();
      }
    }
    return loaded;
  }

  private static void copy(Path from, Path to) {
    try (Stream<Path> files = Files.list(from)) {
      OwnerOnly.folder(to);
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
        file.toFile().deleteOnExit();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Books in a folder that nobody shares. */
  private record InFolder(Path where) implements BooksPlace {
    @Override
    public Path folder() {
      return where;
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
}
