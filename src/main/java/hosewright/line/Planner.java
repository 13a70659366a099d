package hosewright.line;

import hosewright.catalogue.Catalogue;
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

  /** The winner of each make, and the next that buys other goods. */
  private static final int PLANS_EXPLAINED = 2;

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
    return write(job, find(job));
  }

  /** The plan for a job, with how it came to be chosen. */
  public Explained explain(Job job) {
    Job so = dated(job);
    SearchResult found =
        SearchResult.of(so, catalogue, prices, currency, SearchResult.Make::of, PLANS_EXPLAINED);
    Map<String, Integer> leftOut = new HoseLines(so, catalogue, prices).leftOut();
    return new Explained(plan(so), ReasonWriter.of(so, catalogue, found, leftOut));
  }

  /** A plan and the reasoning behind it. */
  public record Explained(LinePlan plan, Reasoning reasoning) {}

  private LinePlan write(Job job, SearchResult found) {
    PlanWriter writer = new PlanWriter(job, date, register);
    if (found.best().isEmpty()) {
      return writer.nothingToLay(
          new Dividers(dated(job), catalogue, prices).lacking(),
          new Remedies(this, catalogue, dated(job)).whenNothingFits(),
          currency,
          found.tally().searched());
    }
    Evaluated best = found.best().get();
    List<String> instead =
        best.passes() ? List.of() : new Remedies(this, catalogue, dated(job)).insteadOf(best);
    return writer.write(
        best, instead, alternatives(best, found.others()), found.tally().searched());
  }

  /**
   * The best plan of every hose size, the winner first, then as {@link LinePlan#alternatives}.
   *
   * @return empty when no hose may be laid as the job wishes
   */
  public List<LinePlan> plansBySize(Job job) {
    SearchResult found = find(job);
    PlanWriter writer = new PlanWriter(job, date, register);
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
    Front front = frontOf(job);
    PlanWriter writer = new PlanWriter(job, date, register);
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

  /** Every plan of the front. */
  Front frontOf(Job job) {
    Job so = dated(job);
    Front front = new Front();
    int lines = so.wishes().fewestLines();
    while (front.isEmpty() && lines <= so.wishes().mostLines()) {
      new Workbench(so, lines++, catalogue, prices, currency).addTo(front);
    }
    return front;
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

  private SearchResult find(Job job) {
    return SearchResult.of(dated(job), catalogue, prices, currency, SearchResult.Size::of, 1);
  }

  /** The job with the day of its prices, its terms held against the dealer's own. */
  private Job dated(Job job) {
    Conditions conditions = job.conditions();
    Job so = job.on(date);
    conditions
        .budget()
        .filter(budget -> !budget.getCurrencyUnit().equals(currency))
        .ifPresent(
            budget -> {
              throw new BadInputException(
                  JobField.BUDGET.word(),
                  MoneyWords.of(budget),
                  "a sum in " + currency.getCode() + ", the currency of the catalogue");
            });
    LocalDate day = so.date().orElseThrow();
    conditions
        .deliverBy()
        .filter(day::isAfter)
        .ifPresent(
            by -> {
              throw new BadInputException(
                  JobField.DELIVER_BY.word(),
                  by.toString(),
                  "no earlier than the day the prices are of, " + day);
            });
    return so;
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
                plan.assembly().hasPartToSource() && !best.assembly().hasPartToSource()
                    ? "an adapter would have to be sourced"
                    : "costs " + MoneyWords.of(plan.total().minus(best.total())) + " more");
  }

  /** The best plan when the wishes are changed, for advice; never itself gives advice. */
  Optional<Evaluated> bestWith(Job changed, int lines) {
    return allWith(changed, lines).stream()
        .filter(plan -> !plan.assembly().hasPartToSource())
        .findFirst();
  }

  /** The best plan when the terms are changed, if it passes with nothing left to source. */
  Optional<Evaluated> passing(Job changed) {
    return find(changed)
        .best()
        .filter(Evaluated::passes)
        .filter(plan -> !plan.assembly().hasPartToSource());
  }

  /** Passing plans of every size when the wishes are changed, cheapest first. */
  List<Evaluated> allWith(Job changed, int lines) {
    Job so = changed.withWishes(changed.wishes().withLines(lines));
    return find(so).groups().stream()
        .map(plans -> plans.get(0))
        .filter(Evaluated::passes)
        .sorted(Comparator.comparing(Evaluated::total))
        .toList();
  }
}
