package hosewright.door.shell.line;

import hosewright.desk.Books;
import hosewright.desk.WrittenJob;
import hosewright.desk.line.ExplainPlan;
import hosewright.desk.line.PlanJob;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.ShownUnits;
import hosewright.intake.JobText;
import hosewright.job.JobForm;
import hosewright.job.layout.LayoutText;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Planner;
import hosewright.measure.UnitSystem;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** Plans a line for a job. */
public final class LinePlanCommand extends ShellCommand {
  private static final String EXPLAIN = "explain";

  private final Supplier<Books> books;
  private final PlanJob planJob;
  private final ExplainPlan explainPlan;

  public LinePlanCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "line plan",
                Group.PLAN,
                "Plans the cheapest line that joins, holds and brings the pressure",
                "line plan --from \"2.5 NH male hydrant\" --to \"1.5 NH nozzle\" --length 400ft"
                    + " --flow 150gpm --need 50psi --source-pressure 120psi")
            .alias("plan")
            .with(JobAnswers.options(books))
            .with(
                OptionSpec.flag(
                    EXPLAIN, "also say what was weighed, and why every other hose lost"),
                ShownUnits.option(),
                WorkingText.option())
            .with(PlanSections.options()));
    this.books = books;
    planJob = new PlanJob(books);
    explainPlan = new ExplainPlan(books);
  }

  @Override
  public Optional<BareWords> bareWords() {
    return Optional.of(LineWords::asOptions);
  }

  @Override
  protected Answer answer(Invocation in) {
    Shown shown = new Shown(ShownUnits.of(in), PlanSections.of(in), in.flag(WorkingText.NAME));
    return JobAnswers.layoutAnswered(
        in,
        books,
        false,
        "Stopped; nothing was planned.",
        answers -> in.flag(EXPLAIN) ? explained(answers, shown) : planned(answers, shown));
  }

  /** How the plan is to be shown. */
  private record Shown(UnitSystem units, Set<PlanSections> parts, boolean working) {
    String text(LinePlan plan, String reasoning, Screen screen) {
      String text = PlanText.of(plan, screen, units, parts) + reasoning;
      return working
          ? text + "\n" + WorkingText.of(plan.hydraulics().working(), screen, units)
          : text;
    }
  }

  private Answer planned(LayoutText answers, Shown shown) {
    LinePlan plan = planJob.plan(WrittenJob.of(answers));
    return answer(plan, plan, screen -> shown.text(plan, "", screen));
  }

  private Answer explained(LayoutText answers, Shown shown) {
    Planner.Explained explained = explainPlan.explain(JobForm.read(JobText.oneLine(answers)));
    LinePlan plan = explained.plan();
    return answer(
        plan,
        explained,
        screen ->
            shown.text(
                plan, "\n\n" + PlanReasoning.of(plan, explained.reasoning(), screen), screen));
  }

  private static Answer answer(LinePlan plan, Object document, Function<Screen, String> text) {
    return plan.feasible() ? Answer.of(document, text) : Answer.noSafePlan(document, text);
  }
}
