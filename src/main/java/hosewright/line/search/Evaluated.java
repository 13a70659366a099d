package hosewright.line.search;

import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.GasketCount;
import hosewright.line.assembly.Lay;
import hosewright.line.goods.Basket;
import hosewright.line.goods.Billing;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Unpriced;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/** A whole plan with its price, its hydraulics and its checks. */
public record Evaluated(
    Assembly assembly,
    List<GasketCount> gaskets,
    Billing.Priced bill,
    Money total,
    Hydraulics hydraulics,
    List<Check> checks) {

  private static final Set<CheckId> RANKED_LAST_BY =
      EnumSet.of(CheckId.MADE_UP_HOSE, CheckId.SMALL_HAND_LINE);

  private static final Set<CheckId> OF_STOCK =
      EnumSet.of(CheckId.DISCONTINUED_ITEMS, CheckId.IN_STOCK, CheckId.THERE_IN_TIME);

  /**
   * With the fewest parts to source first, then those that no rule ranks last, then cheapest; among
   * equals fewer couplings, then fewer adapters, then the lower loss; at last by name, so that the
   * same plan wins however it was searched for.
   */
  private static final Comparator<Evaluated> BY_MERIT =
      Comparator.comparingInt(Evaluated::partsToSource)
          .thenComparing(Evaluated::ranksLast)
          .thenComparing(Evaluated::total)
          .thenComparingInt(Evaluated::sections)
          .thenComparingInt(plan -> plan.assembly().adapters())
          .thenComparingDouble(plan -> plan.hydraulics().requiredSourcePsi())
          .thenComparing(plan -> plan.assembly().spelledOut());

  /** Between plans that fail, the one to show. */
  private static final Comparator<Evaluated> NEAREST =
      Comparator.<Evaluated>comparingInt(plan -> plan.shortfall().rules())
          .thenComparingInt(Evaluated::partsToSource)
          .thenComparing(Evaluated::shortfall)
          .thenComparing(BY_MERIT);

  public List<Basket.Purchase> purchases() {
    return bill.purchases();
  }

  public List<Unpriced> unpriced() {
    return bill.unpriced();
  }

  /** Parts that would have to be sourced or have no price; gaskets and sealant left out. */
  public int partsToSource() {
    return bill.partsToSource();
  }

  /** Whether any other line that does it is laid before this one. */
  public boolean ranksLast() {
    return whyLast().isPresent();
  }

  /** The rule that ranks it last, in words; empty where none does. */
  public Optional<String> whyLast() {
    return checks.stream()
        .filter(check -> RANKED_LAST_BY.contains(check.id()))
        .filter(check -> check.outcome() == Check.Outcome.WARN)
        .map(Check::note)
        .findFirst();
  }

  public boolean passes() {
    return failures() == 0;
  }

  /** Whether nothing fails that another choice of parts could mend. */
  public boolean bestThatCanBe() {
    return mendableFailures().isEmpty();
  }

  long failures() {
    return checks.stream().filter(check -> check.outcome() == Check.Outcome.FAIL).count();
  }

  public boolean overBudget() {
    return checks.stream().anyMatch(check -> check.fails(CheckId.BUDGET));
  }

  /** Whether it fails for what lies in the job, its budget apart: every line does then. */
  boolean failsWhateverIsChosen() {
    return checks.stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .anyMatch(check -> check.id().isOfTheJob() && check.id() != CheckId.BUDGET);
  }

  /** What it costs, as {@link RankedCost} weighs it. */
  RankedCost rankedCost() {
    return RankedCost.of(partsToSource(), total);
  }

  /** Whether the same items are bought, in the same numbers. */
  public boolean buysTheSame(Evaluated other) {
    return total.equals(other.total) && bought().equals(other.bought());
  }

  /** How many of each item are bought, by item number. */
  public Map<String, Integer> bought() {
    Map<String, Integer> bought = new TreeMap<>();
    purchases().forEach(purchase -> bought.put(purchase.item().number(), purchase.bought()));
    return bought;
  }

  /** Sections of one of each leg's lines. */
  int sections() {
    return assembly.lays().stream().mapToInt(Lay::sections).sum();
  }

  boolean beats(Evaluated other) {
    return BY_MERIT.compare(this, other) < 0;
  }

  /** What fails and another choice of parts could mend, in the order of the checks. */
  List<CheckId> mendableFailures() {
    return mendable().stream().map(Check::id).toList();
  }

  /** Whether it is nearer to a line that passes. */
  boolean nearerThan(Evaluated other) {
    return NEAREST.compare(this, other) < 0;
  }

  Shortfall shortfall() {
    return Shortfall.of(mendable());
  }

  /** Whether it fails for what was asked for by number, which every line would lack. */
  private boolean asked(Check check) {
    return bill.lacksOnlyAsked() && OF_STOCK.contains(check.id());
  }

  private List<Check> mendable() {
    return checks.stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .filter(check -> !check.id().isOfTheJob() && !asked(check))
        .toList();
  }
}
