package hosewright.job.layout;

import java.util.Map;
import java.util.Optional;

/**
 * The points that a leg lies between, and the pump that it brings, as they were written down.
 *
 * @param begins the point where it begins; empty where it says what it is behind
 * @param ends the point where it ends
 * @param pump what is said of the pump where it begins, text by word; none where it brings none
 */
public record LegPoints(Optional<String> begins, Optional<String> ends, Map<String, String> pump) {
  public static final LegPoints NONE = new LegPoints(Optional.empty(), Optional.empty(), Map.of());

  public LegPoints {
    pump = Map.copyOf(pump);
  }
}
