package hosewright.disk;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.TroubleException;
import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.zip.CRC32;

/**
 * A file of lines that are only ever added, which after a kill or a power cut holds every line
 * before some point and none after it. One process at a time writes it.
 *
 * <p>Each line carries a check sum: what a cut left half written is dropped when the file is opened
 * again.
 */
public final class LineJournal implements AutoCloseable {
  private static final int CHECK_LENGTH = 9;

  /** Locked instead of the lines, so that they may be read while the journal is open. */
  private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

  private final Path file;
  private final FileChannel channel;

  private LineJournal(Path file, FileChannel channel) {
    this.file = file;
    this.channel = channel;
  }

  /**
   * Opens a journal, making an empty one where there is none.
   *
   * @param kept gets every whole line, first to last
   * @throws BadInputException when another process is writing it or it cannot be written
   */
  public static LineJournal open(Path file, Consumer<String> kept) {
    WholeFile.refuseLink("journal", file);
    try {
      FileChannel channel =
          FileChannel.open(
              file,
              StandardOpenOption.CREATE,
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              LinkOption.NOFOLLOW_LINKS);
      lock(file, channel);
      LineJournal journal = new LineJournal(file, channel);
      long end = journal.read(kept);
      channel.truncate(end);
      channel.position(end);
      return journal;
    } catch (IOException e) {
      throw new TroubleException(
          "journal",
          file.toString(),
          "it should be a file that can be written",
          TroubleException.Kept.NOTHING);
    }
  }

  /** Held until the channel closes. */
  private static void lock(Path file, FileChannel channel) throws IOException {
    FileLock lock;
    try {
      lock = channel.tryLock(LOCKED_BYTE, 1, false);
    } catch (OverlappingFileLockException e) {
      lock = null;
    }
    if (lock == null) {
      channel.close();
      throw ConflictException.stateForbids(
          "journal", file.toString(), "is being written by another run", "wait until it is done");
    }
  }

  /** Adds a line; it survives a kill of this process, and after {@link #force} a power cut. */
  public void append(String line) {
    ByteBuffer bytes =
        ByteBuffer.wrap((check(line) + " " + line + "\n").getBytes(StandardCharsets.UTF_8));
    try {
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Ends with every line added so far on the disk. */
  public void force() {
    try {
      channel.force(false);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Drops every line. */
  public void clear() {
    try {
      channel.truncate(0);
      channel.position(0);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Gives every line, first to last, and the place behind the last whole one. */
  public long read(Consumer<String> lines) {
    try {
      long before = channel.position();
      channel.position(0);
      // Not closed: it would close the channel.
      InputStream in = new BufferedInputStream(Channels.newInputStream(channel), 1 << 16);
      long end = 0;
      ByteArrayOutputStream line = new ByteArrayOutputStream();
      for (int next = in.read(); next >= 0; next = in.read()) {
        if (next != '\n') {
          line.write(next);
          continue;
        }
        String text = line.toString(StandardCharsets.UTF_8);
        if (text.length() < CHECK_LENGTH
            || !text.startsWith(check(text.substring(CHECK_LENGTH)) + " ")) {
          break;
        }
        lines.accept(text.substring(CHECK_LENGTH));
        end += line.size() + 1L;
        line.reset();
      }
      channel.position(before);
      return end;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Path file() {
    return file;
  }

  private static String check(String line) {
    CRC32 sum = new CRC32();
    sum.update(line.getBytes(StandardCharsets.UTF_8));
    return String.format(Locale.ROOT, "%08x", sum.getValue());
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
