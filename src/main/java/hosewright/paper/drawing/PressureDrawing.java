package hosewright.paper.drawing;

import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.LinePlan;
import hosewright.line.model.WayThrough;
import hosewright.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Pressure along a line in letters: over the hose laid, with the limits drawn in. */
public final class PressureDrawing {
  private PressureDrawing() {}

  /**
   * A pressure that is drawn as a line across the picture.
   *
   * @param sign what the line is drawn with
   */
  public record LimitLine(char sign, String name, double psi) {}

  /**
   * The drawing of a plan: what is needed at the appliance, the least working pressure, zero.
   *
   * @param width columns to use, 40 or more
   */
  public static String text(LinePlan plan, UnitSystem units, int width) {
    List<LimitLine> limits = new ArrayList<>();
    limits.add(new LimitLine('-', "needed at the appliance", plan.needPsi()));
    return text(plan.hydraulics().profile(), limits, PressureLimit.lowestPsi(plan), units, width);
  }

  /**
   * The drawing of one way through a plan whose lines part or meet.
   *
   * @param width columns to use, 40 or more
   */
  public static String text(LinePlan plan, WayThrough way, UnitSystem units, int width) {
    LimitLine needed = new LimitLine('-', "needed at the appliance", plan.needPsi(way));
    return text(way.profile(), List.of(needed), PressureLimit.lowestPsi(plan), units, width);
  }

  /** The lowest of the limits that working-pressure checks hold to, psi; empty without any. */
  public static OptionalDouble leastWorkingPsi(List<Check> checks) {
    return PressureLimit.lowestPsi(checks);
  }

  /**
   * The drawing of a profile, plain ASCII.
   *
   * @param limits lines besides the least working pressure and zero
   * @param leastWorkingPsi empty where no part carries a rating
   * @param width columns to use, 40 or more
   */
  public static String text(
      List<Station> profile,
      List<LimitLine> limits,
      OptionalDouble leastWorkingPsi,
      UnitSystem units,
      int width) {
    List<LimitLine> lines = new ArrayList<>();
    lines.add(new LimitLine('_', "no pressure", 0));
    lines.addAll(limits);
    leastWorkingPsi.ifPresent(
        psi -> lines.add(new LimitLine('=', "least working pressure of its parts", psi)));
    return new PressureText(profile, lines, units, Math.max(40, width)).drawn();
  }
}
