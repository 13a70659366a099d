package hosewright.line.assembly;

import hosewright.job.Limit;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Gaskets of one size and family in a line.
 *
 * @param end an end that takes this gasket
 * @param fitted come fitted in parts that are bought, not charged again
 * @param bought must be added to parts that come without
 * @param owned are in what the buyer has; the line brings spares for them
 */
public record GasketCount(End end, int fitted, int bought, int owned) {

  /** For the bag: a share of all, and at least one of each kind. */
  public int spare() {
    return Math.max(1, (int) Math.ceil(all() * Limit.SPARE_GASKETS_SHARE.value()));
  }

  /** Every gasket of its kind that stands in the line. */
  public int all() {
    return fitted + bought + owned;
  }

  /** The gaskets of several lines together, kind by kind, so that they share their spares. */
  public static List<GasketCount> together(List<GasketCount> one, List<GasketCount> other) {
    Map<Kind, GasketCount> kinds = new LinkedHashMap<>();
    Stream.concat(one.stream(), other.stream())
        .forEach(count -> kinds.merge(count.kind(), count, GasketCount::and));
    return List.copyOf(kinds.values());
  }

  private GasketCount and(GasketCount other) {
    return new GasketCount(end, fitted + other.fitted, bought + other.bought, owned + other.owned);
  }

  /** What one gasket of the catalogue serves. */
  public Kind kind() {
    return new Kind(end.family(), end.sizeIn());
  }

  /**
   * Gaskets of a line, one for each gasketed end that a joint closes or a spare section has, kind
   * by kind.
   */
  public static List<GasketCount> of(Assembly line, int spareSections) {
    return of(line, 1, spareSections);
  }

  /**
   * The same of a line that is laid several times.
   *
   * @param copies how many times
   */
  public static List<GasketCount> of(Assembly line, int copies, int spareSections) {
    Map<Kind, int[]> counts = new LinkedHashMap<>();
    Map<Kind, End> ends = new LinkedHashMap<>();
    for (Assembly.MadeJoint joint : line.joints()) {
      int times = joint.count() * joint.lines() * copies;
      count(joint.upstream(), false, joint.upstreamPart(), times, counts, ends);
      count(joint.downstream(), true, joint.downstreamPart(), times, counts, ends);
    }
    for (int i = 0; i < line.lays().size(); i++) {
      countSpares(line.topology().legs().get(i), line.lays().get(i), spareSections, counts, ends);
    }
    List<GasketCount> gaskets = new ArrayList<>();
    counts.forEach(
        (kind, tally) ->
            gaskets.add(
                new GasketCount(ends.get(kind), tally[FITTED], tally[BOUGHT], tally[OWNED])));
    return gaskets;
  }

  private static void countSpares(
      LegShape leg, Lay lay, int spareSections, Map<Kind, int[]> counts, Map<Kind, End> ends) {
    HoseLine hose = leg.hose();
    hose.spare(lay)
        .ifPresent(
            spare -> {
              int bought = hose.sparesToBuy(lay, leg.lines(), spareSections);
              Placed sections = Placed.sections(hose, spare, false, bought, 1);
              count(hose.inlet(), true, sections, bought, counts, ends);
              count(hose.outlet(), false, sections, bought, counts, ends);
            });
  }

  /** Gaskets of the joints between like sections alone; empty for ends without gaskets. */
  public static Optional<GasketCount> between(HoseLine hose, int joints) {
    int perJoint = (hose.inlet().carriesGasket() ? 1 : 0) + (hose.outlet().carriesGasket() ? 1 : 0);
    int fitted =
        (hose.finish().gaskets().atInlet() ? 1 : 0) + (hose.finish().gaskets().atOutlet() ? 1 : 0);
    int all = joints * perJoint;
    int bought = joints * (perJoint - fitted);
    return perJoint == 0
        ? Optional.empty()
        : Optional.of(new GasketCount(hose.inlet(), all - bought, bought, 0));
  }

  private static final int FITTED = 0;
  private static final int BOUGHT = 1;

  /** What the buyer owns has its gasket; the line brings a spare for it. */
  private static final int OWNED = 2;

  /**
   * @param first whether it is the end that water meets first in the part
   */
  private static void count(
      End end,
      boolean first,
      Placed part,
      int times,
      Map<Kind, int[]> counts,
      Map<Kind, End> ends) {
    if (!end.carriesGasket() || times == 0) {
      return;
    }
    Kind kind = new Kind(end.family(), end.sizeIn());
    ends.putIfAbsent(kind, end);
    counts.computeIfAbsent(kind, k -> new int[3])[column(part, end, first)] += times;
  }

  private static int column(Placed part, End end, boolean first) {
    return switch (part.role()) {
      case SOURCE, PUMP, APPLIANCE -> OWNED;
      case HOSE ->
          part.isOwnedHose() ? OWNED : part.hose().bringsGasket(end, first) ? FITTED : BOUGHT;
      case ADAPTER, DEVICE, SPLIT, JOIN ->
          part.item().isPresent() && part.item().get().comesWithGaskets() ? FITTED : BOUGHT;
    };
  }

  /** Gaskets that are alike. */
  public record Kind(String family, double sizeIn) {}
}
