package hosewright.line;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.MoneyWords;
import hosewright.catalogue.NetPrice;
import hosewright.line.LinePlan.Alternative;
import hosewright.problem.BadInputException;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * Plans a line: the cheapest whole plan from the catalogue that passes every check, or the reason
 * why there is none and what would do instead.
 *
 * <p>Pure: the same job, catalogue, prices and date give the same plan.
 */
public final class Planner {
  /** Lines side by side at the most. */
  public static final int MOST_LINES = 3;

  private final Catalogue catalogue;
  private final NetPrice prices;
  private final LocalDate date;
  private final CurrencyUnit currency;
  private final LocalThreads register;

  /**
   * @param prices what the buyer pays on the date
   * @param date the day the prices are of; written into the plan
   */
  public Planner(Catalogue catalogue, NetPrice prices, LocalDate date, CurrencyUnit currency) {
    this(catalogue, prices, date, currency, LocalThreads.none());
  }

  /**
   * @param register which thread each district uses, for a job that names its district
   */
  public Planner(
      Catalogue catalogue,
      NetPrice prices,
      LocalDate date,
      CurrencyUnit currency,
      LocalThreads register) {
    this.catalogue = catalogue;
    this.prices = new PriceLadders(prices);
    this.date = date;
    this.currency = currency;
    this.register = register;
  }

  /**
   * The plan for a job.
   *
   * <p>More than one line is considered where the job asks for it, and where no single line of any
   * size does. A buyer who names the hose size asks about that line; several of it are advice.
   */
  public LinePlan plan(Job job) {
    Found found = find(job);
    PlanWriter writer = new PlanWriter(job, date, register);
    if (found.best().isEmpty()) {
      return writer.nothingToLay(
          new Remedies(this, job).whenNothingFits(catalogue), currency, found.searched());
    }
    Evaluated best = found.best().get();
    List<String> instead = best.passes() ? List.of() : new Remedies(this, job).insteadOf(best);
    return writer.write(best, instead, alternatives(best, found.others()), found.searched());
  }

  /**
   * The best plan of every hose size, the winner first, then as {@link LinePlan#alternatives}.
   *
   * @return empty when no hose may be laid as the job wishes
   */
  public List<LinePlan> plansBySize(Job job) {
    Found found = find(job);
    PlanWriter writer = new PlanWriter(job, date, register);
    return Stream.concat(found.best().stream(), found.others().stream())
        .map(plan -> writer.write(plan, List.of(), List.of(), found.searched()))
        .toList();
  }

  /**
   * The flow that the job's source brings through the line planned for it.
   *
   * @return empty when no hose may be laid as the job wishes
   * @throws BadInputException when the job states no source, or flows something else than water
   */
  public Optional<Flowing> flow(Job job) {
    if (job.supply().isEmpty()) {
      throw new BadInputException(
          JobField.SOURCE_PRESSURE.word(),
          "",
          "a flow is found from a source: give source-pressure, or static with residual and at, or"
              + " pump-curve");
    }
    if (!job.service().isWater()) {
      throw new BadInputException(
          JobField.FLUID.word(), job.service().fluid(), "water: the laws used hold for it alone");
    }
    return find(job).best().map(plan -> Flowing.of(job, plan.assembly()));
  }

  private Found find(Job job) {
    SearchTally tally = new SearchTally();
    Optional<Evaluated> chosen = Optional.empty();
    Map<Double, Evaluated> bySize = new TreeMap<>();
    int first = job.wishes().lines().orElse(1);
    int last = job.wishes().lines().orElse(job.wishes().hoseSizeIn().isPresent() ? 1 : MOST_LINES);
    for (int lines = first; lines <= last; lines++) {
      Map<Double, Evaluated> found = bestBySize(job, lines, tally);
      found.forEach((size, plan) -> bySize.merge(size, plan, Planner::better));
      chosen = bySize.values().stream().min(Planner::compare);
      if (chosen.isPresent() && chosen.get().bestThatCanBe()) {
        break;
      }
    }
    Optional<Evaluated> best = chosen;
    List<Evaluated> others =
        bySize.values().stream()
            .filter(plan -> best.isEmpty() || plan != best.get())
            .sorted(Planner::compare)
            .toList();
    return new Found(best, others, tally.searched());
  }

  /**
   * What a search found.
   *
   * @param others the best of every other size, best first
   */
  private record Found(
      Optional<Evaluated> best, List<Evaluated> others, LinePlan.Searched searched) {}

