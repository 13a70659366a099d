package hosewright.hydraulics;

/**
 * A point along the line.
 *
 * @param name what ends here, or what it lies in
 * @param distanceFt hose laid up to here, ft
 * @param elevationFt height above the source, ft
 * @param flowingPsi gauge pressure with water flowing, psi
 * @param closedPsi gauge pressure with the nozzle shut, psi
 * @param within whether it lies within a section, where the ground turns, and not at an end
 */
public record Station(
    String name,
    double distanceFt,
    double elevationFt,
    double flowingPsi,
    double closedPsi,
    boolean within) {}
