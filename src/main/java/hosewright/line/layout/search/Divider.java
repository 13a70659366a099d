package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Placed;
import hosewright.line.water.FittingLoss;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/**
 * A wye, water thief or manifold in its place, with the outlet each leg behind it hangs on.
 *
 * @param inlet the end that the leg before it ends at
 * @param outlets one for each leg behind it, in their order
 */
public record Divider(Item item, End inlet, List<End> outlets) {
  public Divider {
    outlets = List.copyOf(outlets);
  }

  /** As a part of a line towards a leg behind it. */
  public Placed towards(int leg) {
    return Placed.inLine(new Bridge.Link(item, inlet, outlets.get(leg)), 1);
  }

  /**
   * What it takes on the way to a leg, psi: its inlet sees the whole flow and its outlet the leg's
   * own, and the greater of the two losses counts.
   *
   * @param wholeGpm flow at its inlet, gpm
   * @param legGpm flow of one line of the leg, gpm
   */
  public double lossPsi(int leg, double wholeGpm, double legGpm) {
    Placed part = towards(leg);
    double likeGpm = legGpm * part.branches();
    return Math.max(FittingLoss.of(part).lossPsi(wholeGpm), FittingLoss.of(part).lossPsi(likeGpm));
  }

  /**
   * The gaskets in its ends that it does not bring: the legs that hang on them count those as the
   * buyer's own.
   *
   * @param copies how many times each leg is laid
   */
  List<GasketCount> gasketsToBuy(List<Integer> copies) {
    if (item.comesWithGaskets()) {
      return List.of();
    }
    List<GasketCount> gaskets = new ArrayList<>();
    if (inlet.carriesGasket()) {
      gaskets.add(new GasketCount(inlet, 0, 1, -1));
    }
    for (int i = 0; i < outlets.size(); i++) {
      if (outlets.get(i).carriesGasket()) {
        int each = copies.get(i);
        gaskets.add(new GasketCount(outlets.get(i), 0, each, -each));
      }
    }
    return GasketCount.together(gaskets, List.of());
  }
}
