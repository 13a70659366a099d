package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.hydraulics.Supply;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Topology;
import hosewright.line.bridge.BridgeGraph;
import hosewright.line.check.PracticeChecks;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Availability;
import hosewright.line.goods.Billing;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Gaskets;
import hosewright.line.goods.PriceFloor;
import hosewright.line.hose.HoseLines;
import hosewright.line.model.Check;
import hosewright.line.shape.Topologies;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/** All that a search for a job with so many lines side by side works with, made once. */
final class Workbench {
  private final Job job;
  private final int lines;
  private final Catalogue catalogue;
  private final NetPrice asSold;
  private final CurrencyUnit currency;
  private final Billing billing;
  private final Gaskets gaskets;
  private final Evaluation evaluation;
  private final Branching opening;
  private final Topologies topologies;

  Workbench(Job job, int lines, Catalogue catalogue, NetPrice prices, CurrencyUnit currency) {
    this(job, lines, catalogue, new Prices(prices, prices), currency);
  }

  /**
   * Prices that a search goes by.
   *
   * @param counted what goods are counted at: their own, or no more than they can come to
   * @param asSold what they cost by themselves, by which one section is told to be as good as
   *     another
   */
  record Prices(NetPrice counted, NetPrice asSold) {}

  Workbench(Job job, int lines, Catalogue catalogue, Prices both, CurrencyUnit currency) {
    NetPrice prices = both.counted();
    this.job = job;
    this.lines = lines;
    this.currency = currency;
    this.catalogue = catalogue;
    this.asSold = both.asSold();
    PriceFloor floor = new PriceFloor(prices, Availability.of(job), mostAlike(job, lines));
    Eligibility eligibility = new Eligibility(job, prices);
    Accessories accessories = new Accessories(job, catalogue, eligibility, floor);
    this.gaskets = new Gaskets(catalogue, eligibility, floor);
    BridgeChoices bridges = new BridgeChoices(job, adapters(catalogue, eligibility), floor);
    this.billing = new Billing(job, catalogue, prices, floor, gaskets, accessories);
    this.evaluation = new Evaluation(job, billing, currency);
    this.opening =
        new Branching(job, floor, bridges, new LayChoices(job, floor, gaskets), accessories);
    List<HoseLine> attackHoses =
        job.attack()
            .map(
                attack ->
                    taken(
                        job,
                        new HoseLines(
                                job.withWishes(job.wishes().ofSizes(attack.hoseSizesIn())),
                                catalogue,
                                prices)
                            .all(),
                        true))
            .orElse(List.of());
    this.topologies = new Topologies(job, catalogue, eligibility, accessories, attackHoses);
  }

  /** No adapter stands in a plan more often: every bridge full of it, and accessories besides. */
  private static int mostAlike(Job job, int lines) {
    int appliances = job.appliances();
    int bridges = lines == 1 && appliances == 1 ? 2 : 2 + 2 * Math.max(lines, appliances);
    int devices = 0;
    for (String wanted : job.accessories()) {
      Asked asked = Asked.of(wanted);
      boolean midway = asked.stationFt().isPresent();
      int sideBySide =
          midway ? lines : asked.atAppliance() ? appliances : Math.max(1, job.outlets());
      devices += Math.max(sideBySide, asked.count().orElse(1));
      bridges += midway ? 2 * sideBySide : sideBySide;
    }
    return bridges * BridgeGraph.MOST_ADAPTERS + devices;
  }

  private static List<Item> adapters(Catalogue catalogue, Eligibility eligibility) {
    return catalogue.ofKind(ItemKind.ADAPTER).stream()
        .filter(item -> item.ends().size() == 2)
        .filter(eligibility::wetted)
        .toList();
  }

  /**
   * Hose of a type that its use takes or that may be; where there is none, all, so that it can be
   * said why.
   */
  private static List<HoseLine> taken(Job job, List<HoseLine> hoses, boolean last) {
    List<HoseLine> taken =
        hoses.stream()
            .filter(hose -> PracticeChecks.type(job, hose, last) != Check.Outcome.FAIL)
            .toList();
    return taken.isEmpty() ? hoses : taken;
  }

