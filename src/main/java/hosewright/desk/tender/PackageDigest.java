package hosewright.desk.tender;

import hosewright.disk.BoundedFile;
import hosewright.intake.PackageFile;
import hosewright.problem.RefusalException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A digest of the package files that a tender names and of the job files these name, in the order
 * of its rows: a run goes on only where none of them changed.
 */
final class PackageDigest {
  /** Rows near each other name the same file; no more is remembered than this. */
  private static final int REMEMBERED = 64;

  /** A file larger than this is refused when its row is priced, and is not read before. */
  private static final int MOST_BYTES = 64 * 1024;

  private final Path folder;
  private final MessageDigest all = TenderInput.digest();
  private final Map<String, byte[]> known = new LinkedHashMap<>();
  private boolean empty = true;

  PackageDigest(Path folder) {
    this.folder = folder;
  }

  void add(String named) {
    empty = false;
    if (!known.containsKey(named) && known.size() >= REMEMBERED) {
      known.clear();
    }
    all.update(known.computeIfAbsent(named, this::of));
  }

  boolean isEmpty() {
    return empty;
  }

  /** The digest of a file together with its packages. */
  byte[] with(byte[] file) {
    all.update(file);
    return all.digest();
  }

  private byte[] of(String named) {
    MessageDigest one = TenderInput.digest();
    try {
      Path file = folder.resolve(named);
      one.update(bytes(file));
      PackageFile.read(file).entries().stream()
          .flatMap(entry -> entry.job().stream())
          .forEach(job -> one.update(bytes(job)));
    } catch (InvalidPathException | RefusalException e) {
      // What cannot be read is refused when its row is priced.
      one.update(named.getBytes(StandardCharsets.UTF_8));
    }
    return one.digest();
  }

  private static byte[] bytes(Path file) {
    try {
      return BoundedFile.bytes(file, MOST_BYTES).orElse(new byte[0]);
    } catch (IOException e) {
      return new byte[0];
    }
  }
}
