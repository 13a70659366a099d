package hosewright.hydraulics.network;

import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * The pressures at which as much water comes to every place as leaves it, by Newton's method.
 *
 * <p>No flow falls as pressure before it grows, so what every place has too much or too little of
 * is the slope of one bowl, and its bottom is sought. Newton's step is gone along only as far as it
 * leads down, which it does from anywhere: it cannot run away.
 */
final class Balance {
  private static final double CLOSE_GPM = 2e-6;
  private static final double NEAR_GPM = 1e-3;
  private static final int MOST_STEPS = 500;
  private static final double LONGEST_STEP_PSI = 300;

  /** Keeps a place that nothing reaches at its pressure. */
  private static final double HOLD_GPM_PER_PSI = 1e-7;

  private final List<Arc> arcs;
  private final double[] takenGpm;

  /**
   * @param arcs ways between the places
   * @param takenGpm what is taken out at each place, whatever its pressure
   */
  Balance(List<Arc> arcs, double[] takenGpm) {
    this.arcs = arcs;
    this.takenGpm = takenGpm;
  }

  /**
   * Pressures by place.
   *
   * @param startPsi where to begin looking
   */
  double[] psi(double[] startPsi) {
    double[] psi = startPsi.clone();
    double[] excess = leavesGpm(psi);
    double[] best = psi;
    double least = largest(excess);
    for (int step = 0; step < MOST_STEPS && largest(excess) > CLOSE_GPM; step++) {
      double[] way = newtonStep(psi, excess);
      psi = along(psi, way, length(psi, way, excess));
      excess = leavesGpm(psi);
      if (largest(excess) < least) {
        least = largest(excess);
        best = psi;
      }
    }
    if (!(least <= NEAR_GPM)) {
      throw new IllegalStateException("flows balance to " + least + " gpm only");
    }
    return best;
  }

  /** What leaves each place more than comes to it, gpm: the slope of the bowl. */
  private double[] leavesGpm(double[] psi) {
    double[] leaves = takenGpm.clone();
    for (Arc arc : arcs) {
      double flowGpm = arc.flowGpm(drop(arc, psi));
      if (arc.from() != Arc.OUTSIDE) {
        leaves[arc.from()] += flowGpm;
      }
      if (arc.to() != Arc.OUTSIDE) {
        leaves[arc.to()] -= flowGpm;
      }
    }
    return leaves;
  }

  static double drop(Arc arc, double[] psi) {
    return at(arc.from(), psi) - at(arc.to(), psi);
  }

  private static double at(int place, double[] psi) {
    return place == Arc.OUTSIDE ? 0 : psi[place];
  }

  private double[] newtonStep(double[] psi, double[] excess) {
    RealMatrix slope = MatrixUtils.createRealMatrix(psi.length, psi.length);
    for (int i = 0; i < psi.length; i++) {
      slope.setEntry(i, i, HOLD_GPM_PER_PSI);
    }
    for (Arc arc : arcs) {
      double more = arc.gpmPerPsi(arc.flowGpm(drop(arc, psi)));
      add(slope, arc.from(), arc.from(), more);
      add(slope, arc.to(), arc.to(), more);
      add(slope, arc.from(), arc.to(), -more);
      add(slope, arc.to(), arc.from(), -more);
    }
    double[] way =
        new CholeskyDecomposition(slope, 1e-9, 0)
            .getSolver()
            .solve(new ArrayRealVector(excess).mapMultiply(-1))
            .toArray();
    double longest = largest(way);
    return longest <= LONGEST_STEP_PSI ? way : scaled(way, LONGEST_STEP_PSI / longest);
  }

  private static void add(RealMatrix slope, int row, int column, double more) {
    if (row != Arc.OUTSIDE && column != Arc.OUTSIDE) {
      slope.addToEntry(row, column, more);
    }
  }

  /** How much of a step to go: all of it near the bottom, else to where the way is level. */
  private double length(double[] psi, double[] way, double[] excess) {
    double downhill = dot(excess, way);
    double[] whole = leavesGpm(along(psi, way, 1));
    if (dot(whole, way) <= 0 || largest(whole) < largest(excess) / 2) {
      return 1;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      double slope = dot(leavesGpm(along(psi, way, middle)), way);
      if (slope > 0) {
        high = middle;
      } else {
        low = middle;
        if (slope > 0.2 * downhill) {
          return low;
        }
      }
    }
    return low;
  }

  private static double[] along(double[] psi, double[] way, double share) {
    double[] reached = psi.clone();
    for (int i = 0; i < psi.length; i++) {
      reached[i] += share * way[i];
    }
    return reached;
  }

  private static double[] scaled(double[] values, double by) {
    return along(new double[values.length], values, by);
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
