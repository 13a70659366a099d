package hosewright.hydraulics.suction;

import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Water;
import java.util.List;

/**
 * Hard suction hose between open water and a pump, with its strainer, foot valve and fittings.
 *
 * <p>What the pump finds at its inlet is the net positive suction head available, {@code (pa -
 * pv)/w - lift - loss}: air pressure less the pressure at which the water boils, as feet of that
 * water, less the lift and what the hose takes. A pump needs as much as its maker states for the
 * flow.
 *
 * @param elements from the water to the pump; their own rise is not counted, the lift is
 * @param liftFt height of the pump above the water, ft; negative where the water stands higher
 * @param altitudeFt height of the place above sea level, ft
 * @param temperatureF of the water, 32 to 212 °F
 */
public record SuctionLine(
    List<LineElement> elements, double liftFt, double altitudeFt, double temperatureF) {

  public SuctionLine {
    elements = List.copyOf(elements);
    Given.between("lift", liftFt, -1_000, 1_000, "ft");
    Given.between("altitude", altitudeFt, -1_500, 36_000, "ft");
    Given.between("water temperature", temperatureF, 32, 212, "°F");
  }

  /** Lost in hose, strainer, foot valve and fittings at a flow, psi. */
  public double lossPsi(double flowGpm) {
    return elements.stream().mapToDouble(element -> element.lossPsi(flowGpm)).sum();
  }

  /** Net positive suction head available at the pump, ft of the water; below 0 it boils before. */
  public double npshAvailableFt(double flowGpm) {
    return mostLiftFt(flowGpm, 0) - liftFt;
  }

  /**
   * The lift that still works at a flow, ft; negative where the water must stand above the pump.
   *
   * @param npshRequiredFt net positive suction head the pump's maker states for that flow, ft
   */
  public double mostLiftFt(double flowGpm, double npshRequiredFt) {
    Given.between("NPSH required", npshRequiredFt, 0, 1_000, "ft");
    return Suction.limitFt(altitudeFt, temperatureF) - feet(lossPsi(flowGpm)) - npshRequiredFt;
  }

  /**
   * Gauge pressure at the pump's end of the hose, psi: below 0 by the vacuum the hose must bear.
   *
   * @param flowGpm 0 for a line that is primed and stands
   */
  public double inletPsi(double flowGpm) {
    return -liftFt / feet(1) - lossPsi(flowGpm);
  }

  private double feet(double psi) {
    return Water.atF(temperatureF).headFt(psi);
  }
}
