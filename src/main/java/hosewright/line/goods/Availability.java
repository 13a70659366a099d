package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.job.Conditions;
import hosewright.job.Job;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalLong;

/**
 * Which items can be had as a job wants them: from the shelf, or from the supplier in time.
 *
 * <p>What lies on the shelf is there the same day; time on the bench and on the road is not
 * counted.
 *
 * @param stockOnly whether only the shelf counts
 * @param days from the order to the day everything must be there; empty when no day is set
 */
public record Availability(boolean stockOnly, OptionalLong days) {

  /**
   * @param job one that names the day of its prices, where it names a day to deliver by
   */
  public static Availability of(Job job) {
    Conditions conditions = job.conditions();
    if (conditions.deliverBy().isEmpty()) {
      return new Availability(conditions.stockOnly(), OptionalLong.empty());
    }
    LocalDate ordered = job.date().orElseThrow();
    return new Availability(
        conditions.stockOnly(),
        OptionalLong.of(ChronoUnit.DAYS.between(ordered, conditions.deliverBy().get())));
  }

  /** Whether so many can be had; work can, as long as it is offered. */
  public boolean toBeHad(Item item, int quantity) {
    if (!item.toBeHad(quantity)) {
      return false;
    }
    if (item.kind().isWork() || item.stocking().onHand() >= quantity) {
      return true;
    }
    return !stockOnly && (days.isEmpty() || item.stocking().leadDays() <= days.getAsLong());
  }

  /** How many can be had. */
  public int mostOf(Item item) {
    return toBeHad(item, Integer.MAX_VALUE) ? Integer.MAX_VALUE : item.stocking().onHand();
  }
}
