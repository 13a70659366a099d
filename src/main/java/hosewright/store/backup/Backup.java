package hosewright.store.backup;

import hosewright.disk.BoundedFile;
import hosewright.disk.OwnerOnly;
import hosewright.problem.BadInputException;
import hosewright.problem.FullDisk;
import hosewright.problem.TroubleException;
import hosewright.store.database.BookTables;
import hosewright.store.database.DamagedStoreException;
import hosewright.store.database.Database;
import hosewright.store.database.ForeignStoreException;
import hosewright.store.database.HighWaterMarks;
import hosewright.store.database.Highest;
import hosewright.store.database.Move;
import hosewright.store.database.Schema;
import hosewright.store.folder.DataFolder;
import hosewright.store.folder.DealersFiles;
import hosewright.store.folder.Replacement;
import hosewright.store.folder.UnfinishedFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.UUID;
import org.jooq.Table;

/**
 * Copies of the books in one file each, made and put back: of a data folder or of a team's server,
 * from either to either.
 *
 * <p>A backup is written whole or not at all, and read back before it is called done. Putting one
 * back keeps what stood there before as a backup of its own.
 */
public final class Backup {
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss").withZone(ZoneOffset.UTC);

  private final Path folder;
  private final String program;
  private final Instant now;
  private final Limits limits;

  /**
   * @param folder the data folder
   * @param program the version of this program
   */
  public Backup(Path folder, String program, Instant now) {
    this(folder, program, now, Limits.USUAL);
  }

  Backup(Path folder, String program, Instant now, Limits limits) {
    this.folder = folder;
    this.program = program;
    this.now = now;
    this.limits = limits;
  }

  /**
   * Copies open books and the files beside them.
   *
   * @param wanted the file to write; empty for one named by the time in the usual folder
   * @throws BadInputException when the file is there already or cannot be written
   */
  public Path make(Database open, Optional<Path> wanted) {
    Path target = wanted.orElseGet(() -> usualFile("hosewright"));
    return open.rowByRow(steady -> make(steady, target));
  }

  private Path usualFile(String name) {
    Path file = DataFolder.backups(folder).resolve(STAMP.format(now) + "-" + name + ".zip");
    return Files.exists(file)
        ? file.resolveSibling(
            file.getFileName().toString().replace(".zip", "-" + UUID.randomUUID() + ".zip"))
        : file;
  }

  private Path make(Database steady, Path target) {
    refuseIfThere(target);
    Path near = target.toAbsolutePath().getParent();
    try {
      OwnerOnly.folder(near);
      try (UnfinishedFile file = UnfinishedFile.in(near)) {
        write(steady, file);
        new BackupReader(file.file(), limits).read(new NoShelf());
        refuseIfThere(target);
        file.finish(target);
        return target;
      }
    } catch (IOException e) {
      if (FullDisk.isSaid(e.getMessage())) {
        throw new TroubleException(
            "backup",
            target.toString(),
            "its disk has no room left",
            TroubleException.Kept.NOTHING);
      }
      throw new BadInputException(
          "backup", target.toString(), "a file in a folder that can be written to");
    }
  }

  private static void refuseIfThere(Path target) {
    if (Files.exists(target)) {
      throw new BadInputException(
          "backup", target.toString(), "a file that is not there yet: backups are never replaced");
    }
  }

  private void write(Database steady, UnfinishedFile file) throws IOException {
    // Closed with the file it writes to, which is still to be seen onto the disk.
    BackupWriter writer = new BackupWriter(new BufferedOutputStream(file.out(), 1 << 16));
    writer.head(new Head(Layout.FORM, Schema.VERSION, program, now));
    writer.numbers(steady.marks().read());
    for (String name : DealersFiles.in(folder)) {
      writer.file(name, dealersFile(name));
    }
    for (Table<?> table : BookTables.parentsFirst()) {
      writer.table(steady.context(), table);
    }
    writer.manifest();
  }

  private byte[] dealersFile(String name) throws IOException {
    int most = Layout.most(name, limits);
    return BoundedFile.bytes(folder.resolve(name), most)
        .orElseThrow(
            () ->
                new BadInputException(
                    "beside the books",
                    folder.resolve(name).toString(),
                    "a file of at most %,d KiB; larger ones go into no backup"
                        .formatted(most / 1024)));
  }

