package hosewright.door.shell.line;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.desk.Books;
import hosewright.desk.line.CompareSizes;
import hosewright.desk.line.CompareSizes.Size;
import hosewright.desk.line.CompareSizes.Sizes;
import hosewright.desk.line.TradeOffs;
import hosewright.desk.line.WeighTradeOffs;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.door.shell.words.ShownUnits;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.measure.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Sets the best line of every hose size side by side. */
public final class LineCompareCommand extends ShellCommand {
  private final Supplier<Books> books;
  private final CompareSizes compareSizes;
  private final WeighTradeOffs weighTradeOffs;

  public LineCompareCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "line compare",
                Group.PLAN,
                "Sets the best line of every hose size side by side",
                "line compare --from \"2.5 NH male hydrant\" --to \"1.5 NH nozzle\" --length 400ft"
                    + " --flow 150gpm --need 50psi --source-pressure 150psi")
            .alias("compare")
            .with(JobAnswers.options(books))
            .with(
                OptionSpec.flag(
                    "front",
                    "instead of the sizes: lines of which each is better in something than every"
                        + " other"),
                ShownUnits.option()));
    this.books = books;
    compareSizes = new CompareSizes(books);
    weighTradeOffs = new WeighTradeOffs(books);
  }

  @Override
  public Optional<BareWords> bareWords() {
    return Optional.of(LineWords::asOptions);
  }

  @Override
  protected Answer answer(Invocation in) {
    UnitSystem units = ShownUnits.of(in);
    return JobAnswers.answered(
        in,
        books,
        "Stopped; nothing was compared.",
        answers -> compared(in, JobForm.read(answers), units));
  }

  private Answer compared(Invocation in, Job job, UnitSystem units) {
    if (in.flag("front")) {
      TradeOffs front = weighTradeOffs.weigh(job);
      return front.rows().isEmpty()
          ? Answer.noSafePlan(front, screen -> "No line passes every check: 'line plan' says why.")
          : Answer.of(front, screen -> TradeOffText.of(front, screen, units));
    }
    Sizes compared = compareSizes.compare(job);
    return compared.anyFeasible()
        ? Answer.of(compared, screen -> text(compared.sizes(), screen, units))
        : Answer.noSafePlan(compared, screen -> text(compared.sizes(), screen, units));
  }

  private static String text(List<Size> sizes, Screen screen, UnitSystem units) {
    if (sizes.isEmpty()) {
      return "No hose of the catalogue may be laid as asked: 'line plan' says why.";
    }
    Table table =
        Table.of(
                "hose, in",
                "series",
                "lines",
                "does it",
                "loss",
                "source",
                "arrives",
                "pushes",
                "full",
                "total")
            .numbers(0, 2, 4, 5, 6, 7, 8, 9);
    for (Size size : sizes) {
      table.row(
          PlainNumber.of(size.hose().sizeIn()),
          size.hose().hoseSeries(),
          size.hose().lines(),
          size.feasible() ? "yes" : "no",
          units.pressure().figure(size.water().frictionLossPsi()),
          units.pressure().figure(size.water().requiredSourcePsi()),
          units.pressure().figure(size.water().deliveredPsi()),
          size.water().reactionLbf().map(units.force()::figure).orElse("-"),
          units.weight().figure(size.weight().chargedWeightLb()),
          MoneyWords.of(size.total()));
    }
    Prose prose = new Prose(screen);
    prose.line(
        String.format(
            "In %s: the loss in the hose, what the source must hold, and what arrives. Pushes is"
                + " the nozzle's reaction in %s, full the weight of all hose full of water in %s.",
            units.pressure().unit(), units.force().unit(), units.weight().unit()));
    prose.block(table.on(screen));
    for (Size size : sizes) {
      if (size.withoutPrice() > 0) {
        prose.line(
            PlainNumber.of(size.hose().sizeIn())
                + " in: "
                + (size.withoutPrice() == 1 ? "1 part" : size.withoutPrice() + " parts")
                + " without price, not in its total.");
      }
      size.limitedBy()
          .ifPresent(
              why ->
                  prose.line(
                      PlainNumber.of(size.hose().sizeIn()) + " in: " + units.restated(why) + "."));
    }
    return prose.toString().strip();
  }
}
