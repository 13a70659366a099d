package hosewright.desk.purchase;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.desk.WrittenJob;
import hosewright.desk.interview.Asker;
import hosewright.desk.kit.KitPart;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.words.ItemWords;
import hosewright.desk.words.WantedLine;
import hosewright.intake.JobFile;
import hosewright.job.question.JobField;
import hosewright.line.model.Bill;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.quote.ExtraLine;
import hosewright.quote.Group;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.joda.money.Money;

/** The groups of a purchase, read, priced for its buyer and planned together. */
final class PurchaseGroups {
  private final AskedPurchase asked;
  private final Books open;
  private final Customer customer;
  private final LocalDate date;
  private final Map<Integer, WrittenJob> jobs = new TreeMap<>();
  private final Map<Integer, PartsGroup> parts = new TreeMap<>();
  private final Map<Integer, LinePlan> plans = new TreeMap<>();
  private Optional<Money> least = Optional.empty();

  private PurchaseGroups(AskedPurchase asked, Books open) {
    this.asked = asked;
    this.open = open;
    this.customer = open.customers().get(buyer(asked, open), open.today());
    this.date = open.today();
  }

  /**
   * Reads and plans it all.
   *
   * @throws BadInputException naming everything that cannot be used
   */
  static PurchaseGroups of(AskedPurchase asked, Books open, Optional<Asker> asker) {
    PurchaseGroups groups = new PurchaseGroups(asked, open);
    groups.readJobs();
    List<Integer> numbers = List.copyOf(groups.jobs.keySet());
    groups.planAlone(numbers);
    groups.readParts(asker);
    groups.planTogether(numbers);
    return groups;
  }

  private static String buyer(AskedPurchase asked, Books open) {
    List<String> named =
        asked.groups().stream()
            .flatMap(group -> group.job().stream())
            .flatMap(job -> Stream.ofNullable(job.get(JobField.CUSTOMER)))
            .distinct()
            .toList();
    if (asked.customer().isEmpty() && named.size() > 1) {
      throw new BadInputException(
          "customer",
          String.join(", ", named),
          "one buyer for all jobs: name it with " + Given.as("customer"));
    }
    return asked
        .customer()
        .or(() -> named.stream().findFirst())
        .orElseThrow(() -> open.customers().noneNamed());
  }

  private void readJobs() {
    Refusals refusals = new Refusals();
    for (int i = 0; i < asked.groups().size(); i++) {
      AskedGroup group = asked.groups().get(i);
      int number = i + 1;
      if (group.job().isPresent()) {
        refusals.read(() -> job(group)).ifPresent(job -> jobs.put(number, job));
      } else if (group.parts().isEmpty() && group.kits().isEmpty()) {
        refusals.add("group", group.title(), "a job or at least one line: a group sells something");
      }
      group.kits().forEach(kit -> refusals.read(() -> open.kits().get(kit)));
    }
    refusals.throwAny();
  }

  /** Parts are read when the jobs are planned, since a kit may be counted by the hose laid. */
  private void readParts(Optional<Asker> asker) {
    Refusals refusals = new Refusals();
    WantedLine wanted =
        new WantedLine(ItemWords.in(open, asker), open.catalogue().currencyNeeded());
    PriceList prices = new PriceList(open.catalogue(), customer, date);
    for (int i = 0; i < asked.groups().size(); i++) {
      AskedGroup group = asked.groups().get(i);
      if (group.job().isEmpty()) {
        parts.put(
            i + 1, PartsGroup.read(lines(group), wanted, open.catalogue(), prices, date, refusals));
      }
    }
    refusals.throwAny();
  }

  /** The lines of a group, those of its kits written out for what is laid in the total. */
  private List<String> lines(AskedGroup group) {
    KitPart.Laid laid = KitPart.Laid.NOTHING;
    for (Map.Entry<Integer, LinePlan> plan : plans.entrySet()) {
      if (!asked(plan.getKey()).optional()) {
        laid = laid.and(plan.getValue(), asked(plan.getKey()).count());
      }
    }
    KitPart.Laid all = laid;
    return Stream.concat(
            group.parts().stream(),
            group.kits().stream().flatMap(kit -> open.kits().get(kit).lines().stream()))
        .flatMap(line -> KitPart.of(line).forLaid(all).stream())
        .toList();
  }

