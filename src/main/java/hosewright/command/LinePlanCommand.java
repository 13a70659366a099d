package hosewright.command;

import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.measure.UnitSystem;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import java.util.Map;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;

/** Plans a line for a job. */
final class LinePlanCommand extends ShellCommand {
  private final ObjectProvider<Books> books;

  LinePlanCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "line plan",
                Group.PLAN,
                "Plans the cheapest line that joins, holds and brings the pressure",
                "line plan --from \"2.5 NH male hydrant\" --to \"1.5 NH nozzle\" --length 400ft"
                    + " --flow 150gpm --need 50psi --source-pressure 120psi")
            .with(JobAnswers.options())
            .with(ShownUnits.option(), WorkingText.option()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    UnitSystem units = ShownUnits.of(in);
    Optional<Map<JobField, String>> answers = JobAnswers.gather(in, books, false);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was planned.");
    }
    LinePlan plan = plan(JobForm.read(answers.get()));
    boolean working = in.flag(WorkingText.NAME);
    return plan.feasible()
        ? Answer.of(plan, screen -> text(plan, screen, units, working))
        : Answer.noSafePlan(plan, screen -> text(plan, screen, units, working));
  }

  private static String text(LinePlan plan, Screen screen, UnitSystem units, boolean working) {
    String text = PlanText.of(plan, screen, units);
    return working
        ? text + "\n" + WorkingText.of(plan.hydraulics().working(), screen, units)
        : text;
  }

  private LinePlan plan(Job job) {
    try (Books open = books.getObject()) {
      return new Planning(open).plan(job).plan();
    }
  }
}
