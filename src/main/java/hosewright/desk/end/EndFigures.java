package hosewright.desk.end;

import hosewright.desk.end.ShowEnd.Figure;
import hosewright.thread.CouplingSize;
import hosewright.thread.ThreadDimensions;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The figures held for an end, named in words. */
final class EndFigures {
  private static final double MILLIMETRES_PER_INCH = 25.4;

  private EndFigures() {}

  static List<Figure> of(ThreadDimensions thread) {
    List<Figure> figures = new ArrayList<>();
    add(figures, "threads per inch", thread.threadsPerInch(), "");
    add(figures, "pitch", thread.pitchIn(), "in");
    add(figures, "male, over the threads, at most", thread.majorMaxIn(), "in");
    add(figures, "the same in millimetres", millimetres(thread.majorMaxIn()), "mm");
    add(figures, "male, over the threads, at least", thread.male().majorMinIn(), "in");
    add(
        figures,
        "male, over the threads, small end",
        thread.male().taper().smallEndMajorIn(),
        "in");
    add(figures, "male pitch diameter, at most", thread.male().pitchMaxIn(), "in");
    add(figures, "male pitch diameter, at least", thread.male().pitchMinIn(), "in");
    add(figures, "male pitch diameter, small end", thread.male().taper().e0In(), "in");
    add(figures, "length made up by hand", thread.male().taper().l1In(), "in");
    add(figures, "female, inside the threads, at least", thread.female().minorMinIn(), "in");
    add(figures, "female, inside the threads, at most", thread.female().minorMaxIn(), "in");
    add(figures, "female pitch diameter, at least", thread.female().pitchMinIn(), "in");
    add(figures, "female, bottom of the threads, at least", thread.female().majorMinIn(), "in");
    return figures;
  }

  static List<Figure> of(CouplingSize coupling) {
    List<Figure> figures = new ArrayList<>();
    add(figures, "hose it is put on", OptionalDouble.of(coupling.hoseMm()), "mm");
    add(figures, "lug to lug", coupling.lugSpacingMm(), "mm");
    return figures;
  }

  private static OptionalDouble millimetres(OptionalDouble inches) {
    return inches.isPresent()
        ? OptionalDouble.of(inches.getAsDouble() * MILLIMETRES_PER_INCH)
        : inches;
  }

  private static void add(List<Figure> figures, String name, OptionalDouble value, String unit) {
    if (value.isPresent()) {
      double shown =
          BigDecimal.valueOf(value.getAsDouble())
              .setScale(unit.equals("mm") ? 3 : 5, RoundingMode.HALF_UP)
              .doubleValue();
      figures.add(new Figure(name, shown, unit));
    }
  }
}
