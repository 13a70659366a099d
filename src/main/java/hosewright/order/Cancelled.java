package hosewright.order;

import hosewright.order.Order.Cancellation;
import hosewright.problem.BadInputException;
import hosewright.problem.ConflictException;
import hosewright.problem.Given;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * An order taken back before anything was shipped of it.
 *
 * @param before as it stood
 * @param after as it stands: nothing reserved, nothing wanted any more
 */
public record Cancelled(Order before, Order after) {

  /** What becomes of purchase orders that have not come in whole. */
  public enum Bought {
    /** Those nothing has come of are closed; one that came in part must be decided on. */
    UNDECIDED,
    /** All are closed: what came stays on the shelf, the rest is no longer awaited. */
    CLOSE,
    /** None is closed: the goods still come, for the shelf. */
    KEEP
  }

  /**
   * Cancels an order.
   *
   * @param coming who waits for what was bought for it
   * @throws BadInputException when it was cancelled before, something has shipped, or a purchase
   *     order came in part and nobody decided on the rest
   */
  public static Cancelled of(Order order, Bought bought, Coming coming, Cancellation cancellation) {
    refuse(order, bought, coming);
    Order after = order.cancelled(cancellation);
    return new Cancelled(
        order,
        bought == Bought.KEEP
            ? after
            : after.with(order.purchases().stream().map(PurchaseOrder::closed).toList()));
  }

  /** What it held and is free again, pieces by stock code. */
  public Map<String, Integer> freed() {
    Map<String, Integer> freed = new LinkedHashMap<>();
    before.lines().stream()
        .filter(line -> line.counts().reserved() > 0)
        .forEach(
            line -> freed.merge(line.ware().stockCode(), line.counts().reserved(), Integer::sum));
    return freed;
  }

  /** Purchase orders of which goods were awaited before and are no longer. */
  public List<PurchaseOrder> closed() {
    return after.purchases().stream()
        .filter(purchase -> purchase.lines().stream().anyMatch(line -> line.cancelled() > 0))
        .toList();
  }

  /** Purchase orders that still bring goods. */
  public List<PurchaseOrder> stillComing() {
    return after.purchases().stream()
        .filter(purchase -> purchase.lines().stream().anyMatch(line -> line.outstanding() > 0))
        .toList();
  }

  private static void refuse(Order order, Bought bought, Coming coming) {
    order
        .cancellation()
        .ifPresent(
            before -> {
              throw ConflictException.stateForbids(
                  "order",
                  order.number(),
                  "is cancelled already",
                  before.by() + " cancelled it: " + before.reason());
            });
    if (order.lines().stream().anyMatch(line -> line.counts().shipped() > 0)) {
      throw ConflictException.stateForbids(
          "order",
          order.number(),
          "has shipped in part or whole",
          "'order return' takes back what went, and "
              + Given.as("line")
              + " cancels what has not gone");
    }
    List<Problem> problems = new ArrayList<>();
    for (PurchaseOrder purchase : order.purchases()) {
      if (bought == Bought.UNDECIDED && purchase.state() == PurchaseOrder.State.PART_RECEIVED) {
        problems.add(
            Problem.of(
                "purchases",
                purchase.number() + ", come in part",
                "close, if the supplier keeps the rest; keep, to have it come for the shelf"));
        continue;
      }
      Optional<String> other = coming.otherWaitingFor(purchase.number(), order.number());
      if (bought == Bought.UNDECIDED && other.isPresent()) {
        problems.add(
            Problem.of(
                "purchases",
                purchase.number() + ", which " + other.get() + " waits for",
                "keep, to have it come; close, if the supplier keeps it, and buy for that order"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
