package hosewright.store.database;

import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.thread.LocalThreads;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Copies of a data folder in one zip file each: the store and the files the dealer keeps beside it.
 *
 * <p>A backup is written whole or not at all, and read back before it is called done. Putting one
 * back keeps what stood there before as a backup of its own.
 */
public final class Backup {
  static final String STORE = "store.mv.db";

  /** A dealer's terms of sale, one sentence a line. */
  public static final String TERMS_OF_SALE = "terms.txt";

  /** What a dealer writes and keeps beside the store. */
  private static final List<String> DEALERS_FILES = List.of(LocalThreads.FILE, TERMS_OF_SALE);

  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Instant now;

  /**
   * @param folder the data folder
   */
  public Backup(Path folder, Instant now) {
    this.folder = folder;
    this.now = now;
  }

  /** The folder that backups go to when no other place is named. */
  private static Path usualFolder(Path folder) {
    return folder.resolve("backups");
  }

  /** The newest backup of a data folder that lies in the usual place. */
  public static Optional<Path> last(Path folder) {
    if (!Files.isDirectory(usualFolder(folder))) {
      return Optional.empty();
    }
    try (Stream<Path> files = Files.list(usualFolder(folder))) {
      return files
          .filter(file -> file.getFileName().toString().endsWith(".zip"))
          .max(Comparator.comparing(Path::getFileName));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /**
   * Copies the open store and the files beside it.
   *
   * @param wanted the zip file to write; empty for one named by the time in the usual folder
   * @throws BadInputException when the file is there already or cannot be written
   */
  public Path make(Database open, Optional<Path> wanted) {
    return make(open, wanted.orElseGet(() -> usualFile("hosewright")));
  }

  private Path usualFile(String name) {
    return usualFolder(folder).resolve(STAMP.format(now) + "-" + name + ".zip");
  }

  private Path make(Database open, Path target) {
    if (Files.exists(target)) {
      throw new BadInputException(
          "backup", target.toString(), "a file that is not there yet: backups are never replaced");
    }
    Path near = target.toAbsolutePath().getParent();
    try {
      Files.createDirectories(near);
      Path scratch = Files.createTempDirectory(near, ".backup");
      try {
        Path store = scratch.resolve("store.zip");
        open.copyTo(store);
        Path whole = scratch.resolve("whole.zip");
        pack(store, whole);
        readThrough(whole);
        Files.move(whole, target, StandardCopyOption.ATOMIC_MOVE);
        return target;
      } finally {
        delete(scratch);
      }
    } catch (IOException e) {
      throw new BadInputException(
          "backup", target.toString(), "a file in a folder that can be written to");
    }
  }

  private void pack(Path store, Path whole) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(whole));
        ZipInputStream copied = new ZipInputStream(Files.newInputStream(store))) {
      for (ZipEntry entry = copied.getNextEntry(); entry != null; entry = copied.getNextEntry()) {
        if (entry.getName().endsWith(STORE)) {
          zip.putNextEntry(new ZipEntry(STORE));
          copied.transferTo(zip);
        }
      }
      for (String name : besideTheStore()) {
        if (Files.exists(folder.resolve(name))) {
          zip.putNextEntry(new ZipEntry(name));
          Files.copy(folder.resolve(name), zip);
        }
      }
    }
  }

  /** Reading to the end checks every checksum. */
  private static void readThrough(Path zip) throws IOException {
    try (ZipInputStream in = new ZipInputStream(Files.newInputStream(zip))) {
      while (in.getNextEntry() != null) {
        in.transferTo(OutputStream.nullOutputStream());
      }
    }
  }

  /**
   * Puts a backup back in place of what the data folder holds now.
   *
   * @return where the store that stood there before was put; empty when there was none
   * @throws BadInputException when the file is no sound backup, a newer program made it, or another
   *     process has the store open; nothing has changed then
   */
  public Optional<Path> restore(Path backup) {
    try {
      Files.createDirectories(folder);
      Path scratch = Files.createTempDirectory(folder, ".restore");
      try {
        unpack(backup, scratch);
        open(backup, scratch);
        Optional<Path> before = setAside();
        HighWaterMarks.in(folder).raiseTo(HighWaterMarks.in(scratch));
        putInPlace(scratch, STORE);
        for (String name : DEALERS_FILES) {
          putInPlace(scratch, name);
        }
        return before;
      } finally {
        delete(scratch);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void putInPlace(Path scratch, String name) throws IOException {
    if (Files.exists(scratch.resolve(name))) {
      Files.move(
          scratch.resolve(name),
          folder.resolve(name),
          StandardCopyOption.REPLACE_EXISTING,
          StandardCopyOption.ATOMIC_MOVE);
    }
  }

  /** The number marks go along, but are only ever raised by putting a backup back. */
  private static List<String> besideTheStore() {
    List<String> names = new ArrayList<>(DEALERS_FILES);
    names.addAll(0, HighWaterMarks.files());
    return names;
  }

  /** Opens the unpacked store once: it is sound, and of this version or brought up to it. */
  private static void open(Path backup, Path scratch) {
    try {
      Database.open(scratch).close();
    } catch (DamagedStoreException e) {
      throw notABackup(backup, "its store is damaged");
    } catch (ConflictException e) {
      throw notABackup(backup, "its store " + e.problems().get(0).allowed());
    }
  }

  private static void unpack(Path backup, Path scratch) {
    boolean store = false;
    try (InputStream file = Files.newInputStream(backup);
        ZipInputStream zip = new ZipInputStream(file)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        String name = entry.getName();
        if (!name.equals(STORE) && !besideTheStore().contains(name)) {
          throw notABackup(backup, "it holds " + name);
        }
        Files.copy(zip, scratch.resolve(name));
        store |= name.equals(STORE);
      }
    } catch (ZipException e) {
      throw notABackup(backup, "it is damaged");
    } catch (IOException e) {
      throw new BadInputException("backup", backup.toString(), "a backup that can be read");
    }
    if (!store) {
      throw notABackup(backup, "it holds no store");
    }
  }

  private static BadInputException notABackup(Path file, String why) {
    return new BadInputException(
        "backup", file.toString(), "a file that 'data backup' wrote; " + why);
  }

  /** A store that cannot be opened any more is kept as it is, for whoever may mend it. */
  private Optional<Path> setAside() throws IOException {
    Path store = folder.resolve(STORE);
    if (!Files.exists(store)) {
      return Optional.empty();
    }
    Path copy = usualFile("before-restore");
    if (Files.exists(copy)) {
      copy = usualFile("before-restore-" + UUID.randomUUID());
    }
    try (Database present = Database.open(folder)) {
      present.marks().remember(present.context());
      return Optional.of(make(present, copy));
    } catch (DamagedStoreException e) {
      Files.createDirectories(usualFolder(folder));
      Path damaged = usualFolder(folder).resolve(STAMP.format(now) + "-damaged-" + STORE);
      Files.copy(store, damaged);
      return Optional.of(damaged);
    }
  }

  private static void delete(Path scratch) throws IOException {
    try (Stream<Path> files = Files.walk(scratch)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    }
  }
}
