package hosewright.line.layout.search;

import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.line.search.LegWays.Way;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a psi is worth on each leg, in the currency's major unit: multipliers of the limit that no
 * way from the source to an appliance may need more than the source gives.
 *
 * <p>Whatever they are, a layout that is fed costs no less than its least prices with its pressure
 * at its worth, less {@link #ofSource}: so they tell what is too dear once it is fed as it must be
 * (Lagrangian relaxation; Fisher, Management Science 27 (1981) 1-18).
 *
 * @param ofEach of each leg: that of all the ways that lead through it
 * @param ofSource what all that the source gives is worth
 */
public record Worth(Map<String, Double> ofEach, double ofSource) {
  public static final Worth NOTHING = new Worth(Map.of(), 0);

  /**
   * @param ofLast of each leg that ends at an appliance, by name
   * @param sourcePsi what the source gives
   */
  static Worth of(LayoutJob layout, Map<String, Double> ofLast, double sourcePsi) {
    Map<String, Double> ofEach = new HashMap<>();
    layout.atSource().forEach(leg -> add(layout, leg, ofLast, ofEach));
    double all = layout.atSource().stream().mapToDouble(leg -> ofEach.get(leg.name())).sum();
    return new Worth(Map.copyOf(ofEach), all * sourcePsi);
  }

  private static double add(
      LayoutJob layout, LegJob leg, Map<String, Double> ofLast, Map<String, Double> ofEach) {
    double worth =
        leg.last()
            ? ofLast.getOrDefault(leg.name(), 0.0)
            : layout.behind(leg).stream()
                .mapToDouble(next -> add(layout, next, ofLast, ofEach))
                .sum();
    ofEach.put(leg.name(), worth);
    return worth;
  }

  /** Of a psi on a leg. */
  double ofPsi(LegJob leg) {
    return ofEach.getOrDefault(leg.name(), 0.0);
  }

  /** Of what a line takes, and of what the appliance needs where it ends at one. */
  double of(LegJob leg, Way way) {
    return ofNeed(leg) + of(List.of(leg), way.levels().lostPsi());
  }

  /** Of what the appliance needs where a leg ends at one. */
  double ofNeed(LegJob leg) {
    return leg.last() ? of(List.of(leg), leg.job().needPsi()) : 0;
  }

  /** Of what some legs need where they begin. */
  double of(List<LegJob> legs, double needsPsi) {
    double eachPsi = legs.stream().mapToDouble(this::ofPsi).sum();
    return eachPsi == 0 ? 0 : eachPsi * needsPsi;
  }
}
