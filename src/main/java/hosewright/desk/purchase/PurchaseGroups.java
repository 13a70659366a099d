package hosewright.desk.purchase;

import hosewright.desk.Refusals;
import hosewright.desk.WrittenJob;
import hosewright.desk.kit.CountedParts;
import hosewright.desk.kit.KitPart;
import hosewright.desk.purchase.AskedPurchase.AskedGroup;
import hosewright.desk.purchase.PlanPackage.Wanted;
import hosewright.desk.words.WantedLine;
import hosewright.intake.JobText;
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
import hosewright.quote.terms.Customer;
import hosewright.quote.terms.CustomerTerms;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The groups of a purchase, read, priced for its buyer and planned together. */
final class PurchaseGroups {
  private final AskedPurchase asked;
  private final Dealer dealer;
  private final Customer customer;
  private final LocalDate date;
  private final Map<Integer, WrittenJob> jobs = new TreeMap<>();
  private final Map<Integer, PartsGroup> parts = new TreeMap<>();
  private final Map<Integer, CountedParts> beside = new TreeMap<>();
  private PlannedJobs planned;

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
    groups.planned = groups.plannedAlone();
    groups.readParts();
    groups.planned.together(groups.boughtAsParts());
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
        .orElseGet(() -> dealer.customers().counter().id());
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
    KitPart.Laid whole = planned.inTotal();
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

  private PlannedJobs plannedAlone() {
    Map<Integer, Wanted> wanted = new TreeMap<>();
    Set<Integer> optional = new TreeSet<>();
    jobs.forEach(
        (number, job) -> {
          wanted.put(number, new Wanted(job, asked(number).count()));
          if (asked(number).optional()) {
            optional.add(number);
          }
        });
    return PlannedJobs.alone(
        wanted,
        optional,
        new PlanPackage(dealer.catalogue(), prices(), date, dealer.localThreads()),
        new Scarce(dealer.catalogue(), date, List.copyOf(wanted.values())));
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
            list.items(planned.one(number))
                .forEach((item, n) -> bought.merge(item, n * asked(number).count(), Integer::sum));
          }
        });
    return bought;
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
                  ? planned.laid(number).job().text()
                  : JobText.write(Map.of(JobField.TITLE, title, JobField.CUSTOMER, customer.id())),
              job ? withParts(number) : parts.get(number).plan()));
    }
    return groups;
  }

  private LinePlan withParts(int number) {
    return beside.get(number).into(planned.laid(number).plan(), dealer.catalogue(), prices());
  }

  private static String titleOfParts(AskedGroup group) {
    String untitled =
        group.parts().isEmpty() ? "Kit " + String.join(", ", group.kits()) : ReadPurchase.PARTS;
    return group.title().isEmpty() ? untitled : group.title();
  }

  /** Lines in free text, in the groups they belong to. */
  List<ExtraLine> freeLines() {
    List<ExtraLine> lines = new ArrayList<>();
    parts.forEach(
        (number, group) ->
            group.free().forEach(line -> lines.add(line.in(number, asked(number).count()))));
    beside.forEach(
        (number, list) ->
            lines.addAll(list.free(planned.one(number), number, asked(number).count())));
    return lines;
  }

  /** The jobs as they are planned. */
  PlannedJobs planned() {
    return planned;
  }
}
