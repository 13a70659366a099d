package hosewright.hydraulics;

import java.util.List;

/**
 * The source pressure a flow needs.
 *
 * @param elements the line, source to appliance
 * @param flowGpm the flow asked for, gpm
 * @param needPsi pressure the appliance needs at it, psi
 * @param sourcePsi need plus every loss, psi; 0 or below where a fall alone brings more than enough
 * @param losses by kind
 */
public record Solution(
    List<LineElement> elements, double flowGpm, double needPsi, double sourcePsi, Losses losses) {

  /** Pressure by station when the source holds the pressure needed, flowing and shut. */
  public List<Station> profile() {
    return LineHydraulics.profile(elements, flowGpm, sourcePsi, sourcePsi);
  }

  /** Pressure by station with this source: what it gives at the flow, and what it gives shut. */
  public List<Station> profile(Supply supply) {
    return LineHydraulics.profile(
        elements, flowGpm, supply.pressurePsi(flowGpm), supply.closedPsi());
  }
}
