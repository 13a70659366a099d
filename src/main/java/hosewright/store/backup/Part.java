package hosewright.store.backup;

import hosewright.store.seal.Seal;
import java.util.List;

/** What a manifest says of one part of a backup. */
record Part(String name, long rows, long bytes, String sha256) {

  String written() {
    return String.join("\t", name, Long.toString(rows), Long.toString(bytes), sha256);
  }

  /** All parts as the manifest has them, its own digest on the last line. */
  static String manifest(List<Part> parts) {
    StringBuilder lines = new StringBuilder();
    parts.forEach(part -> lines.append(part.written()).append('\n'));
    String digest = Seal.digest(lines.toString());
    return lines.append("manifest\t").append(digest).append('\n').toString();
  }
}