  /**
   * Puts a backup in place of the books in the data folder.
   *
   * @return where the books that stood there before were put; empty when there were none
   * @throws BadInputException when the file is no sound backup, a newer program made it, or another
   *     process has the books open; nothing has changed then
   */
  public Optional<Path> restore(Path backup) {
    return restored(
        backup,
        (ready, fresh) -> {
          Highest numbers = fresh.highest();
          fresh.close();
          Optional<Path> before = setAside(ready);
          HighWaterMarks.in(folder).raiseTo(numbers);
          ready.putInPlace();
          return before;
        });
  }

  /**
   * Puts a backup in place of the books on a server.
   *
   * @return where the books that stood there before were put
   */
  public Optional<Path> restore(Path backup, Database server) {
    return restored(
        backup,
        (ready, fresh) -> {
          Path before = usualFile("before-restore");
          Move.replace(
              fresh.books(),
              server,
              present -> {
                present.marks().raiseTo(HighWaterMarks.usedIn(present.context()));
                make(present.asItIs(), before);
              });
          server.marks().raiseTo(fresh.highest());
          fresh.close();
          Files.deleteIfExists(ready.folder().resolve(DataFolder.STORE));
          ready.putInPlace();
          return Optional.of(before);
        });
  }

  /** What is done with books that were read from a backup and found sound. */
  private interface Use {
    Optional<Path> use(Replacement ready, FreshBooks fresh) throws IOException;
  }

  private Optional<Path> restored(Path backup, Use use) {
    NotABackup refusal = new NotABackup(backup);
    try {
      OwnerOnly.folder(folder);
      try (Replacement ready = Replacement.in(folder);
          FreshBooks fresh = new FreshBooks(refusal, ready.folder())) {
        new BackupReader(backup, limits).read(fresh);
        ready.requireRoom();
        return use.use(ready, fresh);
      }
    } catch (IOException e) {
      throw DataFolder.trouble(folder, e);
    } catch (UncheckedIOException e) {
      throw DataFolder.trouble(folder, e.getCause());
    }
  }

  /** A store that cannot be opened any more is kept as it is, for whoever may mend it. */
  private Optional<Path> setAside(Replacement ready) throws IOException {
    Path store = folder.resolve(DataFolder.STORE);
    if (!Files.exists(store)) {
      return keepDealersFiles(ready);
    }
    try (Database present = Database.open(folder)) {
      present.marks().raiseTo(HighWaterMarks.usedIn(present.context()));
      return Optional.of(make(present.asItIs(), Optional.of(usualFile("before-restore"))));
    } catch (DamagedStoreException | ForeignStoreException e) {
      OwnerOnly.folder(DataFolder.backups(folder));
      Path damaged =
          DataFolder.backups(folder).resolve(STAMP.format(now) + "-not-opened-" + DataFolder.STORE);
      try (UnfinishedFile copy = UnfinishedFile.in(DataFolder.backups(folder))) {
        Files.copy(store, copy.out());
        copy.finish(damaged);
      }
      keepDealersFiles(ready);
      return Optional.of(damaged);
    }
  }

  /**
   * Where no backup can be made of what stands there, what a dealer wrote is copied all the same.
   */
  private Optional<Path> keepDealersFiles(Replacement ready) throws IOException {
    Path kept =
        DataFolder.backups(folder)
            .resolve(STAMP.format(now) + "-before-restore-" + UUID.randomUUID());
    boolean any = false;
    for (String name : DealersFiles.in(ready.folder())) {
      Path present = folder.resolve(name);
      if (Files.isRegularFile(present)
          && Files.mismatch(present, ready.folder().resolve(name)) >= 0) {
        Path copy = kept.resolve(name);
        OwnerOnly.folder(DataFolder.backups(folder));
        OwnerOnly.folder(kept);
        OwnerOnly.folder(copy.getParent());
        OwnerOnly.file(copy);
        try (OutputStream out = Files.newOutputStream(copy)) {
          Files.copy(present, out);
        }
        any = true;
      }
    }
    return any ? Optional.of(kept) : Optional.empty();
  }
}
