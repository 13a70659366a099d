package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Signing;
import hosewright.intake.JobText;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.JobField;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife.Step;
import hosewright.quote.terms.Customer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Makes a new quote of the same parts at today's prices, for the same or another buyer. */
public final class CopyQuote {
  private static final int LONGEST_TITLE = 200;

  private final Supplier<Books> books;

  public CopyQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param revision which one is copied; the latest without it
   * @param customer whom the copy is for; the same buyer without it
   * @param title of the copy; the same without it
   * @param termsFile name of a text file of terms of sale
   * @param by who makes it
   */
  public record Request(
      String number,
      Optional<String> revision,
      Optional<String> customer,
      Optional<String> title,
      Optional<String> termsFile,
      String by) {}

  /**
   * The copy, kept under a number of its own.
   *
   * @throws hosewright.problem.BadInputException when there is no such quote or customer
   */
  public Quote copy(Request asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.of(asked.number(), asked.revision(), open);
      String id = asked.customer().orElse(seen.customer().id());
      Customer customer = open.customers().get(id, open.today());
      String title =
          asked
              .title()
              .map(text -> Signing.text("title", text, LONGEST_TITLE))
              .orElse(seen.basis().title());

      Amendments amendments = Revising.withTerms(asked.termsFile(), open, kept(seen, customer));
      String from = "from " + seen.number() + "-r" + seen.revision();
      tellLeft(open, seen.offer().amendments(), amendments, customer);
      Quote copy =
          open.quotes()
              .saveNew(
                  number ->
                      open.revisions().copied(number, customer, basis(seen, title, id), amendments),
                  Signing.as(asked.by(), Step.COPY, open.now(), from));
      LapsedPrices.tell(open, copy);
      return copy;
    }
  }

  private static void tellLeft(Books open, Amendments before, Amendments after, Customer to) {
    if (!before.discounts().equals(after.discounts())) {
      open.say(
          "Discounts are not copied to another buyer: %s. %s gets none of them."
              .formatted(
                  before.discounts().entrySet().stream()
                      .map(entry -> entry.getKey() + ", " + entry.getValue().words())
                      .collect(Collectors.joining("; ")),
                  to.name()));
    }
    if (!before.notes().equals(after.notes())) {
      open.say("Notes are not copied to another buyer: there were " + before.notes().size() + ".");
    }
    if (!before.shipping().equals(after.shipping())) {
      open.say("Freight set by hand and the place shipped to are not copied to another buyer.");
    }
  }

  /** The same purchase, every job of it for this buyer and of no day. */
  private static Basis basis(Quote seen, String title, String customer) {
    Basis titled = seen.basis().titled(title);
    return titled.with(titled.groups().stream().map(group -> copied(group, customer)).toList());
  }

  private static Group copied(Group group, String customer) {
    LayoutText before = JobText.kept(group.jobYaml());
    Map<JobField, String> job = new TreeMap<>(before.answers());
    job.put(JobField.TITLE, group.title());
    job.put(JobField.CUSTOMER, customer);
    job.remove(JobField.DATE);
    return new Group(
        group.number(), group.heading(), JobText.write(before.saying(job)), group.plan());
  }

  /** Discounts and notes were for one buyer and do not go to another. */
  private static Amendments kept(Quote seen, Customer customer) {
    Amendments all = seen.offer().amendments().because("");
    return customer.id().equals(seen.customer().id())
        ? all
        : new Amendments(
            "",
            all.quantities(),
            Map.of(),
            all.extraLines(),
            List.of(),
            all.terms(),
            all.byHand().withoutPrices());
  }
}
