package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * What a search over every kind of hose found.
 *
 * @param groups the plans of each kind of hose, best first; the kind with the best plan first
 */
public record SearchResult(List<List<Evaluated>> groups, SearchTally tally) {

  /** The plan to offer; empty when no hose may be laid as the job wishes. */
  public Optional<Evaluated> best() {
    return groups.stream().findFirst().map(plans -> plans.get(0));
  }

  /** The best of every other kind, best first. */
  public List<Evaluated> others() {
    return groups.stream().skip(1).map(plans -> plans.get(0)).toList();
  }

  /** A kind of hose, so that every kind that loses can say why: all of one size. */
  record Size(double sizeIn) implements Comparable<Size> {
    static Size of(HoseLine hose) {
      return new Size(hose.sizeIn());
    }

    @Override
    public int compareTo(Size other) {
      return Double.compare(sizeIn, other.sizeIn);
    }
  }

  /** A finer kind: one make with one pair of couplings, bought coupled or made up. */
  public record Make(double sizeIn, String series, String couplings, boolean madeUp)
      implements Comparable<Make> {
    private static final Comparator<Make> ORDER =
        Comparator.comparingDouble(Make::sizeIn)
            .thenComparing(Make::series)
            .thenComparing(Make::couplings)
            .thenComparing(Make::madeUp);

    public static Make of(HoseLine hose) {
      return new Make(hose.sizeIn(), hose.series(), hose.couplings(), hose.finish().madeUp());
    }

    @Override
    public int compareTo(Make other) {
      return ORDER.compare(this, other);
    }
  }

  /**
   * Searches every kind of hose on its own.
   *
   * <p>More than one line is considered where the job asks for it, and where no single line of any
   * kind does. A buyer who names one hose size asks about that line; several of it are advice.
   *
   * @param wanted of each kind
   */
  static <K extends Comparable<K>> SearchResult of(
      Job job,
      Catalogue catalogue,
      NetPrice prices,
      CurrencyUnit currency,
      Function<HoseLine, K> kind,
      Search.Wanted wanted) {
    SearchTally tally = new SearchTally();
    Map<K, List<Evaluated>> byKind = new TreeMap<>();
    for (int lines = job.wishes().fewestLines(); lines <= job.wishes().mostLines(); lines++) {
      Workbench bench = new Workbench(job, lines, catalogue, prices, currency);
      bench.hoses().stream()
          .collect(Collectors.groupingBy(kind, TreeMap::new, Collectors.toList()))
          .forEach(
              (key, hoses) ->
                  byKind.merge(
                      key,
                      bench.best(hoses, wanted, tally),
                      (old, more) -> best(old, more, wanted.places())));
      byKind.values().removeIf(List::isEmpty);
      if (byKind.values().stream().anyMatch(plans -> settles(plans.get(0)))) {
        break;
      }
    }
    List<List<Evaluated>> groups = new ArrayList<>(byKind.values());
    groups.sort(Comparator.comparing(plans -> plans.get(0), PlanRank.BEST_FIRST));
    return new SearchResult(List.copyOf(groups), tally);
  }

  /** Whether more lines side by side are not to be looked at. */
  private static boolean settles(Evaluated plan) {
    return plan.bestThatCanBe() && !plan.overBudget();
  }

  private static List<Evaluated> best(List<Evaluated> old, List<Evaluated> more, int places) {
    return Stream.concat(old.stream(), more.stream())
        .sorted(PlanRank.BEST_FIRST)
        .limit(places)
        .toList();
  }
}
