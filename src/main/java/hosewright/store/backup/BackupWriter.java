package hosewright.store.backup;

import hosewright.store.database.BookTables;
import hosewright.store.database.Highest;
import hosewright.store.seal.Seal;
import java.io.BufferedWriter;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;

/** Writes the parts of a backup one after the other and counts them for the manifest. */
final class BackupWriter implements AutoCloseable {
  private final ZipOutputStream zip;
  private final List<Part> parts = new ArrayList<>();

  BackupWriter(OutputStream file) {
    zip = new ZipOutputStream(file, StandardCharsets.UTF_8);
  }

  void head(Head head) throws IOException {
    text(Layout.HEAD, head.written());
  }

  void numbers(Highest numbers) throws IOException {
    text(Layout.NUMBERS, numbers.written());
  }

  /** A file of the dealer's, as it is. */
  void file(String name, byte[] content) throws IOException {
    try (PartStream part = new PartStream(name)) {
      part.write(content);
    }
  }

  /** All rows of a table, in the order of its key, fetched some at a time. */
  <R extends Record> void table(DSLContext inside, Table<R> table) throws IOException {
    List<Column> columns =
        Arrays.stream(table.fields())
            .map(field -> new Column(field.getName(), CellType.of(field.getType())))
            .toList();
    try (PartStream part = new PartStream(Layout.part(table.getName()));
        Writer lines = new BufferedWriter(new OutputStreamWriter(part, StandardCharsets.UTF_8));
        Cursor<R> rows = BookTables.rows(inside, table)) {
      lines.write(String.join("\t", columns.stream().map(Column::written).toList()) + "\n");
      while (rows.hasNext()) {
        line(lines, columns, rows.fetchNext());
        part.rows++;
      }
    }
  }

  private static void line(Writer lines, List<Column> columns, Record row) throws IOException {
    for (int i = 0; i < columns.size(); i++) {
      if (i > 0) {
        lines.write('\t');
      }
      lines.write(columns.get(i).type().write(row.get(i)));
    }
    lines.write('\n');
  }

  /** The manifest, after which nothing comes. */
  void manifest() throws IOException {
    zip.putNextEntry(new ZipEntry(Layout.MANIFEST));
    zip.write(Part.manifest(parts).getBytes(StandardCharsets.UTF_8));
    zip.closeEntry();
    zip.finish();
    zip.flush();
  }

  private void text(String name, String text) throws IOException {
    try (PartStream part = new PartStream(name)) {
      part.write(text.getBytes(StandardCharsets.UTF_8));
    }
  }

  @Override
  public void close() throws IOException {
    zip.close();
  }

  /** One part; closing it writes it down for the manifest and leaves the zip open. */
  private final class PartStream extends FilterOutputStream {
    private final String name;
    private final MessageDigest digest = Seal.sha256();
    private long rows;
    private long bytes;
    private boolean closed;

    PartStream(String name) throws IOException {
      super(zip);
      this.name = name;
      zip.putNextEntry(new ZipEntry(name));
    }

    @Override
    public void write(int b) throws IOException {
      write(new byte[] {(byte) b}, 0, 1);
    }

    @Override
    public void write(byte[] buffer, int from, int length) throws IOException {
      zip.write(buffer, from, length);
      digest.update(buffer, from, length);
      bytes += length;
    }

    @Override
    public void close() throws IOException {
      if (!closed) {
        closed = true;
        zip.closeEntry();
        parts.add(new Part(name, rows, bytes, HexFormat.of().formatHex(digest.digest())));
      }
    }
  }
}
