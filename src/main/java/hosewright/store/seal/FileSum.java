package hosewright.store.seal;

import hosewright.disk.BoundedFile;
import hosewright.disk.WholeFile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;
import java.util.zip.CRC32C;

/**
 * The sum over an embedded store's file, kept beside it while nobody has it open: the database
 * checks the heads of its pages only, so that a bit lost in an index loses a quote without a word.
 *
 * <p>It is taken away when the store is opened and written anew after it is closed. A store without
 * one was left by a kill, or comes from elsewhere, and is opened as it is; its rows have seals of
 * their own.
 */
public final class FileSum {
  /** The file's name, beside the store. */
  public static final String NAME = "store.sum";

  private static final int LONGEST = 200;

  /** How many have a store open within this process. */
  private static final Map<Path, Integer> OPEN = new HashMap<>();

  private final Path store;
  private final Path kept;

  private FileSum(Path store) {
    this.store = store;
    this.kept = store.resolveSibling(NAME);
  }

  /**
   * Of a store.
   *
   * @param store its file, absolute
   */
  public static FileSum of(Path store) {
    return new FileSum(store);
  }

  /** Whether a store reads as it was left. */
  public enum State {
    AS_LEFT,
    CHANGED,
    /** Nobody wrote down how it was left, or somebody has it open. */
    UNKNOWN
  }

  /**
   * Looks how the store was left, before it is opened, and forgets it where it reads so; whoever
   * does so says later that it is {@link #closed} or {@link #givenUp}.
   *
   * @throws UncheckedIOException when it cannot be forgotten: whoever writes to the store then
   *     makes it look damaged
   */
  public State open() {
    synchronized (OPEN) {
      // Closing a second channel to a file that this process has locked would let go of the lock.
      if (OPEN.merge(store, 1, Integer::sum) > 1 || !Files.exists(kept)) {
        return State.UNKNOWN;
      }
      try {
        return alone(this::compared).orElse(State.UNKNOWN);
      } catch (IOException e) {
        forget();
        return State.UNKNOWN;
      }
    }
  }

  private State compared(FileChannel open) throws IOException {
    Optional<String> left = written();
    if (left.isEmpty()) {
      return State.UNKNOWN;
    }
    if (!left.get().equals(sum(open))) {
      return State.CHANGED;
    }
    // Before anybody writes: an opening that fails half way, on a full disk, is no damage.
    forget();
    return State.AS_LEFT;
  }

  /**
   * Forgets how the store was left, as whoever has opened it or puts another in its place has to.
   */
  public void forget() {
    try {
      Files.deleteIfExists(kept);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Says nothing of how a store is left. */
  public void givenUp() {
    synchronized (OPEN) {
      OPEN.computeIfPresent(store, (path, open) -> open == 1 ? null : Integer.valueOf(open - 1));
    }
  }

  /** Writes down how a store is left, unless somebody still or already has it open. */
  public void closed() {
    synchronized (OPEN) {
      givenUp();
      if (OPEN.containsKey(store)) {
        return;
      }
      try {
        alone(
            open -> {
              WholeFile.put(kept, sum(open) + "\n", false);
              return State.AS_LEFT;
            });
      } catch (IOException | UncheckedIOException e) {
        // On a disk without room the next start finds no sum, as after a kill.
        return;
      }
    }
  }

  /** Works while no other process has the store open; empty where one has. */
  private Optional<State> alone(Work work) throws IOException {
    try (FileChannel channel =
            FileChannel.open(store, StandardOpenOption.READ, StandardOpenOption.WRITE);
        FileLock lock = channel.tryLock()) {
      return lock == null ? Optional.empty() : Optional.of(work.done(channel));
    } catch (OverlappingFileLockException | NoSuchFileException e) {
      return Optional.empty();
    }
  }

  @FunctionalInterface
  private interface Work {
    State done(FileChannel open) throws IOException;
  }

  /** What was written down; empty where nothing is, or that itself is damaged. */
  private Optional<String> written() throws IOException {
    if (!Files.isRegularFile(kept)) {
      return Optional.empty();
    }
    return BoundedFile.bytes(kept, LONGEST)
        .map(bytes -> new String(bytes, StandardCharsets.ISO_8859_1).strip())
        .filter(FileSum::isWhole);
  }

  private static boolean isWhole(String sum) {
    int end = sum.lastIndexOf(' ');
    return end > 0 && sum.equals(checked(sum.substring(0, end)));
  }

  /** Read through the channel that holds the lock: closing another would let go of it. */
  private static String sum(FileChannel open) throws IOException {
    CRC32C sum = new CRC32C();
    long length = 0;
    ByteBuffer part = ByteBuffer.allocateDirect(1 << 18);
    open.position(0);
    while (open.read(part) >= 0) {
      part.flip();
      length += part.remaining();
      sum.update(part);
      part.clear();
    }
    return checked("crc32c " + Long.toHexString(sum.getValue()) + " " + length);
  }

  /** A line with a sum of its own, so that damage to it is not taken for damage to the store. */
  private static String checked(String line) {
    CRC32 own = new CRC32();
    own.update(line.getBytes(StandardCharsets.ISO_8859_1));
    return line + " " + Long.toHexString(own.getValue());
  }
}
