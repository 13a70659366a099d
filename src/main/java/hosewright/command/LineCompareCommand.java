package hosewright.command;

import hosewright.catalogue.MoneyWords;
import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.measure.UnitSystem;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Sets the best line of every hose size side by side. */
final class LineCompareCommand extends ShellCommand {
  private final Supplier<Books> books;

  LineCompareCommand(Supplier<Books> books) {
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
  }

  /** One size; reaction is null where nothing is a nozzle. */
  record Size(
      double sizeIn,
      double couplingSizeIn,
      String hoseSeries,
      int lines,
      boolean feasible,
      Optional<String> limitedBy,
      double frictionLossPsi,
      double requiredSourcePsi,
      double deliveredPsi,
      Optional<Double> reactionLbf,
      double velocityFtPerS,
      double emptyWeightLb,
      double chargedWeightLb,
      Money total) {

    static Size of(LinePlan plan) {
      var h = plan.hydraulics();
      return new Size(
          plan.sizeIn(),
          plan.couplingSizeIn(),
          plan.hoseSeries(),
          plan.lines(),
          plan.feasible(),
          plan.limitedBy(),
          h.frictionLossPsi(),
          h.requiredSourcePsi(),
          h.deliveredPsi(),
          h.reactionLbf(),
          h.velocityFtPerS(),
          h.emptyWeightLb(),
          h.chargedWeightLb(),
          plan.total());
    }
  }

  record Sizes(List<Size> sizes) {}

  @Override
  protected Answer answer(Invocation in) {
    UnitSystem units = ShownUnits.of(in);
    Optional<Map<JobField, String>> answers = JobAnswers.gather(in, books, false);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was compared.");
    }
    Job job = JobForm.read(answers.get());
    if (in.flag("front")) {
      return front(job, units);
    }
    List<Size> sizes;
    try (Books open = books.get()) {
      sizes = new Planning(open).planner(job).plansBySize(job).stream().map(Size::of).toList();
    }
    return sizes.stream().anyMatch(Size::feasible)
        ? Answer.of(new Sizes(sizes), screen -> text(sizes, screen, units))
        : Answer.noSafePlan(new Sizes(sizes), screen -> text(sizes, screen, units));
  }

  private Answer front(Job job, UnitSystem units) {
    try (Books open = books.get()) {
      TradeOffTable table =
          TradeOffTable.of(
              job, new Planning(open).planner(job).front(job, TradeOffTable.MOST_ROWS));
      return table.rows().isEmpty()
          ? Answer.noSafePlan(table, screen -> "No line passes every check: 'line plan' says why.")
          : Answer.of(table, screen -> table.text(screen, units));
    }
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
          Prose.plain(size.sizeIn()),
          size.hoseSeries(),
          size.lines(),
          size.feasible() ? "yes" : "no",
          units.pressure().figure(size.frictionLossPsi()),
          units.pressure().figure(size.requiredSourcePsi()),
          units.pressure().figure(size.deliveredPsi()),
          size.reactionLbf().map(units.force()::figure).orElse("-"),
          units.weight().figure(size.chargedWeightLb()),
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
      size.limitedBy()
          .ifPresent(
              why -> prose.line(Prose.plain(size.sizeIn()) + " in: " + units.restated(why) + "."));
    }
    return prose.toString().strip();
  }
}
