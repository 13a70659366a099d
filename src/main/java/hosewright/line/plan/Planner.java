package hosewright.line.plan;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.MoneyWords;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.job.SoughtFlow;
import hosewright.job.layout.LayoutJob;
import hosewright.job.question.JobField;
import hosewright.line.assembly.HoseLine;
import hosewright.line.explain.ReasonWriter;
import hosewright.line.explain.Remedies;
import hosewright.line.hose.HoseLines;
import hosewright.line.layout.BoosterPlanner;
import hosewright.line.layout.DraftPlanner;
import hosewright.line.layout.LayoutFlow;
import hosewright.line.layout.LayoutPlanner;
import hosewright.line.model.LinePlan;
import hosewright.line.model.LinePlan.Alternative;
import hosewright.line.model.Reasoning;
import hosewright.line.search.Evaluated;
import hosewright.line.search.Front;
import hosewright.line.search.SearchResult;
import hosewright.line.search.SearchTally;
import hosewright.line.search.Shop;
import hosewright.line.shape.Dividers;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;

/**
 * Plans a line: the cheapest whole plan from the catalogue that passes every check, or the reason
 * why there is none and what would do instead.
 *
 * <p>Pure: the same job, catalogue, prices and date give the same plan.
 */
public final class Planner {
  /** The winner of each make, and the next that buys other goods. */
  private static final int PLANS_EXPLAINED = 2;

  private final Shop shop;
  private final LocalThreads register;

  /**
   * @param prices what the buyer pays on the date
   * @param date the day the prices are of; written into the plan
   * @param register which thread each district uses, for a job that names its district
   */
  public Planner(
      Catalogue catalogue,
      NetPrice prices,
      LocalDate date,
      CurrencyUnit currency,
      LocalThreads register) {
    this.shop = Shop.at(prices, catalogue, date, currency);
    this.register = register;
  }

  /**
   * The plan for a job.
   *
   * <p>More than one line is considered where the job asks for it, and where no single line of any
   * size does. A buyer who names the hose size asks about that line; several of it are advice.
   */
  public LinePlan plan(Job job) {
    return write(job, shop.find(job));
  }

  /** The plan for a layout of legs. */
  public LinePlan plan(LayoutJob layout) {
    shop.dated(layout.whole());
    LayoutJob so = layout.on(shop.date());
    DraftPlanner.Drawn drawn = found(so);
    return new LayoutPlanWriter(drawn.layout(), shop, register, drawn.strainer())
        .write(drawn.found());
  }

