package hosewright.command;

import hosewright.line.Flowing;
import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;

/** Finds the flow that arrives through the line planned for a job. */
final class LineFlowCommand extends ShellCommand {
  private final ObjectProvider<Books> books;

  LineFlowCommand(ObjectProvider<Books> books) {
    super(
        CommandSpec.of(
                "line flow",
                Group.PLAN,
                "Finds the flow that a source brings through the planned line",
                "line flow --from \"2.5 NH male hydrant\" --to \"1.5 NH nozzle\" --length 400ft"
                    + " --size 1.75in --flow 150gpm --need 50psi --source-pressure 150psi")
            .with(JobAnswers.options()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    Optional<Map<JobField, String>> answers = JobAnswers.gather(in, books, false);
    if (answers.isEmpty()) {
      return Answer.of(Map.of(), "Stopped; nothing was calculated.");
    }
    Job job = JobForm.read(answers.get());
    try (Books open = books.getObject()) {
      return new Planning(open)
          .planner(job)
          .flow(job)
          .map(flow -> Answer.of(flow, screen -> text(flow, screen)))
          .orElseGet(
              () -> {
                var plan = new Planning(open).plan(job).plan();
                return Answer.noSafePlan(plan, screen -> PlanText.of(plan, screen));
              });
    }
  }

  private static String text(Flowing flow, Screen screen) {
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "%.1f gpm arrive at %.1f psi through %.0f ft of %s in hose (%s)%s.%n",
            flow.flowGpm(),
            flow.deliveredPsi(),
            flow.laidFt(),
            BigDecimal.valueOf(flow.sizeIn()).stripTrailingZeros().toPlainString(),
            flow.hoseSeries(),
            flow.lines() > 1 ? ", " + flow.lines() + " lines side by side" : ""));
    text.append(
        String.format(Locale.ROOT, "The source gives %.1f psi at that flow.%n", flow.sourcePsi()));
    text.append("Limited by ").append(flow.limitedBy()).append(".\n\n");
    Table table =
        Table.of("station", "hose, ft", "height, ft", "flowing, psi", "shut, psi")
            .numbers(1, 2, 3, 4);
    flow.profile()
        .forEach(
            at ->
                table.row(
                    at.name(),
                    one(at.distanceFt()),
                    one(at.elevationFt()),
                    one(at.flowingPsi()),
                    one(at.closedPsi())));
    return text.append(table.on(screen)).toString().replace(System.lineSeparator(), "\n");
  }

  private static String one(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }
}
