package hosewright.desk.tender;

import hosewright.desk.purchase.AskedPurchase;
import hosewright.desk.purchase.Dealer;
import hosewright.desk.purchase.MakePurchase.Stuck;
import hosewright.desk.purchase.PlanPurchase;
import hosewright.desk.purchase.PlanPurchase.Planned;
import hosewright.desk.purchase.ReadPurchase;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.problem.RefusalException;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Group;
import hosewright.quote.PriceList;
import hosewright.quote.Quote;
import hosewright.quote.QuoteMaker;
import hosewright.quote.terms.DealerTerms;
import hosewright.tender.TenderBasis;
import hosewright.tender.TenderPricing;
import hosewright.tender.TenderResult;
import hosewright.tender.TenderResult.Figures;
import hosewright.tender.TenderResult.Outcome;
import hosewright.tender.TenderRow;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Prices rows of a tender that name a package file; what is wrong with one is an answer too. */
final class PackageRows {
  /** What a row may say of a package beside its file. */
  private static final Set<JobField> OF_THE_WHOLE =
      Set.of(JobField.TITLE, JobField.CUSTOMER, JobField.DATE);

  private final Dealer dealer;
  private final QuoteMaker maker;
  private final TenderBasis basis;
  private final Path folder;

  /**
   * @param folder where package files are looked for: that of the tender's file
   */
  PackageRows(Dealer dealer, DealerTerms terms, TenderBasis basis, Path folder) {
    this.dealer = dealer;
    this.maker = new QuoteMaker(dealer.catalogue(), terms);
    this.basis = basis;
    this.folder = folder;
  }

  /** What comes of a row; never throws for anything in it. Threads may use it at once. */
  RowDone price(TenderRow row) {
    try {
      return priced(row);
    } catch (RefusalException e) {
      return refused(row, Outcome.BAD_INPUT, e.problems());
    } catch (RuntimeException | StackOverflowError e) {
      return refused(row, Outcome.OUR_FAULT, List.of(TenderPricing.ours(e)));
    }
  }

  private static RowDone refused(TenderRow row, Outcome outcome, List<Problem> problems) {
    return new RowDone(TenderResult.refused(row, outcome, problems), Optional.empty());
  }

  private RowDone priced(TenderRow row) {
    refuseAnswers(row);
    LocalDate date =
        Optional.ofNullable(row.answers().get(JobField.DATE))
            .map(LocalDate::parse)
            .orElse(basis.date());
    AskedPurchase asked =
        new ReadPurchase()
            .read(
                ReadPurchase.Sources.ofPackage(
                    folder.resolve(row.packageFile().orElseThrow()).toString()),
                Optional.ofNullable(row.answers().get(JobField.TITLE)),
                Optional.ofNullable(row.answers().get(JobField.CUSTOMER)));
    Planned planned =
        new PlanPurchase(dealer)
            .plan(
                asked.namesBuyer() || basis.customer().isEmpty()
                    ? asked
                    : asked.soldTo(basis.customer()),
                date);
    Sale sale =
        new Sale(planned.title(), planned.customer(), date, planned.groups(), planned.free());
    return new RowDone(
        result(row, planned, sale),
        Optional.of(sale).filter(any -> basis.quoted() && planned.stuck().isEmpty()));
  }

  /** A package's jobs say what they need; a row beside them must not. */
  private static void refuseAnswers(TenderRow row) {
    List<Problem> problems = new ArrayList<>(row.problems());
    row.answers()
        .forEach(
            (field, answer) -> {
              if (!OF_THE_WHOLE.contains(field)) {
                problems.add(
                    Problem.of(field.word(), answer, "left empty: the package's job files say it"));
              }
            });
    Optional.ofNullable(row.answers().get(JobField.DATE))
        .ifPresent(date -> problems.addAll(JobForm.problemsOf(JobField.DATE, date)));
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private TenderResult result(TenderRow row, Planned planned, Sale sale) {
    Optional<Stuck> stuck = planned.stuck();
    Quote quote =
        maker.make(draft(sale), new PriceList(dealer.catalogue(), sale.customer(), sale.date()));
    return new TenderResult(
        new TenderResult.Place(row.line(), row.id(), planned.title()),
        stuck.isPresent() ? Outcome.NO_SAFE_PLAN : Outcome.PRICED,
        stuck.map(job -> job.title() + ": " + job.plan().limitedBy().orElse("")).orElse(""),
        stuck.map(job -> job.plan().instead()).orElse(List.of()),
        List.of(),
        Optional.of(
            Figures.ofPackage(
                words(planned.groups()),
                quote.totals().subtotal(),
                TenderPricing.terms(Optional.of(sale.customer())))));
  }

  private QuoteMaker.Draft draft(Sale sale) {
    return new QuoteMaker.Draft(
        new Quote.Name("", 1),
        sale.customer(),
        sale.date(),
        Basis.of(sale.title(), Optional.empty(), sale.groups()),
        Amendments.NONE.withLines(sale.free()),
        basis.begun());
  }

  private static String words(List<Group> groups) {
    long jobs = groups.stream().filter(Group::laid).count();
    long lists = groups.size() - jobs;
    return "package of "
        + (jobs == 1 ? "1 job" : jobs + " jobs")
        + (lists == 0
            ? ""
            : lists == 1 ? " and a list of parts" : " and " + lists + " lists of parts");
  }
}
