package hosewright.desk.purchase;

import hosewright.desk.kit.KitPart;
import hosewright.desk.purchase.PlanPackage.Laid;
import hosewright.desk.purchase.PlanPackage.Wanted;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLine;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.joda.money.Money;

/** The jobs of a purchase by the number of their group, planned alone and then together. */
final class PlannedJobs {
  private final Map<Integer, Laid> laid = new TreeMap<>();
  private final Set<Integer> optional;
  private final PlanPackage planner;
  private final Scarce scarce;
  private List<String> told = List.of();
  private Optional<Money> least = Optional.empty();

  private PlannedJobs(Set<Integer> optional, PlanPackage planner, Scarce scarce) {
    this.optional = Set.copyOf(optional);
    this.planner = planner;
    this.scarce = scarce;
  }

  /**
   * Every job planned on its own.
   *
   * @param optional numbers of those beside the total
   */
  static PlannedJobs alone(
      Map<Integer, Wanted> wanted, Set<Integer> optional, PlanPackage planner, Scarce scarce) {
    PlannedJobs jobs = new PlannedJobs(optional, planner, scarce);
    wanted.forEach((number, job) -> jobs.laid.put(number, planner.alone(job, scarce)));
    return jobs;
  }

  /**
   * Plans those in the total together, and lets those beside it have what is left.
   *
   * @param beside pieces bought beside the jobs, by item number
   */
  void together(Map<String, Integer> beside) {
    if (stuck().isPresent()) {
      return;
    }
    List<Integer> numbers = laid.keySet().stream().filter(one -> !optional.contains(one)).toList();
    List<Laid> alone = numbers.stream().map(laid::get).toList();
    List<Laid> total = planner.together(alone, beside, scarce);
    for (int i = 0; i < numbers.size(); i++) {
      laid.put(numbers.get(i), total.get(i));
    }
    for (int number : optional) {
      laid.put(number, planner.beside(laid.get(number), total, beside, scarce));
    }
    if (stuck().isPresent()) {
      return;
    }
    told = new SharedGoods(scarce).told(List.copyOf(laid.values()));
    shareSpares(numbers);
    least =
        numbers.size() > 1
            ? Optional.of(planner.least(alone.stream().map(Laid::wanted).toList()))
            : Optional.empty();
  }

  private void shareSpares(List<Integer> numbers) {
    List<LinePlan> plans = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    for (int number : numbers) {
      plans.add(laid.get(number).plan());
      counts.add(laid.get(number).wanted().count());
    }
    List<LinePlan> shared = planner.spares().of(plans, counts);
    for (int i = 0; i < numbers.size(); i++) {
      laid.put(numbers.get(i), laid.get(numbers.get(i)).with(shared.get(i)));
    }
  }

  /** The first job without a safe plan. */
  Optional<MakePurchase.Stuck> stuck() {
    return laid.values().stream()
        .filter(one -> !one.plan().feasible())
        .map(one -> new MakePurchase.Stuck(one.job().job().title(), one.plan()))
        .findFirst();
  }

  /** The job of a group. */
  Laid laid(int group) {
    return laid.get(group);
  }

  /** What one of a group lays. */
  KitPart.Laid one(int group) {
    return KitPart.Laid.NOTHING.and(laid.get(group).plan(), 1);
  }

  /** What all of the total lay. */
  KitPart.Laid inTotal() {
    KitPart.Laid all = KitPart.Laid.NOTHING;
    for (Map.Entry<Integer, Laid> one : laid.entrySet()) {
      if (!optional.contains(one.getKey())) {
        all = all.and(one.getValue().plan(), one.getValue().wanted().count());
      }
    }
    return all;
  }

  /** What is worth saying of what the jobs share. */
  List<String> told() {
    return told;
  }

  /** By how much the goods of the jobs could be cheaper at most, however they were laid. */
  Optional<Money> mightBeLess(Quote quote) {
    return least.map(
        bound ->
            quote.lines().stream()
                .filter(line -> laid.containsKey(line.group()))
                .map(line -> line.price().unitPrice().multipliedBy(ofTheJob(line)))
                .reduce(Money.zero(bound.getCurrencyUnit()), Money::plus)
                .minus(bound));
  }

  /** How many of a line its group's jobs take, without the parts wanted beside them. */
  private int ofTheJob(QuoteLine line) {
    Laid job = laid.get(line.group());
    return job.wanted().count()
        * job.plan().items().stream()
            .filter(item -> item.item().equals(line.goods().item()))
            .mapToInt(Bill.Item::quantity)
            .sum();
  }
}
