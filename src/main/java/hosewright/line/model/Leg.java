package hosewright.line.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies between two nodes.
 *
 * @param begins name of the node nearer to the source
 * @param ends name of the node nearer to the appliance
 * @param lines like stretches side by side
 * @param hose what is laid; empty where only fittings lie between the nodes
 * @param water what one of its lines does with its share of the flow
 * @param parts of one of its lines, source first, without what stands at the nodes
 */
public record Leg(
    String name,
    String begins,
    String ends,
    int lines,
    Optional<Hose> hose,
    Water water,
    List<Part> parts) {

  public Leg {
    parts = List.copyOf(parts);
  }

  /**
   * The hose of a leg.
   *
   * @param sizeIn nominal size, in
   * @param couplingSizeIn nominal size of its couplings, in
   * @param series the catalogue's hose line
   * @param boreIn bore it is calculated with, in
   * @param neededFt run of one line with slack, ft
   * @param laidFt coupled lengths of one line together, ft
   */
  public record Hose(
      double sizeIn,
      double couplingSizeIn,
      String series,
      double boreIn,
      double neededFt,
      double laidFt) {}

  /**
   * Water in one line of a leg.
   *
   * @param flowGpm in it, US gal/min
   * @param inletPsi where it begins, psi; 0 where nothing is calculated, as all that follows
   * @param outletPsi where it ends, psi
   * @param friction what its hose takes
   * @param velocityFtPerS in its hose, ft/s
   * @param waterGal in it once full, US gal
   * @param profile pressure at its stations, counted from the source; empty where legs follow one
   *     another only, as the plan's own profile has them then
   */
  public record Water(
      double flowGpm,
      double inletPsi,
      double outletPsi,
      Friction friction,
      double velocityFtPerS,
      double waterGal,
      List<Hydraulics.Station> profile) {

    public Water {
      // Plans kept before there were such profiles have none.
      profile = profile == null ? List.of() : List.copyOf(profile);
    }

    /** With no profile of its own. */
    public Water(
        double flowGpm,
        double inletPsi,
        double outletPsi,
        Friction friction,
        double velocityFtPerS,
        double waterGal) {
      this(flowGpm, inletPsi, outletPsi, friction, velocityFtPerS, waterGal, List.of());
    }

    /** With its profile. */
    public Water along(List<Hydraulics.Station> stations) {
      return new Water(flowGpm, inletPsi, outletPsi, friction, velocityFtPerS, waterGal, stations);
    }
  }

  /**
   * Friction in the hose of a leg.
   *
   * @param lossPsi in one line, psi
   * @param basis which law and coefficient decided it, in words, with its source
   * @param coefficient C, psi per 100 ft at 100 gpm; empty where another law decided
   */
  public record Friction(double lossPsi, String basis, Optional<Double> coefficient) {
    public static final Friction NONE = new Friction(0, "", Optional.empty());
  }

  /** Sections of one line, source first. */
  public List<Part> sections() {
    return parts.stream().filter(Part::isHose).toList();
  }

  /** Section lengths of all its lines together, in the order laid, each length once. */
  public List<SectionCount> sectionCounts() {
    return counted(sections());
  }

  /** Those that the buyer has, of all its lines together. */
  public List<SectionCount> ownSectionCounts() {
    return counted(sections().stream().filter(Part::isBuyers).toList());
  }

  private List<SectionCount> counted(List<Part> sections) {
    List<SectionCount> counts = new ArrayList<>();
    for (Part part : sections) {
      double lengthFt = part.section().orElseThrow().lengthFt();
      int count = part.count() * lines;
      int last = counts.size() - 1;
      if (last >= 0 && counts.get(last).lengthFt() == lengthFt) {
        counts.set(last, new SectionCount(lengthFt, counts.get(last).count() + count));
      } else {
        counts.add(new SectionCount(lengthFt, count));
      }
    }
    return counts;
  }
}
