package hosewright.door.shell.fleet;

import hosewright.desk.Books;
import hosewright.desk.fleet.BudgetField;
import hosewright.desk.fleet.BudgetFleet;
import hosewright.desk.fleet.BudgetFleet.Budgeted;
import hosewright.desk.fleet.BudgetPapers;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.quote.QuoteText;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.fleet.budget.FleetBudget;
import hosewright.quote.Quote;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Budgets the replacement of an agency's hose over the coming years. */
public final class FleetBudgetCommand extends ShellCommand {
  private final BudgetFleet budget;

  public FleetBudgetCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "fleet budget",
                Group.BUDGET,
                "Budgets the replacement of an agency's hose over the coming years",
                "fleet budget --years 10 --age-limit 12 --escalation 4%")
            .alias("budget")
            .with(
                said(BudgetField.YEARS, "N", "how many years"),
                said(BudgetField.FROM, "DAY", "first day of the first year")
                    .withDefaultSaid("today"),
                said(BudgetField.AGE_LIMIT, "YEARS", "age at which hose is replaced")
                    .withDefaultSaid("the agency's own, if it has set one"),
                said(BudgetField.PRICES, "CHANGE", "what if prices were so much higher or lower"),
                said(BudgetField.ESCALATION, "PERCENT", "rise of prices from year to year"),
                said(BudgetField.DISCOUNT_RATE, "PERCENT", "for today's worth of later money"),
                said(BudgetField.OVERDUE, "N", "most sections the level plan leaves overdue"),
                said(BudgetField.SEED, "N", "of the simulation"),
                OptionSpec.value("customer", "ID", "whose prices to use")
                    .withDefaultSaid("list prices")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value("quote", "CUSTOMER", "quote the first year's purchase for them")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.flag("workbook", "write the budget workbook"),
                SignedBy.option())
            .with(PaperOptions.options()));
    budget = new BudgetFleet(books);
  }

  private static OptionSpec said(BudgetField field, String placeholder, String meaning) {
    OptionSpec option = OptionSpec.value(field.word(), placeholder, meaning);
    return field.standard().isEmpty() ? option : option.withDefault(field.standard());
  }

  /** A budget with what was made of it. */
  record Made(FleetBudget budget, Optional<String> quote, Optional<String> workbook) {}

  @Override
  protected Answer answer(Invocation in) {
    Budgeted budgeted = budget.budget(asked(in));
    Made made =
        new Made(budgeted.budget(), budgeted.quote().map(Quote::number), budgeted.workbook());
    return Answer.of(made, screen -> text(budgeted, screen));
  }

  private static BudgetFleet.Request asked(Invocation in) {
    Map<BudgetField, String> terms = new EnumMap<>(BudgetField.class);
    for (BudgetField field : BudgetField.values()) {
      in.value(field.word()).ifPresent(text -> terms.put(field, text));
    }
    return new BudgetFleet.Request(
        terms,
        in.value("customer"),
        in.value("quote"),
        SignedBy.name(in),
        in.flag("workbook") ? Optional.of(papers(in)) : Optional.empty());
  }

  private static BudgetPapers papers(Invocation in) {
    return new BudgetPapers(PaperOptions.paper(in), PaperOptions.folder(in), in.flag("overwrite"));
  }

  private static String text(Budgeted budgeted, Screen screen) {
    return FleetBudgetText.of(budgeted.budget(), screen)
        + budgeted.quote().map(quote -> "\n\n" + QuoteText.of(quote, screen)).orElse("")
        + budgeted.workbook().map(file -> "\nWrote " + file).orElse("");
  }
}
