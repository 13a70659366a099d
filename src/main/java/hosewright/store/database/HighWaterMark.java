package hosewright.store.database;

import hosewright.disk.BoundedFile;
import hosewright.disk.DiskTrouble;
import hosewright.disk.OwnerOnly;
import hosewright.disk.WholeFile;
import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import hosewright.problem.TroubleException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;

/**
 * The highest number of a series this machine ever saw used, kept in a file outside the store:
 * putting an older store back must not hand out a number that somebody already has on paper.
 *
 * <p>Of a store on a server each machine keeps its own mark; the first one to number a paper after
 * an older store was put back brings what it knows.
 *
 * @param shared whether several processes may raise it at once
 */
public record HighWaterMark(Series series, Path file, boolean shared) {
  /** A mark so far ahead of the store was not made by restoring a backup of it. */
  private static final int LARGEST_GAP = 100_000;

  /** More is no number. */
  private static final int LONGEST = 200;

  private TroubleException unusable(String why) {
    return new TroubleException(
        "mark of the highest number", file.toString(), why, TroubleException.Kept.NOTHING);
  }

  /** 0 before the first. */
  int read() {
    if (!Files.exists(file)) {
      return 0;
    }
    Optional<String> text = text();
    if (text.isEmpty() || !text.get().matches("\\d{1,9}")) {
      throw unusable(
          "it should hold the highest "
              + series.paper()
              + " number ever used, in digits, and "
              + text.map("holds '%s'"::formatted).orElseGet(this::otherwise)
              + ". "
              + wayOut());
    }
    return Integer.parseInt(text.get());
  }

  /** What the file says, as much of it as a sentence may show; empty where it is no short file. */
  private Optional<String> text() {
    try {
      return BoundedFile.bytes(file, LONGEST)
          .map(bytes -> new String(bytes, StandardCharsets.UTF_8).strip())
          .map(text -> text.length() > 40 ? text.substring(0, 40) + "..." : text)
          .map(PlainText::spelt);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private String otherwise() {
    if (BoundedFile.isOther(file)) {
      return "is a folder, pipe or device";
    }
    return Files.isReadable(file) ? "holds more than a number" : "may not be read";
  }

  /**
   * The highest number used, by the mark or the store.
   *
   * @param stored the last number in the store
   * @throws BadInputException when the mark is another store's
   */
  public int above(int stored) {
    int highest = Math.max(stored, read());
    if (!isNear(highest, stored)) {
      throw unusable(
          "it was changed or belongs to another store: it says that "
              + series.written(highest)
              + " was given, and the last one here is "
              + series.written(stored)
              + ". "
              + wayOut());
    }
    return highest;
  }

  private String wayOut() {
    String paper = series.paper().contains(" ") ? "'" + series.paper() + "'" : series.paper();
    return "Set it to the highest number on paper: data mark %s NUMBER --reason WHY"
        .formatted(paper);
  }

  /**
   * Whether a number is as far from the last one in the store as putting back an older one may
   * bring it.
   */
  static boolean isNear(int number, int stored) {
    return number <= (long) stored + LARGEST_GAP;
  }

  /**
   * Puts a number in the place of whatever the mark says.
   *
   * @param stored the last number in the store
   * @return what it said before, as it stood in the file
   * @throws BadInputException when the number is below the last in the store or far beyond it
   * @throws TroubleException when nothing can be put in its place
   */
  String setRight(int number, int stored) {
    if (number < stored || !isNear(number, stored)) {
      throw new BadInputException(
          "NUMBER",
          String.valueOf(number),
          "%d, the last %s number in the books, or up to %d more"
              .formatted(stored, series.paper(), LARGEST_GAP));
    }
    synchronized (HighWaterMark.class) {
      try {
        String before = Files.exists(file) ? text().orElseGet(this::otherwise) : "0";
        if (shared) {
          inTurn(() -> write(number));
        } else {
          write(number);
        }
        return before;
      } catch (IOException e) {
        throw unusable(DiskTrouble.words(e));
      }
    }
  }

  /**
   * Raises the mark to a number, if it is lower.
   *
   * @throws UncheckedIOException when it cannot be written
   */
  public void raise(int number) {
    // Within a process a file cannot be locked twice.
    synchronized (HighWaterMark.class) {
      try {
        if (shared) {
          inTurn(() -> raiseAlone(number));
        } else {
          raiseAlone(number);
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  /** What is done while no other process does the like. */
  private interface Step {
    void take() throws IOException;
  }

  private void inTurn(Step step) throws IOException {
    Path turn = file.resolveSibling(file.getFileName() + ".lock");
    try (FileChannel channel =
        FileChannel.open(
            turn,
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS),
            OwnerOnly.newFile(turn))) {
      // Let go when the channel closes, or its process ends.
      channel.lock();
      step.take();
    }
  }

  private void raiseAlone(int number) throws IOException {
    if (read() < number) {
      write(number);
    }
  }

  /** Written whole or not at all, so that a power cut leaves the old mark or the new one. */
  private void write(int number) throws IOException {
    WholeFile.put(file, number + "\n", true);
  }
}