  /** A pump named by its number is one that is sold, and says what it adds. */
  private void refuseUnknownPumps(LayoutJob layout) {
    List<String> sold =
        shop.catalogue().ofKind(ItemKind.PUMP).stream()
            .filter(item -> item.form().pump().isPresent())
            .map(Item::number)
            .toList();
    List<Problem> problems =
        layout.boosters().values().stream()
            .flatMap(booster -> booster.item().stream())
            .filter(item -> !sold.contains(item))
            .distinct()
            .map(
                item ->
                    new Problem(
                        "pump",
                        item,
                        sold.isEmpty()
                            ? "left out: the catalogue has no pump whose curve is stated"
                            : "booster, for any that does, or a pump of the catalogue whose curve"
                                + " is stated: "
                                + String.join(", ", sold),
                        Nearest.to(item, sold)))
            .toList();
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private DraftPlanner.Drawn found(LayoutJob layout) {
    refuseUnknownPumps(layout);
    if (!layout.asNeeded().isEmpty() && layout.drafting().isEmpty()) {
      BoosterPlanner.Boosted boosted = new BoosterPlanner(layout, shop).find();
      return new DraftPlanner.Drawn(boosted.layout(), Optional.empty(), boosted.found());
    }
    return layout.drafting().isPresent()
        ? new DraftPlanner(layout, shop).find()
        : new DraftPlanner.Drawn(layout, Optional.empty(), new LayoutPlanner(layout, shop).find());
  }

  /**
   * What the source brings through the layout planned for given flows.
   *
   * @return empty when the catalogue cannot lay it at all
   * @throws BadInputException when no source is stated, or something else than water flows
   */
  public Optional<LayoutFlow> flow(LayoutJob layout) {
    refuseNoSource(layout.supply().isPresent() || layout.drafting().isPresent());
    refuseNoWater(layout.whole());
    shop.dated(layout.whole());
    DraftPlanner.Drawn drawn = found(layout.on(shop.date()));
    return drawn
        .found()
        .best()
        .map(best -> LayoutFlow.of(drawn.layout(), best, drawn.strainer().map(DraftPlanner::met)));
  }

  /** The plan for a job, with how it came to be chosen. */
  public Explained explain(Job job) {
    Job so = shop.dated(job);
    SearchResult found = shop.find(so, SearchResult.Make::of, PLANS_EXPLAINED);
    Map<String, Integer> leftOut = new HoseLines(so, shop.catalogue(), shop.prices()).leftOut();
    return new Explained(plan(so), ReasonWriter.of(so, shop.catalogue(), found, leftOut));
  }

  /** A plan and the reasoning behind it. */
  public record Explained(LinePlan plan, Reasoning reasoning) {}

  private LinePlan write(Job job, SearchResult found) {
    PlanWriter writer = new PlanWriter(job, shop.date(), register);
    if (found.best().isEmpty()) {
      return writer.nothingToLay(
          new Dividers(shop.dated(job), shop.catalogue(), shop.prices()).lacking(),
          new Remedies(shop, shop.dated(job)).whenNothingFits(),
          shop.currency(),
          found.tally().searched());
    }
    Evaluated best = found.best().get();
    List<String> instead =
        best.passes() ? List.of() : new Remedies(shop, shop.dated(job)).insteadOf(best);
    return writer.write(
        best, instead, alternatives(best, found.others()), found.tally().searched());
  }

  /**
   * The best plan of every hose size, the winner first, then as {@link LinePlan#alternatives}.
   *
   * @return empty when no hose may be laid as the job wishes
   */
  public List<LinePlan> plansBySize(Job job) {
    SearchResult found = shop.find(job);
    PlanWriter writer = new PlanWriter(job, shop.date(), register);
    return Stream.concat(found.best().stream(), found.others().stream())
        .map(plan -> writer.write(plan, List.of(), List.of(), found.tally().searched()))
        .toList();
  }

  /**
   * The trade-off between price, pressure, weight full of water and sections to couple: plans that
   * pass every check, each better in something than every other, of as many lines side by side as
   * the plan for the job has.
   *
   * @param most how many plans are shown where the front has more
   */
  public TradeOffs front(Job job, int most) {
    Front front = shop.front(job);
    PlanWriter writer = new PlanWriter(job, shop.date(), register);
    LinePlan.Searched none = new SearchTally().searched();
    return new TradeOffs(
        front.size(),
        front.spread(most).stream()
            .map(plan -> writer.write(plan, List.of(), List.of(), none))
            .toList());
  }

  /**
   * Plans that stand for the whole front.
   *
   * @param found how many plans are on it
   * @param plans those shown, cheapest first
   */
  public record TradeOffs(int found, List<LinePlan> plans) {}

  /**
   * The flow that the job's source brings through the line planned for it.
   *
   * @return empty when no hose may be laid as the job wishes
   * @throws BadInputException when the job states no source, or flows something else than water
   */
  public Optional<Flowing> flow(Job job) {
    return flow(SoughtFlow.of(job));
  }

  /** The flow that a source brings, of a job that may want none. */
  public Optional<Flowing> flow(SoughtFlow sought) {
    Job job = sought.job();
    refuseNoSource(job.supply().isPresent());
    refuseNoWater(job);
    Optional<Flowing> flow = flowThroughBest(job);
    // The cheapest line for hardly any water may run too fast when it brings more.
    return sought.open()
        ? flow.map(
            found ->
                found.arrives().flowGpm() > 0
                    ? flowThroughBest(
                            job.flowing(found.arrives().flowGpm(), found.arrives().deliveredPsi()))
                        .orElse(found)
                    : found)
        : flow;
  }

  private static void refuseNoSource(boolean stated) {
    if (!stated) {
      throw new BadInputException(
          JobField.SOURCE_PRESSURE.word(),
          "",
          "a flow is found from a source: give source-pressure, or static with residual and at, or"
              + " pump-curve");
    }
  }

  private static void refuseNoWater(Job job) {
    if (!job.service().isWater()) {
      throw new BadInputException(
          JobField.FLUID.word(), job.service().fluid(), "water: the laws used hold for it alone");
    }
  }

  private Optional<Flowing> flowThroughBest(Job job) {
    return shop.find(job).best().map(plan -> Flowing.of(job, plan.assembly()));
  }

  private static List<Alternative> alternatives(Evaluated best, List<Evaluated> others) {
    return others.stream()
        .map(
            plan -> {
              HoseLine hose = plan.assembly().topology().hose();
              return new Alternative(
                  new LinePlan.HoseChoice(
                      hose.sizeIn(),
                      hose.couplingSizeIn(),
                      hose.series(),
                      plan.assembly().topology().lines()),
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
                plan.partsToSource() > best.partsToSource()
                    ? "a part would have to be sourced"
                    : plan.ranksLast() && !best.ranksLast()
                        ? plan.whyLast().orElseThrow()
                        : "costs " + MoneyWords.of(plan.total().minus(best.total())) + " more");
  }
}
