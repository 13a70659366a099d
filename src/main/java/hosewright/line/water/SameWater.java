package hosewright.line.water;

import hosewright.hydraulics.LineElement;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Tells whether water meets the same in two lines, however much flows. */
public final class SameWater {
  /** What a fitting takes is a coefficient, and a loss from some flow on. */
  private static final List<Double> FLOWS_GPM = List.of(10.0, 349.0, 351.0, 5_000.0);

  private SameWater() {}

  /** What water meets in a line; that of another is equal where it meets the same. */
  public static List<Object> met(Assembly line) {
    List<Object> met = new ArrayList<>();
    double laidFt = 0;
    for (Placed part : line.parts()) {
      if (part.isHose()) {
        laidFt += part.count() * part.lengthFt();
        met.add(part.isOwnedHose());
      } else if (part.role().isFitting()) {
        met.add(fitting(part));
      }
    }
    met.add(laidFt);
    met.add(line.topology().lines());
    met.add(line.topology().hose());
    return met;
  }

  private static List<Object> fitting(Placed part) {
    LineElement element = FittingLoss.of(part);
    OptionalDouble rated =
        part.item().map(item -> item.water().ratedFlowGpm()).orElse(OptionalDouble.empty());
    return List.of(
        part.role(),
        part.waterwayIn(),
        size(part.upstream()),
        size(part.downstream()),
        rated,
        FLOWS_GPM.stream().map(element::lossPsi).toList());
  }

  private static double size(Optional<End> end) {
    return end.map(End::sizeIn).orElse(0.0);
  }
}
