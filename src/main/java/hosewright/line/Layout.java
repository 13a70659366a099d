package hosewright.line;

import java.util.List;
import java.util.Optional;

/**
 * How a plan is more than one line from one outlet to one appliance.
 *
 * @param outlets like outlets of the source that a line starts from each
 * @param attackLines what lies behind a wye; empty where one appliance is fed
 * @param devices what stands at couplings between sections, nearest to the source first
 */
public record Layout(int outlets, Optional<AttackLines> attackLines, List<StationDevice> devices) {
  /** One line from one outlet to one appliance, with nothing between its sections. */
  public static final Layout ONE_LINE = new Layout(1, Optional.empty(), List.of());

  public Layout {
    devices = List.copyOf(devices);
  }

  /**
   * Like lines behind a wye, each to an appliance of its own.
   *
   * @param lines how many
   * @param wye item number of the wye
   * @param wyePlace place of the wye among the plan's parts, 0 for the first; every part behind it
   *     stands once in each line
   * @param neededFt run of one with slack, ft
   * @param laidFt coupled length of one, ft
   * @param sections lengths and counts of all of them together
   * @param flowGpm flow in one, gpm
   * @param wyePsi pressure that leaves the wye with that flow, psi
   * @param frictionCoefficient C, psi per 100 ft at 100 gpm; empty where another law decided
   * @param frictionLossPsi loss in the hose of one, psi
   * @param waterGal water in one filled line, US gal
   */
  public record AttackLines(
      int lines,
      String wye,
      int wyePlace,
      double sizeIn,
      double couplingSizeIn,
      String hoseSeries,
      double neededFt,
      double laidFt,
      List<LinePlan.SectionCount> sections,
      double flowGpm,
      double wyePsi,
      double boreIn,
      Optional<Double> frictionCoefficient,
      String frictionBasis,
      double frictionLossPsi,
      double velocityFtPerS,
      double waterGal) {
    public AttackLines {
      sections = List.copyOf(sections);
    }
  }

  /**
   * A device between two sections.
   *
   * @param askedFt station it was asked for, ft of hose from the source
   * @param atFt station of the coupling it stands at
   */
  public record StationDevice(String item, String description, double askedFt, double atFt) {}

  /** What stands where, in sentences without a full stop. */
  public List<String> sentences() {
    return devices.stream()
        .map(
            device ->
                Checks.text(
                    "%s stands %.0f ft along the hose, at the coupling nearest to the %.0f ft asked"
                        + " for",
                    device.item(), device.atFt(), device.askedFt()))
        .toList();
  }
}