  /** Every hose line the job may be laid with, in catalogue order. */
  List<HoseLine> hoses() {
    return taken(job, new HoseLines(job, catalogue, asSold).all(), job.attack().isEmpty());
  }

  /** The best plans with any of some hose lines, as {@link Search#run} gives them. */
  List<Evaluated> best(List<HoseLine> hoses, Search.Wanted wanted, SearchTally tally) {
    List<Topology> all = topologies.of(hoses, lines);
    List<Topology> usual =
        all.stream().filter(topology -> !PracticeChecks.ranksLast(job, topology)).toList();
    if (usual.isEmpty()) {
      return search(all, wanted, tally);
    }
    if (usual.size() == all.size()) {
      return search(all, wanted, tally);
    }
    List<Evaluated> first = search(usual, wanted.passing(), tally);
    return settles(first, wanted.places())
        ? first
        : better(first, search(all, wanted, tally), wanted.places());
  }

  private List<Evaluated> search(List<Topology> some, Search.Wanted wanted, SearchTally tally) {
    return new Search(job, opening, evaluation, tally, wanted).run(some);
  }

  /** Whether no line that a rule ranks last could take a place among these. */
  private static boolean settles(List<Evaluated> plans, int places) {
    return plans.size() == places
        && plans.stream().allMatch(plan -> plan.bestThatCanBe() && plan.partsToSource() == 0);
  }

  /** Of the best of some lines and the best of all, those to offer first. */
  private static List<Evaluated> better(List<Evaluated> some, List<Evaluated> all, int places) {
    List<Evaluated> better = new ArrayList<>();
    Stream.concat(some.stream(), all.stream())
        .sorted(PlanRank.BEST_FIRST)
        .filter(plan -> better.stream().noneMatch(plan::buysTheSame))
        .filter(plan -> better.isEmpty() || plan.bestThatCanBe())
        .limit(places)
        .forEach(better::add);
    return List.copyOf(better);
  }

  /**
   * Adds every plan to a front that belongs on it; those that a rule ranks last only where there is
   * no other.
   */
  void addTo(Front front) {
    int centsPerUnit = (int) Math.pow(10, currency.getDecimalPlaces());
    FrontSearch search = new FrontSearch(job, opening, evaluation, centsPerUnit, front);
    List<Topology> all = topologies.of(hoses(), lines);
    search.run(all.stream().filter(topology -> !PracticeChecks.ranksLast(job, topology)).toList());
    if (front.isEmpty()) {
      search.run(all);
    }
  }

  /**
   * Every topology that some choice may make pass, with its choices, cheapest first.
   *
   * @param usual whether those that a rule ranks last are left out where there are others
   */
  List<Branch> opened(boolean usual) {
    List<Topology> all = topologies.of(hoses(), lines);
    List<Topology> first =
        all.stream().filter(topology -> !PracticeChecks.ranksLast(job, topology)).toList();
    List<Branch> opened =
        (usual && !first.isEmpty() ? first : all)
            .stream()
                .filter(topology -> opening.leastCost(topology).isPresent())
                .map(topology -> opening.open(opening.look(topology)))
                .filter(Branch::mayPass)
                .sorted(Comparator.comparingDouble(branch -> branch.bounds().leastCost()))
                .toList();
    List<Branch> joined = opened.stream().filter(branch -> !branch.isUnjoined()).toList();
    return joined.isEmpty() ? opened : joined;
  }

  Billing billing() {
    return billing;
  }

  Gaskets gaskets() {
    return gaskets;
  }

  /** A line with its checks, with another source than the job's. */
  Evaluated evaluated(Assembly line, Supply supply) {
    Evaluation so = new Evaluation(job.withSupply(Optional.of(supply)), billing, currency);
    return so.check(so.price(line));
  }
}
