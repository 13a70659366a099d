package hosewright.door.shell.line;

import hosewright.desk.Books;
import hosewright.desk.line.FindFlow;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.ShownUnits;
import hosewright.intake.JobText;
import hosewright.job.SoughtFlow;
import hosewright.job.layout.LayoutForm;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Flowing;
import hosewright.measure.UnitSystem;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** Finds the flow that arrives through the line planned for a job. */
public final class LineFlowCommand extends ShellCommand {
  private final Supplier<Books> books;
  private final FindFlow findFlow;

  public LineFlowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "line flow",
                Group.PLAN,
                "Finds the flow that a source brings through the planned line",
                "line flow --from \"2.5 NH male hydrant\" --to \"1.5 NH nozzle\" --length 400ft"
                    + " --size 1.75in --flow 150gpm --need 50psi --source-pressure 150psi")
            .alias("flow")
            .with(JobAnswers.options(books))
            .with(ShownUnits.option(), WorkingText.option()));
    this.books = books;
    findFlow = new FindFlow(books);
  }

  @Override
  public Optional<BareWords> bareWords() {
    return Optional.of(LineWords::asOptions);
  }

  @Override
  protected Answer answer(Invocation in) {
    UnitSystem units = ShownUnits.of(in);
    return JobAnswers.layoutAnswered(
        in,
        books,
        false,
        "Stopped; nothing was calculated.",
        asked ->
            asked.legs().isEmpty()
                ? found(in, JobText.oneLine(asked), units)
                : through(findFlow.find(LayoutForm.read(asked)), units));
  }

  private Answer found(Invocation in, Map<JobField, String> answers, UnitSystem units) {
    FindFlow.Found found = findFlow.find(SoughtFlow.read(answers));
    return found
        .flow()
        .map(flow -> answer(flow, units, in.flag(WorkingText.NAME)))
        .orElseGet(
            () -> {
              LinePlan plan = found.noPlan().orElseThrow();
              return Answer.noSafePlan(plan, screen -> PlanText.of(plan, screen, units, Set.of()));
            });
  }

  private static Answer through(FindFlow.FoundLayout found, UnitSystem units) {
    return found
        .flow()
        .map(
            flow -> {
              Function<Screen, String> text = screen -> LayoutFlowText.of(flow, screen, units);
              return flow.holds() ? Answer.of(flow, text) : Answer.noSafePlan(flow, text);
            })
        .orElseGet(
            () -> {
              LinePlan plan = found.noPlan().orElseThrow();
              return Answer.noSafePlan(plan, screen -> PlanText.of(plan, screen, units));
            });
  }

  private static Answer answer(Flowing flow, UnitSystem units, boolean working) {
    Function<Screen, String> text =
        screen ->
            FlowingText.of(flow, screen, units)
                + (working ? "\n" + WorkingText.of(flow.working(), screen, units) : "");
    return flow.safe() ? Answer.of(flow, text) : Answer.noSafePlan(flow, text);
  }
}
