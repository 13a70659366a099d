package hosewright.job.layout;

import java.util.List;

/**
 * What a job file wants besides the line, as it was written down.
 *
 * @param parts as a seller writes them: {@code 4 x W-SPAN-15-3 per line}
 * @param kits names of lists of parts
 */
public record PartsBeside(List<String> parts, List<String> kits) {
  public static final PartsBeside NONE = new PartsBeside(List.of(), List.of());

  public PartsBeside {
    parts = List.copyOf(parts);
    kits = List.copyOf(kits);
  }

  /** Whether there is nothing besides the line. */
  public boolean isEmpty() {
    return parts.isEmpty() && kits.isEmpty();
  }
}
