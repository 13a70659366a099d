package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.MoneyWords;
import hosewright.catalogue.NetPrice;
import hosewright.job.Conditions;
import hosewright.job.Job;
import hosewright.job.question.JobField;
import hosewright.line.assembly.HoseLine;
import hosewright.line.goods.PriceLadders;
import hosewright.problem.BadInputException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joda.money.CurrencyUnit;

/**
 * What a dealer sells and for how much, and the lines that can be found among it.
 *
 * @param prices what the buyer pays on the date
 * @param date the day the prices are of
 */
public record Shop(Catalogue catalogue, NetPrice prices, LocalDate date, CurrencyUnit currency) {

  /** A shop at the prices a buyer pays, each item's breaks looked up once. */
  public static Shop at(
      NetPrice prices, Catalogue catalogue, LocalDate date, CurrencyUnit currency) {
    return new Shop(catalogue, new PriceLadders(prices), date, currency);
  }

  /** The best plan of every hose size. */
  public SearchResult find(Job job) {
    return bySize(job, new Search.Wanted(1, true));
  }

  /**
   * The best plans of every kind of hose.
   *
   * @param job one that names the day of its prices
   * @param places how many plans of each kind are wanted that buy different goods
   */
  public <K extends Comparable<K>> SearchResult find(
      Job job, Function<HoseLine, K> kind, int places) {
    return SearchResult.of(job, catalogue, prices, currency, kind, new Search.Wanted(places, true));
  }

  private SearchResult bySize(Job job, Search.Wanted wanted) {
    return SearchResult.of(dated(job), catalogue, prices, currency, SearchResult.Size::of, wanted);
  }

  /** Every plan of the front. */
  public Front front(Job job) {
    Job so = dated(job);
    Front front = new Front();
    int lines = so.wishes().fewestLines();
    while (front.isEmpty() && lines <= so.wishes().mostLines()) {
      new Workbench(so, lines++, catalogue, prices, currency).addTo(front);
    }
    return front;
  }

  /** The job with the day of its prices, its terms held against the dealer's own. */
  public Job dated(Job job) {
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

  /** The best plan when the wishes are changed, for advice. */
  public Optional<Evaluated> bestWith(Job changed, int lines) {
    return allWith(changed, lines).stream().filter(plan -> plan.partsToSource() == 0).findFirst();
  }

  /** Whether some line passes when the terms are changed, be it with parts to source. */
  public boolean anyPasses(Job changed) {
    return bySize(changed, Search.Wanted.PASSING).best().filter(Evaluated::passes).isPresent();
  }

  /** The best plan when the terms are changed, if it passes with nothing left to source. */
  public Optional<Evaluated> passing(Job changed) {
    return bySize(changed, Search.Wanted.PASSING)
        .best()
        .filter(Evaluated::passes)
        .filter(plan -> plan.partsToSource() == 0);
  }

  /** Passing plans of every size when the wishes are changed, the one to offer first. */
  public List<Evaluated> allWith(Job changed, int lines) {
    Job so = changed.withWishes(changed.wishes().withLines(lines));
    return bySize(so, Search.Wanted.PASSING).groups().stream()
        .map(plans -> plans.get(0))
        .filter(Evaluated::passes)
        .sorted(PlanRank.BEST_FIRST)
        .toList();
  }
}
