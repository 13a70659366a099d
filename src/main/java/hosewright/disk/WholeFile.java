package hosewright.disk;

import hosewright.problem.BadInputException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.UUID;

/**
 * Files written whole or not at all: under a name nobody can know beforehand, then moved to their
 * place, so that a link laid there is replaced and never followed.
 */
public final class WholeFile {
  /**
   * How the name of a file begins that is not whole yet. Whoever writes it holds it locked, so that
   * one that nobody holds was left by a program that is no more.
   */
  public static final String UNFINISHED = ".hosewright-unfinished-";

  private WholeFile() {}

  /** How a file that is added to is opened: a link in its place is an error. */
  public static Set<OpenOption> adding() {
    return Set.of(StandardOpenOption.CREATE, StandardOpenOption.APPEND, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Whether a file may be added to, or made where there is none: no link, whose layer would choose
   * what is written to, and no folder, pipe or device.
   */
  public static boolean mayAddTo(Path file) {
    return !Files.isSymbolicLink(file) && !BoundedFile.isOther(file);
  }

  /**
   * Puts a text in the place of a file, for its owner alone.
   *
   * @param lasting whether it must be on the disk before this returns
   */
  public static void put(Path file, String text, boolean lasting) throws IOException {
    Path fresh = file.resolveSibling(UNFINISHED + UUID.randomUUID());
    try (FileChannel channel =
        FileChannel.open(
            fresh,
            Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
            OwnerOnly.newFile(fresh))) {
      // Let go when the channel closes, or its process ends.
      channel.lock();
      write(channel, text, lasting);
      Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      Files.deleteIfExists(fresh);
      throw e;
    }
  }

  private static void write(FileChannel channel, String text, boolean lasting) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
    while (bytes.hasRemaining()) {
      channel.write(bytes);
    }
    if (lasting) {
      channel.force(true);
    }
  }

  /**
   * Sees that no link lies where a file is to be written.
   *
   * @param field what the user calls the file
   * @throws BadInputException when one does: whoever laid it would choose what is overwritten
   */
  public static void refuseLink(String field, Path file) {
    if (Files.isSymbolicLink(file)) {
      throw new BadInputException(
          field,
          file.toString(),
          "a file's own name: a link lies there, and links are not written through; remove it or"
              + " give another name");
    }
  }
}
