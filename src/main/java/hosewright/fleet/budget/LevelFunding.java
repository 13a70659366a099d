package hosewright.fleet.budget;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least equal yearly spend that never leaves more than so many sections overdue.
 *
 * <p>Sections are replaced in the order they fall due, never before. Money a year leaves over is
 * kept for later years, without interest. A section costs what its item costs in the year it is
 * bought. How many are bought in each year is free as long as at each year's end no more than the
 * allowed number is due and not bought, and no more has been spent than the years so far brought.
 *
 * <p>Exact: for a given spend, the least that can have been spent for each number bought by each
 * year's end is worked out from the year before; less spent with as many bought is never worse. The
 * least spend is then found by halving, since more money never hurts.
 */
public final class LevelFunding {
  private static final long NEVER = Long.MAX_VALUE / 4;

  private final int years;
  private final int[] dueBy;
  private final int[] article;
  private final long[][] priceCents;
  private final int overdueAllowed;

  /**
   * @param dueBy sections due by the end of each year, the first year at 1
   * @param article the article of each section in the order they fall due
   * @param priceCents price of an article in a year: first index year, from 1, then article
   * @param overdueAllowed most sections that may be due and not bought at a year's end
   */
  public LevelFunding(int[] dueBy, int[] article, long[][] priceCents, int overdueAllowed) {
    this.years = dueBy.length - 1;
    this.dueBy = dueBy.clone();
    this.article = article.clone();
    this.priceCents = priceCents;
    this.overdueAllowed = overdueAllowed;
  }

  /**
   * A year of the plan.
   *
   * @param bought sections bought
   * @param spentCents what they cost
   * @param carriedCents money left at the year's end
   * @param overdue sections due and not bought at the year's end
   */
  public record Year(int year, int bought, long spentCents, long carriedCents, int overdue) {}

  /**
   * The least spend and what it buys.
   *
   * @param yearlyCents the equal yearly spend
   * @param years what is bought in each, as many as that money can buy
   */
  public record Plan(long yearlyCents, List<Year> years) {}

  public Plan plan() {
    long low = -1;
    long high = 1;
    while (!feasible(high)) {
      low = high;
      high *= 2;
    }
    if (feasible(0)) {
      high = 0;
    }
    while (high - low > 1) {
      long middle = (low + high) >>> 1;
      if (feasible(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return plan(high);
  }

  private boolean feasible(long yearlyCents) {
    long[] spent = start();
    for (int year = 1; year <= years; year++) {
      spent = next(spent, year, yearlyCents, null);
    }
    return Arrays.stream(spent).anyMatch(cents -> cents < NEVER);
  }

  private Plan plan(long yearlyCents) {
    int[][] from = new int[years + 1][];
    long[][] spent = new long[years + 1][];
    spent[0] = start();
    for (int year = 1; year <= years; year++) {
      from[year] = new int[article.length + 1];
      spent[year] = next(spent[year - 1], year, yearlyCents, from[year]);
    }
    int bought = article.length;
    while (spent[years][bought] >= NEVER) {
      bought--;
    }
    List<Year> plan = new ArrayList<>();
    for (int year = years; year >= 1; year--) {
      int before = from[year][bought];
      long paid = spent[year][bought] - spent[year - 1][before];
      plan.add(
          0,
          new Year(
              year,
              bought - before,
              paid,
              year * yearlyCents - spent[year][bought],
              dueBy[year] - bought));
      bought = before;
    }
    return new Plan(yearlyCents, List.copyOf(plan));
  }

  private long[] start() {
    long[] spent = new long[article.length + 1];
    Arrays.fill(spent, NEVER);
    spent[0] = 0;
    return spent;
  }

  /** The least spent by a year's end for each number bought; {@code from} notes the year before. */
  private long[] next(long[] before, int year, long yearlyCents, int[] from) {
    long[] spent = new long[before.length];
    Arrays.fill(spent, NEVER);
    long upTo = 0;
    long best = NEVER;
    int bestFrom = -1;
    for (int bought = 0; bought < before.length; bought++) {
      upTo += bought == 0 ? 0 : priceCents[year][article[bought - 1]];
      if (before[bought] < NEVER && before[bought] - upTo <= best) {
        best = before[bought] - upTo;
        bestFrom = bought;
      }
      boolean allowed = bought <= dueBy[year] && bought >= dueBy[year] - overdueAllowed;
      if (bestFrom >= 0 && allowed && best + upTo <= year * yearlyCents) {
        spent[bought] = best + upTo;
        if (from != null) {
          from[bought] = bestFrom;
        }
      }
    }
    return spent;
  }
}
