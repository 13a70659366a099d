package hosewright.door.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * A whole purchase as the ledger sees it: four planned jobs and two lists of parts, thirty lines.
 *
 * @param lines what each line of its order is of, in order
 */
record FitOut(List<Line> lines) {
  /** So many of an item for a group. */
  record Line(int group, String item, int quantity) {}

  private static final List<String> JOBS =
      List.of(
          "hydrant-to-nozzle.yaml",
          "wye-to-two-hand-lines.yaml",
          "large-supply.yaml",
          "wash-down.yaml");

  /** Writes its package file into a folder. */
  static Path file(Path folder) {
    StringBuilder text = new StringBuilder("title: Fit-out of Engine 4\njobs:\n");
    for (String job : JOBS) {
      text.append("  - job: ").append(Path.of("quotes", job).toAbsolutePath()).append('\n');
      text.append(job.equals(JOBS.get(0)) ? "    count: 2\n" : "");
    }
    text.append("  - title: Compartment 3\n    parts:\n");
    List.of(
            "10 x H175-DJ-50-15NH",
            "2 x N-FOG-15NH-150",
            "4 x W-SPAN-15-3",
            "2 x W-HYD",
            "3 x A-25NHF-15NHM",
            "12 x G-15NH")
        .forEach(line -> text.append("      - ").append(line).append('\n'));
    text.append("  - title: Station\n    parts:\n");
    List.of("30 x G-25NH", "2 x W-STZ-4-5", "6 x W-SPAN-15-3", "1 x H25-DJ-50-25NH")
        .forEach(line -> text.append("      - ").append(line).append('\n'));
    try {
      return Files.writeString(folder.resolve("fit-out.yaml"), text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The lines of a quote. */
  static FitOut of(JsonNode quote) {
    List<Line> lines = new ArrayList<>();
    for (JsonNode line : quote.get("lines")) {
      lines.add(
          new Line(
              line.get("group").asInt(),
              line.get("item").asString(),
              line.get("quantity").asInt()));
    }
    return new FitOut(List.copyOf(lines));
  }

  /** Pieces by item over all groups, which decide the price breaks. */
  Map<String, Integer> pieces() {
    Map<String, Integer> pieces = new LinkedHashMap<>();
    lines.forEach(line -> pieces.merge(line.item(), line.quantity(), Integer::sum));
    return pieces;
  }
}
