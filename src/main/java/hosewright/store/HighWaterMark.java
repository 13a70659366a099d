package hosewright.store;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;

/**
 * The highest quote number this machine ever saw used, kept in a file outside the store: putting an
 * older store back must not hand out a number that a customer already has on paper.
 *
 * <p>Of a store on a server each machine keeps its own mark; the first one to quote after an older
 * store was put back brings what it knows.
 *
 * @param shared whether several processes may raise it at once
 */
record HighWaterMark(Path file, boolean shared) {

  /** The mark of an embedded store, beside it. */
  static final String FILE = "highest-quote-number.txt";

  static HighWaterMark in(Path folder) {
    return new HighWaterMark(folder.resolve(FILE), false);
  }

  static HighWaterMark of(Server server, Path folder) {
    String name =
        "highest-quote-number-%s-%d-%s.txt"
            .formatted(server.host().replaceAll("[^\\w.-]", "_"), server.port(), server.database());
    return new HighWaterMark(folder.resolve(name), true);
  }

  /** 0 before the first quote. */
  int read() {
    if (!Files.exists(file)) {
      return 0;
    }
    try {
      String text = Files.readString(file).strip();
      if (!text.matches("\\d{1,9}")) {
        throw new BadInputException(
            file.toString(), text, "the highest quote number ever used, in digits");
      }
      return Integer.parseInt(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Raises the mark to a number, if it is lower.
   *
   * @throws UncheckedIOException when it cannot be written
   */
  void raise(int number) {
    // Within a process a file cannot be locked twice.
    synchronized (HighWaterMark.class) {
      try {
        if (shared) {
          raiseInTurn(number);
        } else {
          raiseAlone(number);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private void raiseInTurn(int number) throws IOException {
    Path turn = file.resolveSibling(file.getFileName() + ".lock");
    try (FileChannel channel =
        FileChannel.open(turn, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      // Let go when the channel closes, or its process ends.
      channel.lock();
      raiseAlone(number);
    }
  }

  private void raiseAlone(int number) throws IOException {
    if (read() < number) {
      write(number);
    }
  }

  /** Written whole or not at all, so that a power cut leaves the old mark or the new one. */
  private void write(int number) throws IOException {
    Path fresh = file.resolveSibling(file.getFileName() + ".new");
    try (FileChannel channel =
        FileChannel.open(
            fresh,
            Set.of(
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING))) {
      channel.write(ByteBuffer.wrap((number + "\n").getBytes(StandardCharsets.US_ASCII)));
      channel.force(true);
    }
    Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
  }
}
