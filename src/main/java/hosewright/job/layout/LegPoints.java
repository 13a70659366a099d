package hosewright.job.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The points that a leg lies between, and the pump that it brings, as they were written down.
 *
 * @param begins the point where it begins; empty where it says what it is behind
 * @param ends the point where it ends
 * @param pump what is said of the pump where it begins, text by word; none where it brings none
 * @param meeting the legs that meet where it begins; none where it begins behind one or none
 */
public record LegPoints(
    Optional<String> begins,
    Optional<String> ends,
    Map<String, String> pump,
    List<String> meeting) {
  public static final LegPoints NONE = new LegPoints(Optional.empty(), Optional.empty(), Map.of());

  public LegPoints {
    pump = Map.copyOf(pump);
    meeting = List.copyOf(meeting);
  }

  /** Where no legs meet. */
  public LegPoints(Optional<String> begins, Optional<String> ends, Map<String, String> pump) {
    this(begins, ends, pump, List.of());
  }

  /** Beginning as said elsewhere. */
  LegPoints notBeginning() {
    return new LegPoints(Optional.empty(), ends, pump);
  }

  /** Ending as said elsewhere. */
  LegPoints notEnding() {
    return new LegPoints(begins, Optional.empty(), pump, meeting);
  }
}
