package hosewright.store.backup;

import hosewright.problem.BadInputException;
import hosewright.problem.TroubleException;
import hosewright.store.database.Highest;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;

/** Reads a backup from front to back, and believes nothing in it that it did not check. */
final class BackupReader {
  private static final int HEAD_BYTES = 4096;

  private final Path file;
  private final Limits limits;
  private final NotABackup refusal;
  private final List<Part> parts = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();
  private long unfolded;

  BackupReader(Path file, Limits limits) {
    this.file = file;
    this.limits = limits;
    this.refusal = new NotABackup(file);
  }

  /**
   * Reads all of it.
   *
   * @param shelf must not keep what it was given when this throws
   * @throws BadInputException when the file is no backup, is damaged or holds more than it may
   */
  void read(Shelf shelf) {
    requireFile();
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in, StandardCharsets.UTF_8)) {
      ZipEntry first = zip.getNextEntry();
      if (first == null) {
        throw refusal.because("it is no zip file");
      }
      if (Layout.isOfFormBefore(first.getName())) {
        throw refusal.ofFormBefore();
      }
      if (!first.getName().equals(Layout.HEAD)) {
        throw refusal.because("it begins with " + NotABackup.quoted(first.getName()));
      }
      head(zip, shelf);
      for (ZipEntry entry = zip.getNextEntry(); ; entry = zip.getNextEntry()) {
        if (entry == null) {
          throw refusal.because("it is cut short: its manifest is missing");
        }
        if (entry.getName().equals(Layout.MANIFEST)) {
          break;
        }
        part(entry.getName(), zip, shelf);
      }
      manifest(zip);
      shelf.end();
    } catch (ZipException | EOFException | IllegalArgumentException e) {
      // Names that are no UTF-8 come as the last of these.
      throw refusal.because("it is damaged or cut short");
    } catch (IOException e) {
      throw new TroubleException(
          "backup", file.toString(), "it cannot be read to its end", TroubleException.Kept.NOTHING);
    }
  }

  private void requireFile() {
    try {
      if (!Files.isRegularFile(file)) {
        throw refusal.because(Files.exists(file) ? "this is no file" : "there is none");
      }
      if (Files.size(file) > limits.fileBytes()) {
        throw refusal.because("it is larger than %d bytes".formatted(limits.fileBytes()));
      }
      if (!Files.isReadable(file)) {
        throw refusal.because("it may not be read");
      }
    } catch (IOException e) {
      throw refusal.because("it cannot be looked at");
    }
  }

  private void head(ZipInputStream zip, Shelf shelf) throws IOException {
    String text = new String(whole(Layout.HEAD, zip, HEAD_BYTES), StandardCharsets.UTF_8);
    Head head;
    try {
      head = Head.read(text);
    } catch (IllegalArgumentException e) {
      throw refusal.because("its head says " + NotABackup.quoted(text));
    }
    if (head.form() < Layout.OLDEST || head.form() > Layout.FORM) {
      throw refusal.because(
          "it is of form %d, and this version reads forms %d to %d"
              .formatted(head.form(), Layout.OLDEST, Layout.FORM));
    }
    shelf.head(head);
  }

  private void part(String name, ZipInputStream zip, Shelf shelf) throws IOException {
    if (!seen.add(name) || seen.size() > limits.parts()) {
      throw refusal.because("it holds " + NotABackup.quoted(name) + " twice, or too many parts");
    }
    if (name.equals(Layout.NUMBERS)) {
      String text = new String(whole(name, zip, HEAD_BYTES), StandardCharsets.UTF_8);
      shelf.numbers(
          Highest.read(text)
              .orElseThrow(() -> refusal.because("its highest numbers cannot be read")));
    } else if (Layout.isDealersFile(name)) {
      shelf.file(name, whole(name, zip, Layout.most(name, limits)));
    } else {
      String table =
          Layout.table(name)
              .orElseThrow(() -> refusal.because("it holds " + NotABackup.quoted(name)));
      table(table, name, zip, shelf);
    }
  }

  private byte[] whole(String name, ZipInputStream zip, int most) throws IOException {
    PartStreamIn part = new PartStreamIn(zip, most);
    try {
      byte[] content = part.readAllBytes();
      take(part, name, 0);
      return content;
    } catch (PartStreamIn.TooMuch e) {
      throw refusal.because("its part %s is larger than %d bytes".formatted(name, most));
    }
  }

  private void table(String table, String name, ZipInputStream zip, Shelf shelf)
      throws IOException {
    PartStreamIn part = new PartStreamIn(zip, limits.unfoldedBytes() - unfolded);
    Lines lines = new Lines(part, limits.rowCharacters());
    long rows = 0;
    try {
      String first = lines.next();
      List<Column> columns = columns(name, first == null ? "" : first);
      shelf.table(table, columns);
      for (String line = lines.next(); line != null; line = lines.next()) {
        if (++rows > limits.rows()) {
          throw refusal.because("%s has more than %d rows".formatted(name, limits.rows()));
        }
        shelf.row(row(name, lines.number(), columns, line));
      }
    } catch (PartStreamIn.TooMuch e) {
      throw refusal.because("it unfolds to more than %d bytes".formatted(limits.unfoldedBytes()));
    } catch (CharacterCodingException e) {
      throw refusal.because(name + " is not UTF-8");
    } catch (Lines.BadLine e) {
      throw refusal.because("of " + name + " " + e.getMessage());
    }
    take(part, name, rows);
  }

  private List<Column> columns(String name, String line) {
    try {
      return Arrays.stream(line.split("\t", -1)).map(Column::read).toList();
    } catch (IllegalArgumentException e) {
      throw refusal.because(
          "the first line of %s names no columns: %s".formatted(name, NotABackup.quoted(line)));
    }
  }

  private Object[] row(String name, int number, List<Column> columns, String line) {
    String[] cells = line.split("\t", -1);
    if (cells.length != columns.size()) {
      throw refusal.because(
          "line %d of %s has %d cells, not %d"
              .formatted(number, name, cells.length, columns.size()));
    }
    Object[] row = new Object[cells.length];
    for (int i = 0; i < cells.length; i++) {
      try {
        row[i] = columns.get(i).type().read(cells[i]);
      } catch (IllegalArgumentException e) {
        throw refusal.because(
            "line %d of %s, %s: %s is no %s"
                .formatted(
                    number,
                    name,
                    columns.get(i).name(),
                    NotABackup.quoted(cells[i]),
                    columns.get(i).type().word()));
      }
    }
    return row;
  }

  private void take(PartStreamIn part, String name, long rows) {
    unfolded += part.bytes();
    parts.add(part.part(name, rows));
  }

  /** Holds what was read against what was written, before any of it is used. */
  private void manifest(ZipInputStream zip) throws IOException {
    byte[] said;
    try {
      said = new PartStreamIn(zip, 256L * (limits.parts() + 1)).readAllBytes();
    } catch (PartStreamIn.TooMuch e) {
      throw refusal.because("its manifest is too long");
    }
    if (!Part.manifest(parts).equals(new String(said, StandardCharsets.UTF_8))) {
      throw refusal.because("it is damaged: what it holds is not what its manifest says");
    }
    if (zip.getNextEntry() != null) {
      throw refusal.because("something follows its manifest");
    }
  }
}
