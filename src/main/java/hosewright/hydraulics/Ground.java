package hosewright.hydraulics;

import java.util.ArrayList;
import java.util.List;

/**
 * How high the ground lies along a stretch, straight between points.
 *
 * @param points from the beginning on, each farther along than the one before; the first at 0 ft
 *     along and 0 ft high
 */
public record Ground(List<Point> points) {
  /** Nearer than this to a place is at it, ft. */
  private static final double NEAR_FT = 1e-6;

  /**
   * A place on the ground.
   *
   * @param alongFt how far from the beginning, ft
   * @param heightFt over the beginning, ft; negative below it
   */
  public record Point(double alongFt, double heightFt) {}

  public Ground {
    points = List.copyOf(points);
  }

  /** Ground that rises or falls evenly from end to end. */
  public static Ground even(double lengthFt, double riseFt) {
    return new Ground(List.of(new Point(0, 0), new Point(lengthFt, riseFt)));
  }

  public double lengthFt() {
    return last().alongFt();
  }

  /** Height of the end over the beginning, ft. */
  public double riseFt() {
    return last().heightFt();
  }

  private Point last() {
    return points.get(points.size() - 1);
  }

  /** Whether nothing turns between its ends. */
  public boolean isEven() {
    return points.size() == 2;
  }

  /** Height of the lowest place over the beginning, ft; 0 or less. */
  public double lowestFt() {
    return points.stream().mapToDouble(Point::heightFt).min().orElseThrow();
  }

  /** Height of the highest place over the beginning, ft; 0 or more. */
  public double highestFt() {
    return points.stream().mapToDouble(Point::heightFt).max().orElseThrow();
  }

  /** Height of a place over the beginning, ft; beyond an end that of the end. */
  public double heightFt(double alongFt) {
    int next = firstBeyond(alongFt);
    if (next == 0 || next == points.size()) {
      return points.get(next == 0 ? 0 : next - 1).heightFt();
    }
    Point before = points.get(next - 1);
    Point behind = points.get(next);
    double share = (alongFt - before.alongFt()) / (behind.alongFt() - before.alongFt());
    return before.heightFt() + share * (behind.heightFt() - before.heightFt());
  }

  /** The points between two places, those at them left out. */
  List<Point> between(double fromFt, double toFt) {
    int first = firstBeyond(fromFt + NEAR_FT);
    int behind = firstBeyond(toFt - NEAR_FT);
    return first < behind ? points.subList(first, behind) : List.of();
  }

  /** The place of the first point that lies farther along. */
  private int firstBeyond(double alongFt) {
    int low = 0;
    int high = points.size();
    while (low < high) {
      int middle = (low + high) / 2;
      if (points.get(middle).alongFt() > alongFt) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** The ground from one place to another, told from its own beginning. */
  public Ground from(double fromFt, double toFt) {
    double beginsFt = heightFt(fromFt);
    List<Point> part = new ArrayList<>();
    part.add(new Point(0, 0));
    for (Point point : between(fromFt, toFt)) {
      part.add(new Point(point.alongFt() - fromFt, point.heightFt() - beginsFt));
    }
    part.add(new Point(toFt - fromFt, heightFt(toFt) - beginsFt));
    return new Ground(part);
  }

  /** The same heights under something longer that lies along all of it, such as hose in curves. */
  public Ground under(double lengthFt) {
    double times = lengthFt / lengthFt();
    return new Ground(
        points.stream()
            .map(point -> new Point(point.alongFt() * times, point.heightFt()))
            .toList());
  }

  /** This ground, and other ground that begins where it ends. */
  public Ground then(Ground next) {
    List<Point> all = new ArrayList<>(points);
    for (Point point : next.points().subList(1, next.points().size())) {
      all.add(new Point(lengthFt() + point.alongFt(), riseFt() + point.heightFt()));
    }
    return new Ground(all);
  }
}
