package hosewright.command;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.NetPrice;
import hosewright.desk.Books;
import hosewright.desk.Papers;
import hosewright.desk.Refusals;
import hosewright.desk.Signing;
import hosewright.fleet.AgencyLimits;
import hosewright.fleet.BudgetMaker;
import hosewright.fleet.BudgetRequest;
import hosewright.fleet.FleetBudget;
import hosewright.fleet.FleetTally;
import hosewright.fleet.ReplacementItems;
import hosewright.fleet.SurvivalStudy;
import hosewright.quote.Customer;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife.Step;
import hosewright.quote.Terms;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import hosewright.store.FleetStore;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.joda.money.CurrencyUnit;

/** Budgets the replacement of an agency's hose over the coming years. */
final class FleetBudgetCommand extends ShellCommand {
  private final Supplier<Books> books;

  FleetBudgetCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet budget",
                Group.BUDGET,
                "Budgets the replacement of an agency's hose over the coming years",
                "fleet budget --years 10 --age-limit 12 --escalation 4%")
            .alias("budget")
            .with(
                OptionSpec.value("years", "N", "how many years").withDefault("10"),
                OptionSpec.value("from", "DAY", "first day of the first year")
                    .withDefaultSaid("today"),
                OptionSpec.value("age-limit", "YEARS", "age at which hose is replaced")
                    .withDefaultSaid("the agency's own, if it has set one"),
                OptionSpec.value("prices", "CHANGE", "what if prices were so much higher or lower")
                    .withDefault("0%"),
                OptionSpec.value("escalation", "PERCENT", "rise of prices from year to year")
                    .withDefault("0%"),
                OptionSpec.value("discount-rate", "PERCENT", "for today's worth of later money")
                    .withDefault("0%"),
                OptionSpec.value("overdue", "N", "most sections the level plan leaves overdue")
                    .withDefault("0"),
                OptionSpec.value("seed", "N", "of the simulation").withDefault("1"),
                OptionSpec.value("customer", "ID", "whose prices to use")
                    .withDefaultSaid("list prices")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("quote", "CUSTOMER", "quote the first year's purchase for them")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.flag("workbook", "write the budget workbook"),
                SignedBy.option())
            .with(PaperOptions.options()));
    this.books = books;
  }

  /** A budget with what was made of it. */
  record Made(FleetBudget budget, Optional<String> quote, Optional<String> workbook) {}

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      FleetStore fleet = FleetOptions.loaded(open);
      AgencyLimits limits = fleet.limits();
      BudgetRequest request = request(in, limits, open.today());
      Optional<Customer> buyer =
          in.value("quote")
              .or(() -> in.value("customer"))
              .map(id -> open.customers().get(id, open.today()));
      FleetBudget budget = make(open, fleet, limits, request, buyer);
      Optional<BudgetPapers> papers =
          in.flag("workbook") ? Optional.of(BudgetPapers.of(in)) : Optional.empty();
      Optional<Quote> quote =
          in.value("quote")
              .map(
                  id ->
                      new FirstPurchase(open, buyer.orElseThrow(), budget)
                          .quote(Signing.as(SignedBy.name(in), Step.MAKE, open.now(), "")));
      Made made =
          new Made(
              budget,
              quote.map(Quote::number),
              papers.map(p -> p.write(budget, Papers.dealer(open.terms()), open.now())));
      return Answer.of(
          made,
          screen ->
              FleetBudgetText.of(budget, screen)
                  + quote.map(q -> "\n\n" + QuoteText.of(q, screen)).orElse("")
                  + made.workbook().map(file -> "\nWrote " + file).orElse(""));
    }
  }

  private static FleetBudget make(
      Books open,
      FleetStore fleet,
      AgencyLimits limits,
      BudgetRequest request,
      Optional<Customer> buyer) {
    FleetTally tally = new FleetTally(limits, request.from());
    fleet.each(tally::add);
    Catalogue catalogue = open.catalogue();
    CurrencyUnit currency = catalogue.currencyNeeded();
    NetPrice prices = Terms.of(catalogue, buyer, open.today());
    return new BudgetMaker(
            tally.ages(),
            tally.usableFt(),
            SurvivalStudy.of(tally.lives()),
            new ReplacementItems(catalogue, prices),
            prices,
            currency)
        .make(request);
  }

  private static BudgetRequest request(Invocation in, AgencyLimits limits, LocalDate today) {
    Refusals refusals = new Refusals();
    Optional<OptionalInt> years = refusals.read(() -> FleetOptions.wholeNumber(in, "years", 1, 40));
    Optional<LocalDate> from = refusals.read(() -> FleetOptions.day(in, "from", today));
    Optional<OptionalInt> limit =
        refusals.read(() -> FleetOptions.wholeNumber(in, "age-limit", 1, 60));
    Optional<BigDecimal> change = refusals.read(() -> FleetOptions.change(in, "prices"));
    Optional<BigDecimal> escalation = refusals.read(() -> FleetOptions.change(in, "escalation"));
    Optional<BigDecimal> rate = refusals.read(() -> FleetOptions.share(in, "discount-rate"));
    Optional<OptionalInt> overdue =
        refusals.read(() -> FleetOptions.wholeNumber(in, "overdue", 0, 1_000_000));
    Optional<OptionalInt> seed =
        refusals.read(() -> FleetOptions.wholeNumber(in, "seed", 0, 999_999_999));
    refusals.throwAny();
    OptionalInt ageLimit = limit.orElseThrow();
    return new BudgetRequest(
        from.orElseThrow(),
        years.orElseThrow().getAsInt(),
        ageLimit.isPresent() ? ageLimit : limits.ageYears(),
        change.orElseThrow(),
        escalation.orElseThrow(),
        rate.orElseThrow(),
        overdue.orElseThrow().getAsInt(),
        seed.orElseThrow().getAsInt());
  }
}
