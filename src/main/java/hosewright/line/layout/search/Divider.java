package hosewright.line.layout.search;

import hosewright.catalogue.Item;
import hosewright.hydraulics.LineElement;
import hosewright.job.layout.LegJob;
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
 * @param lossesPsi what it takes on the way to each, psi
 */
public record Divider(Item item, End inlet, List<End> outlets, List<Double> lossesPsi) {
  public Divider {
    outlets = List.copyOf(outlets);
    lossesPsi = List.copyOf(lossesPsi);
  }

  /**
   * Water enters by the first end.
   *
   * @param legs what hangs on the outlets, in their order
   */
  static Divider of(Item item, List<End> outlets, List<LegJob> legs) {
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    End inlet = item.ends().get(0);
    List<Double> lossesPsi = new ArrayList<>();
    for (int i = 0; i < outlets.size(); i++) {
      Placed part = towards(item, inlet, outlets.get(i));
      lossesPsi.add(lossPsi(part, wholeGpm, legs.get(i).job().flowGpm()));
    }
    return new Divider(item, inlet, outlets, lossesPsi);
  }

  /** As a part of a line towards a leg behind it. */
  public Placed towards(int leg) {
    return towards(item, inlet, outlets.get(leg));
  }

  private static Placed towards(Item item, End inlet, End outlet) {
    return Placed.inLine(new Bridge.Link(item, inlet, outlet), 1);
  }

  /** What it takes on the way to a leg, psi. */
  public double lossPsi(int leg) {
    return lossesPsi.get(leg);
  }

  /** Its inlet sees the whole flow and its outlet the leg's own; the greater loss counts. */
  private static double lossPsi(Placed part, double wholeGpm, double legGpm) {
    LineElement loss = FittingLoss.of(part);
    return Math.max(loss.lossPsi(wholeGpm), loss.lossPsi(legGpm * part.branches()));
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
