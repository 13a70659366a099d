package hosewright.desk.purchase;

import hosewright.desk.Refusals;
import hosewright.desk.WrittenJob;
import hosewright.desk.kit.CountedParts;
import hosewright.desk.kit.KitPart;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.purchase.PlanPackage.Laid;
import hosewright.desk.purchase.PlanPackage.Wanted;
import hosewright.desk.words.WantedLine;
import hosewright.intake.JobFile;
import hosewright.job.layout.LayoutText;
import hosewright.job.layout.PartsBeside;
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
  private final Dealer dealer;
  private final Customer customer;
  private final LocalDate date;
  private final Map<Integer, WrittenJob> jobs = new TreeMap<>();
  private final Map<Integer, PartsGroup> parts = new TreeMap<>();
  private final Map<Integer, CountedParts> beside = new TreeMap<>();
  private final Map<Integer, Laid> laid = new TreeMap<>();
  private final List<String> told = new ArrayList<>();
  private Optional<Money> least = Optional.empty();

  private PurchaseGroups(AskedPurchase asked, Dealer dealer, LocalDate date) {
    this.asked = asked;
    this.dealer = dealer;
    this.date = date;
    this.customer = dealer.customers().get(buyer(asked, dealer), date);
  }

  /**
   * Reads and plans it all.
   *
   * @param date the day of its prices
   * @throws BadInputException naming everything that cannot be used
   */
  static PurchaseGroups of(AskedPurchase asked, Dealer dealer, LocalDate date) {
    PurchaseGroups groups = new PurchaseGroups(asked, dealer, date);
    groups.readJobs();
    Scarce scarce = new Scarce(dealer.catalogue(), date, List.copyOf(groups.wanted().values()));
    groups.planAlone(scarce);
    groups.readParts();
    groups.planTogether(scarce);
    return groups;
  }

  private static String buyer(AskedPurchase asked, Dealer dealer) {
    List<String> named =
        asked.groups().stream()
            .flatMap(group -> group.job().stream())
            .flatMap(job -> Stream.ofNullable(job.answers().get(JobField.CUSTOMER)))
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
        .orElseThrow(() -> dealer.customers().noneNamed());
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
      group.kits().forEach(kit -> refusals.read(() -> dealer.kits().get(kit)));
    }
    refusals.throwAny();
  }

  /** Parts are read when the jobs are planned, since a kit may be counted by the hose laid. */
  private void readParts() {
    Refusals refusals = new Refusals();
    WantedLine wanted = new WantedLine(dealer.words(), dealer.catalogue().currencyNeeded());
    PriceList prices = new PriceList(dealer.catalogue(), customer, date);
    for (int i = 0; i < asked.groups().size(); i++) {
      AskedGroup group = asked.groups().get(i);
      if (group.job().isEmpty()) {
        parts.put(
            i + 1,
            PartsGroup.read(lines(group), wanted, dealer.catalogue(), prices, date, refusals));
      } else {
        beside.put(i + 1, CountedParts.read(jobs.get(i + 1).beside().parts(), wanted, refusals));
      }
    }
    refusals.throwAny();
  }

  /** The lines of a group, those of its kits written out for what is laid in the total. */
  private List<String> lines(AskedGroup group) {
    KitPart.Laid all = KitPart.Laid.NOTHING;
    for (Map.Entry<Integer, Laid> one : laid.entrySet()) {
      if (!asked(one.getKey()).optional()) {
        all = all.and(one.getValue().plan(), asked(one.getKey()).count());
      }
    }
    KitPart.Laid whole = all;
    return Stream.concat(
            group.parts().stream(),
            group.kits().stream().flatMap(kit -> dealer.kits().get(kit).lines().stream()))
        .flatMap(line -> KitPart.of(line).forLaid(whole).stream())
        .toList();
  }

  /** A job for the purchase's buyer, and of its day, with its kits written out. */
  private WrittenJob job(AskedGroup group) {
    LayoutText text = group.job().orElseThrow();
    Map<JobField, String> answers = new TreeMap<>(text.answers());
    answers.put(JobField.CUSTOMER, customer.id());
    answers.remove(JobField.DATE);
    if (!group.title().isEmpty()) {
      answers.put(JobField.TITLE, group.title());
    }
    PartsBeside more =
        new PartsBeside(
            Stream.concat(text.beside().parts().stream(), group.parts().stream()).toList(),
            Stream.concat(text.beside().kits().stream(), group.kits().stream()).toList());
    return WrittenJob.of(text.saying(answers).with(more)).writtenOut(dealer.kits());
  }

  private CustomerTerms prices() {
    return new CustomerTerms(dealer.catalogue(), customer, date);
  }

  private PlanPackage planner() {
    return new PlanPackage(dealer.catalogue(), prices(), date, dealer.localThreads());
  }

  /** The jobs by the number of their group. */
  private Map<Integer, Wanted> wanted() {
    Map<Integer, Wanted> wanted = new TreeMap<>();
    jobs.forEach((number, job) -> wanted.put(number, new Wanted(job, asked(number).count())));
    return wanted;
  }

  private void planAlone(Scarce scarce) {
    List<Laid> alone = planner().alone(List.copyOf(wanted().values()), scarce);
    int at = 0;
    for (int number : jobs.keySet()) {
      laid.put(number, alone.get(at++));
    }
  }

  private void planTogether(Scarce scarce) {
    List<Integer> numbers = jobs.keySet().stream().filter(one -> !asked(one).optional()).toList();
    if (stuck().isPresent() || jobs.isEmpty() || asked.groups().size() == 1) {
      return;
    }
    PlanPackage planner = planner();
    List<Laid> total =
        planner.together(numbers.stream().map(laid::get).toList(), boughtAsParts(), scarce);
    for (int i = 0; i < numbers.size(); i++) {
      laid.put(numbers.get(i), total.get(i));
    }
    for (int number : jobs.keySet()) {
      if (asked(number).optional()) {
        laid.put(number, planner.beside(laid.get(number), total, boughtAsParts(), scarce));
      }
    }
    if (stuck().isPresent()) {
      return;
    }
    told.addAll(new SharedGoods(scarce).told(List.copyOf(laid.values())));
    List<LinePlan> shared =
        new SharedSpares(dealer.catalogue())
            .of(
                numbers.stream().map(one -> laid.get(one).plan()).toList(),
                numbers.stream().map(one -> asked(one).count()).toList());
    for (int i = 0; i < numbers.size(); i++) {
      laid.put(numbers.get(i), laid.get(numbers.get(i)).with(shared.get(i)));
    }
    least =
        numbers.size() > 1
            ? Optional.of(planner.least(numbers.stream().map(wanted()::get).toList()))
            : Optional.empty();
  }

  private AskedGroup asked(int number) {
    return asked.groups().get(number - 1);
  }

  /** What is bought in the total besides what the jobs take. */
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
    beside.forEach(
        (number, list) -> {
          if (!asked(number).optional()) {
            list.items(one(number))
                .forEach((item, n) -> bought.merge(item, n * asked(number).count(), Integer::sum));
          }
        });
    return bought;
  }

  /** What one of a group lays. */
  private KitPart.Laid one(int number) {
    return KitPart.Laid.NOTHING.and(laid.get(number).plan(), 1);
  }

  /** The first job without a safe plan. */
  Optional<MakePurchase.Stuck> stuck() {
    return laid.values().stream()
        .filter(one -> !one.plan().feasible())
        .map(one -> new MakePurchase.Stuck(one.job().job().title(), one.plan()))
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
                  ? laid.get(number).job().text()
                  : JobFile.write(Map.of(JobField.TITLE, title, JobField.CUSTOMER, customer.id())),
              job ? withParts(number) : parts.get(number).plan()));
    }
    return groups;
  }

  private LinePlan withParts(int number) {
    return beside.get(number).into(laid.get(number).plan(), dealer.catalogue(), prices());
  }

  private static String titleOfParts(AskedGroup group) {
    String untitled =
        group.kits().isEmpty() ? ReadPurchase.PARTS : "Kit " + String.join(", ", group.kits());
    return group.title().isEmpty() ? untitled : group.title();
  }

  /** What is worth saying of what the jobs share. */
  List<String> told() {
    return List.copyOf(told);
  }

  /** Lines in free text, in the groups they belong to. */
  List<ExtraLine> freeLines() {
    List<ExtraLine> lines = new ArrayList<>();
    parts.forEach(
        (number, group) ->
            group.free().forEach(line -> lines.add(line.in(number, asked(number).count()))));
    beside.forEach(
        (number, list) -> lines.addAll(list.free(one(number), number, asked(number).count())));
    return lines;
  }

  /** By how much the goods of the jobs could be cheaper at most, however they were laid. */
  Optional<Money> mightBeLess(Quote quote) {
    return least.map(
        bound -> {
          Money all = Money.zero(bound.getCurrencyUnit());
          for (Quote.QuoteLine line : quote.lines()) {
            if (jobs.containsKey(line.group())) {
              int laidOfIt =
                  laid.get(line.group()).plan().items().stream()
                      .filter(item -> item.item().equals(line.goods().item()))
                      .mapToInt(Bill.Item::quantity)
                      .sum();
              all =
                  all.plus(
                      line.price()
                          .unitPrice()
                          .multipliedBy(laidOfIt * asked(line.group()).count()));
            }
          }
          return all.minus(bound);
        });
  }
}
