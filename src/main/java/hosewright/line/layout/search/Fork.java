package hosewright.line.layout.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What hangs behind a place where water divides.
 *
 * @param divider empty at the source
 * @param legs in their order
 */
record Fork(Optional<Divider> divider, List<LaidLeg> legs, Sum sum) {

  /** With one more leg; {@code added} is what both take together. */
  Fork with(Limb limb, Sum added) {
    List<LaidLeg> longer = new ArrayList<>(legs);
    longer.add(limb.leg());
    return new Fork(divider, longer, added);
  }
}
