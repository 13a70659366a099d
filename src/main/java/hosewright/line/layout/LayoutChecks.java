package hosewright.line.layout;

import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.line.check.ServiceChecks;
import hosewright.line.check.SourceChecks;
import hosewright.line.model.Check;
import hosewright.line.model.Check.Outcome;
import hosewright.line.model.CheckId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The checks of a whole layout: each once, from the leg that comes nearest to its limit, and every
 * one that warns or fails.
 */
public final class LayoutChecks {
  private final LayoutJob layout;
  private final FedLayout fed;

  private LayoutChecks(LayoutJob layout, FedLayout fed) {
    this.layout = layout;
    this.fed = fed;
  }

  public static List<Check> of(LayoutJob layout, FedLayout fed) {
    return new LayoutChecks(layout, fed).all();
  }

  private List<Check> all() {
    Map<CheckId, List<Check>> byId = new LinkedHashMap<>();
    fed.checks()
        .forEach(
            (leg, checks) ->
                checks.stream()
                    .filter(check -> speaksOf(leg, check.id()))
                    .map(check -> check.in(leg.name()))
                    .forEach(
                        check ->
                            byId.computeIfAbsent(check.id(), id -> new ArrayList<>()).add(check)));
    List<Check> all = new ArrayList<>();
    byId.forEach(
        (id, checks) -> {
          all.addAll(worst(checks));
          if (id == CheckId.DELIVERED_PRESSURE) {
            all.addAll(ofTheSource());
          }
        });
    return all;
  }

  /**
   * What is said of ends is said of the source and of appliances, not of what divides the water.
   */
  private boolean speaksOf(FedLeg leg, CheckId id) {
    boolean first = leg.before().isEmpty();
    boolean last = leg.laid().asked().last();
    return switch (id) {
      case DELIVERED_PRESSURE -> last;
      case END_VELOCITY -> last || first;
      case BACKFLOW_PROTECTION -> first;
      case AIR_GAP -> last && ServiceChecks.fromMain(layout.whole());
      default -> true;
    };
  }

  private List<Check> ofTheSource() {
    Job whole = layout.whole();
    return whole.service().isWater()
        ? SourceChecks.of(whole.flowing(layout.flowGpm(), whole.needPsi()))
        : List.of();
  }

  private static List<Check> worst(List<Check> checks) {
    List<Check> told = checks.stream().filter(check -> check.outcome() != Outcome.PASS).toList();
    if (told.isEmpty()) {
      return checks.stream().min(Comparator.comparingDouble(LayoutChecks::room)).stream().toList();
    }
    List<Check> once = new ArrayList<>();
    told.stream()
        .sorted(Comparator.comparing(Check::outcome).reversed())
        .filter(check -> once.stream().noneMatch(other -> other.note().equals(check.note())))
        .forEach(once::add);
    return once;
  }

  /** How far a check is from its limit, as a share of it. */
  private static double room(Check check) {
    return check.limit() == 0
        ? Math.abs(check.value())
        : Math.abs(check.limit() - check.value()) / Math.abs(check.limit());
  }
}