  /** A job for the purchase's buyer, and of its day. */
  private WrittenJob job(AskedGroup group) {
    Map<JobField, String> answers = new TreeMap<>(group.job().orElseThrow());
    answers.put(JobField.CUSTOMER, customer.id());
    answers.remove(JobField.DATE);
    if (!group.title().isEmpty()) {
      answers.put(JobField.TITLE, group.title());
    }
    return WrittenJob.of(answers);
  }

  private PlanPackage planner() {
    return new PlanPackage(
        open.catalogue(),
        new CustomerTerms(open.catalogue(), customer, date),
        date,
        open.localThreads());
  }

  private void planAlone(List<Integer> numbers) {
    List<LinePlan> alone = planner().alone(numbers.stream().map(this::wanted).toList());
    for (int i = 0; i < numbers.size(); i++) {
      plans.put(numbers.get(i), alone.get(i));
    }
  }

  private void planTogether(List<Integer> numbers) {
    PlanPackage planner = planner();
    List<Integer> together = numbers.stream().filter(number -> !asked(number).optional()).toList();
    if (stuck().isPresent() || together.isEmpty() || asked.groups().size() == 1) {
      return;
    }
    PlanPackage.Planned planned =
        planner.together(
            together.stream().map(this::wanted).toList(),
            together.stream().map(plans::get).toList(),
            boughtAsParts());
    List<LinePlan> shared =
        new SharedSpares(open.catalogue())
            .of(planned.plans(), together.stream().map(number -> asked(number).count()).toList());
    for (int i = 0; i < together.size(); i++) {
      plans.put(together.get(i), shared.get(i));
    }
    least = together.size() > 1 ? Optional.of(planned.least()) : Optional.empty();
  }

  private PlanPackage.Wanted wanted(int number) {
    return new PlanPackage.Wanted(jobs.get(number).job(), asked(number).count());
  }

  private AskedGroup asked(int number) {
    return asked.groups().get(number - 1);
  }

  private Map<String, Integer> boughtAsParts() {
    Map<String, Integer> bought = new HashMap<>();
    parts.forEach(
        (number, group) -> {
          if (!asked(number).optional()) {
            for (Bill.Item item : group.plan().items()) {
              bought.merge(item.item(), item.quantity() * asked(number).count(), Integer::sum);
            }
          }
        });
    return bought;
  }

  /** The first job without a safe plan. */
  Optional<MakePurchase.Stuck> stuck() {
    return plans.entrySet().stream()
        .filter(plan -> !plan.getValue().feasible())
        .map(plan -> new MakePurchase.Stuck(jobs.get(plan.getKey()).job().title(), plan.getValue()))
        .findFirst();
  }

  Customer customer() {
    return customer;
  }

  LocalDate date() {
    return date;
  }

  /** What the whole is called. */
  String title() {
    return asked.title().orElseGet(() -> groups().get(0).title());
  }

  List<Group> groups() {
    List<Group> groups = new ArrayList<>();
    for (int number = 1; number <= asked.groups().size(); number++) {
      AskedGroup one = asked(number);
      boolean job = jobs.containsKey(number);
      String title = job ? jobs.get(number).job().title() : titleOfParts(one);
      groups.add(
          new Group(
              number,
              new Group.Heading(title, one.count(), one.optional()),
              job
                  ? jobs.get(number).text()
                  : JobFile.write(Map.of(JobField.TITLE, title, JobField.CUSTOMER, customer.id())),
              job ? plans.get(number) : parts.get(number).plan()));
    }
    return groups;
  }

  private static String titleOfParts(AskedGroup group) {
    return group.title().isEmpty() ? "Kit " + String.join(", ", group.kits()) : group.title();
  }

  /** Lines in free text, in the groups they belong to. */
  List<ExtraLine> freeLines() {
    List<ExtraLine> lines = new ArrayList<>();
    parts.forEach(
        (number, group) ->
            group.free().forEach(line -> lines.add(line.in(number, asked(number).count()))));
    return lines;
  }

  /** By how much the goods of the jobs could be cheaper at most, however they were laid. */
  Optional<Money> mightBeLess(Quote quote) {
    return least.map(
        bound ->
            quote.groups().stream()
                .filter(group -> jobs.containsKey(group.number()) && !group.optional())
                .map(quote::subtotal)
                .reduce(Money.zero(bound.getCurrencyUnit()), Money::plus)
                .minus(bound));
  }
}