  /** The best plan of each hose size that could be laid at all. */
  private Map<Double, Evaluated> bestBySize(Job job, int lines, SearchTally tally) {
    PriceFloor floor = new PriceFloor(prices, mostAlike(job, lines));
    Eligibility eligibility = new Eligibility(job, prices);
    Accessories accessories = new Accessories(catalogue, eligibility, floor);
    Gaskets gaskets = new Gaskets(catalogue, eligibility, floor);
    BridgeChoices bridges = new BridgeChoices(job, adapters(eligibility), floor);
    Billing billing = new Billing(job, catalogue, prices, floor, gaskets, accessories);
    Evaluation evaluation = new Evaluation(job, billing, currency);
    LayChoices lays = new LayChoices(job, floor, gaskets);
    Opening opening = new Opening(job, floor, bridges, lays, accessories);
    Frames frames = new Frames(job, catalogue, eligibility, accessories);
    Map<Double, List<HoseLine>> hoses =
        new HoseLines(job, catalogue, prices)
            .all().stream()
                .collect(
                    Collectors.groupingBy(HoseLine::sizeIn, TreeMap::new, Collectors.toList()));
    Map<Double, Evaluated> best = new TreeMap<>();
    hoses.forEach(
        (size, ofSize) ->
            new Search(job, opening, evaluation, tally)
                .run(frames.of(ofSize, lines))
                .ifPresent(plan -> best.put(size, plan)));
    return best;
  }

  /** No adapter stands in a plan more often: every bridge full of it, and accessories besides. */
  private static int mostAlike(Job job, int lines) {
    int bridges = 2 + (lines > 1 ? 2 * lines : 0) + job.accessories().size();
    return bridges * BridgeGraph.MOST_ADAPTERS + job.accessories().size();
  }

  private List<Item> adapters(Eligibility eligibility) {
    return catalogue.ofKind(ItemKind.ADAPTER).stream()
        .filter(item -> item.ends().size() == 2)
        .filter(eligibility::wetted)
        .toList();
  }

  private static Evaluated better(Evaluated one, Evaluated other) {
    return compare(one, other) <= 0 ? one : other;
  }

  /** Plans that pass come first, then plans without a part to source, then the cheaper. */
  private static int compare(Evaluated one, Evaluated other) {
    if (one.passes() != other.passes()) {
      return one.passes() ? -1 : 1;
    }
    boolean oneSources = one.assembly().hasPartToSource();
    if (oneSources != other.assembly().hasPartToSource()) {
      return oneSources ? 1 : -1;
    }
    if (!one.passes() && one.failsLessThan(other) != other.failsLessThan(one)) {
      return one.failsLessThan(other) ? -1 : 1;
    }
    return one.beats(other) ? -1 : other.beats(one) ? 1 : 0;
  }

  private static List<Alternative> alternatives(Evaluated best, List<Evaluated> others) {
    return others.stream()
        .map(
            plan -> {
              HoseLine hose = plan.assembly().frame().hose();
              return new Alternative(
                  hose.sizeIn(),
                  hose.couplingSizeIn(),
                  hose.series(),
                  plan.assembly().frame().lines(),
                  plan.passes(),
                  plan.total(),
                  plan.hydraulics().requiredSourcePsi(),
                  whyLost(plan, best));
            })
        .toList();
  }

  private static String whyLost(Evaluated plan, Evaluated best) {
    return PlanWriter.limitedBy(plan)
        .orElseGet(
            () ->
                plan.assembly().hasPartToSource() && !best.assembly().hasPartToSource()
                    ? "an adapter would have to be sourced"
                    : "costs " + MoneyWords.of(plan.total().minus(best.total())) + " more");
  }

  /** The best plan when the wishes are changed, for advice; never itself gives advice. */
  Optional<Evaluated> bestWith(Job changed, int lines) {
    return bestBySize(changed, lines, new SearchTally()).values().stream()
        .filter(Evaluated::passes)
        .filter(plan -> !plan.assembly().hasPartToSource())
        .min(Comparator.comparing(Evaluated::total));
  }

  /** Passing plans of every size when the wishes are changed, cheapest first. */
  List<Evaluated> allWith(Job changed, int lines) {
    return bestBySize(changed, lines, new SearchTally()).values().stream()
        .filter(Evaluated::passes)
        .sorted(Comparator.comparing(Evaluated::total))
        .toList();
  }
}
