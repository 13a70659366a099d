package hosewright.desk.end;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import org.joda.money.Money;

/**
 * The best bridge, with the names of {@link BridgeDocument}, and what else could be done.
 *
 * @param chain empty when the ends mate as they are, or when nothing in the catalogue does it
 * @param cost null when the catalogue has no bridge, or not the whole of one
 */
public record Bridged(
    List<BridgeDocument.Step> chain,
    Money cost,
    List<BridgeDocument.Wanted> missing,
    List<BridgeDocument.Joint> joints,
    @JsonUnwrapped Hold hold,
    List<BridgeDocument> alternatives,
    List<String> notes) {

  /**
   * Whether it comes apart again, how wide it is where it is narrower than both ends, and what it
   * bears; null where there is nothing to hold.
   */
  public record Hold(Boolean removable, Double neckIn, Double workingPsi) {
    static final Hold NONE = new Hold(null, null, null);
  }

  static Bridged of(BridgeDocument best, List<BridgeDocument> others, List<String> notes) {
    return new Bridged(
        best.chain(),
        best.missing().isEmpty() ? best.cost() : null,
        best.missing(),
        best.joints(),
        new Hold(best.removable(), best.neckIn(), best.workingPsi()),
        others,
        notes);
  }

  /** No bridge at all. */
  static Bridged nothing(List<String> notes) {
    return new Bridged(List.of(), null, List.of(), List.of(), Hold.NONE, List.of(), notes);
  }
}
