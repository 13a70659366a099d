package hosewright.command;

import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.line.Planner;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
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
            .with(
                OptionSpec.flag(
                    "explain", "also say what was weighed, and why every other hose lost")));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    Optional<Map<JobField, String>> answers = JobAnswers.gather(in, books, false);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was planned.");
    }
    Job job = JobForm.read(answers.get());
    try (Books open = books.getObject()) {
      Planner planner = new Planning(open).planner(job);
      return in.flag("explain") ? explained(planner.explain(job)) : plain(planner.plan(job));
    }
  }

  private static Answer plain(LinePlan plan) {
    return answer(plan, plan, screen -> PlanText.of(plan, screen));
  }

  private static Answer explained(Planner.Explained explained) {
    LinePlan plan = explained.plan();
    return answer(
        plan,
        explained,
        screen ->
            PlanText.of(plan, screen)
                + "\n\n"
                + PlanReasoning.of(plan, explained.reasoning(), screen));
  }

  private static Answer answer(LinePlan plan, Object document, Function<Screen, String> text) {
    return plan.feasible() ? Answer.of(document, text) : Answer.noSafePlan(document, text);
  }
}
