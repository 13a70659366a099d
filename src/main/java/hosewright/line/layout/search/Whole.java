package hosewright.line.layout.search;

import hosewright.line.goods.Goods;
import java.util.List;

/**
 * A whole layout.
 *
 * @param legs those that begin at the source
 * @param sum seen from the source
 */
public record Whole(List<LaidLeg> legs, Sum sum) {
  public Whole {
    legs = List.copyOf(legs);
  }

  public Goods goods() {
    return sum.goods();
  }

  /** What the source must hold, psi. */
  public double needsPsi() {
    return sum.needsPsi();
  }

  /** The highest that it stands at the source with nothing flowing, psi. */
  public double bearsPsi() {
    return sum.bearsPsi();
  }
}
