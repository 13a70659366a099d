package hosewright.desk.end;

import java.util.List;
import org.joda.money.Money;

/**
 * The best bridge, with the names of {@link BridgeDocument}, and what else could be done.
 *
 * @param chain empty when the ends mate as they are, or when nothing in the catalogue does it
 * @param cost null when the catalogue has no bridge
 */
public record Bridged(
    List<BridgeDocument.Step> chain,
    Money cost,
    List<BridgeDocument.Wanted> missing,
    List<BridgeDocument.Joint> joints,
    Boolean removable,
    Double workingPsi,
    List<BridgeDocument> alternatives,
    List<String> notes) {

  static Bridged of(BridgeDocument best, List<BridgeDocument> others, List<String> notes) {
    return new Bridged(
        best.chain(),
        best.missing().isEmpty() ? best.cost() : null,
        best.missing(),
        best.joints(),
        best.removable(),
        best.workingPsi(),
        others,
        notes);
  }

  /** No bridge at all. */
  static Bridged nothing(List<String> notes) {
    return new Bridged(List.of(), null, List.of(), List.of(), null, null, List.of(), notes);
  }
}
