package hosewright.line.assembly;

import hosewright.thread.End;
import java.util.List;

/**
 * A stretch of hose of one make, and what stands in it and behind it.
 *
 * @param reversed whether it is laid the other way round
 * @param lines how many such stretches lie side by side
 * @param neededFt length that one of them must cover, ft
 * @param midway what stands at couplings between its sections, nearest to the source first
 * @param after what stands behind it, in order: a wye or siamese first, then devices
 * @param afterLines how many times those parts stand side by side
 */
public record LegShape(
    HoseLine hose,
    boolean reversed,
    int lines,
    double neededFt,
    List<Midway> midway,
    List<Bridge.Link> after,
    int afterLines) {

  public LegShape {
    midway = List.copyOf(midway);
    after = List.copyOf(after);
  }

  /**
   * Devices that stand one after another at one coupling.
   *
   * @param stationFt where they are asked for, ft of hose from where the stretch begins
   */
  public record Midway(double stationFt, List<Bridge.Link> parts) {
    public Midway {
      parts = List.copyOf(parts);
    }
  }

  public LegShape turned() {
    return new LegShape(hose, !reversed, lines, neededFt, midway, after, afterLines);
  }

  public End inlet() {
    return reversed ? hose.outlet() : hose.inlet();
  }

  public End outlet() {
    return reversed ? hose.inlet() : hose.outlet();
  }

  /** Sections it must have, so that every device finds a coupling of its own. */
  public int fewestSections() {
    return midway.size() + 1;
  }

  /**
   * Behind how many of its sections each group of devices stands: at the coupling nearest to the
   * station asked for, of two as near the one nearer to the source, no two at one.
   */
  public List<Integer> couplings(Lay lay) {
    double[] endsFt = sectionEndsFt(lay);
    Integer[] behind = new Integer[midway.size()];
    int first = 1;
    for (int i = 0; i < behind.length; i++) {
      int last = endsFt.length - (behind.length - i);
      behind[i] = first;
      for (int sections = first + 1; sections <= last; sections++) {
        if (away(i, endsFt[sections - 1]) < away(i, endsFt[behind[i] - 1]) - 1e-9) {
          behind[i] = sections;
        }
      }
      first = behind[i] + 1;
    }
    return List.of(behind);
  }

  private double away(int group, double atFt) {
    return Math.abs(midway.get(group).stationFt() - atFt);
  }

  /** Where each section ends, ft from where the stretch begins; the longest come first. */
  public double[] sectionEndsFt(Lay lay) {
    double[] ends = new double[lay.sections()];
    int section = 0;
    double soFarFt = 0;
    for (int i = 0; i < hose.options().size(); i++) {
      for (int n = 0; n < lay.counts().get(i); n++) {
        soFarFt += hose.options().get(i).lengthFt();
        ends[section++] = soFarFt;
      }
    }
    return ends;
  }
}
