package hosewright.paper.sheet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Rewrites a zip so that equal content gives equal bytes: sorted entries, one fixed time. */
public final class StableZip {
  /** The earliest time a zip entry can carry. */
  private static final LocalDateTime FIXED = LocalDateTime.of(1980, 1, 1, 0, 0);

  /** Readers that stream want the list of content types first. */
  private static final Comparator<String> TYPES_FIRST =
      Comparator.comparing((String name) -> !name.equals("[Content_Types].xml"))
          .thenComparing(Comparator.naturalOrder());

  private StableZip() {}

  /** Copies the archive; the stream stays open. */
  public static void copy(byte[] archive, OutputStream out) throws IOException {
    Map<String, byte[]> entries = new TreeMap<>(TYPES_FIRST);
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        entries.put(entry.getName(), in.readAllBytes());
      }
    }
    ZipOutputStream zip = new ZipOutputStream(out);
    for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
      begin(zip, entry.getKey());
      zip.write(entry.getValue());
      zip.closeEntry();
    }
    zip.finish();
  }

  /** Copies an archive too long to hold; the stream stays open. */
  public static void copy(Path archive, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    try (ZipFile in = new ZipFile(archive.toFile())) {
      for (String name : in.stream().map(ZipEntry::getName).sorted(TYPES_FIRST).toList()) {
        begin(zip, name);
        try (InputStream content = in.getInputStream(in.getEntry(name))) {
          content.transferTo(zip);
        }
        zip.closeEntry();
      }
    }
    zip.finish();
  }

  private static void begin(ZipOutputStream zip, String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(FIXED);
    zip.putNextEntry(entry);
  }
}
