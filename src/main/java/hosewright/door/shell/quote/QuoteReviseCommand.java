package hosewright.door.shell.quote;

import hosewright.desk.Books;
import hosewright.desk.quote.ReviseQuote;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.line.JobAnswers;
import hosewright.door.shell.line.PlanText;
import hosewright.door.shell.option.QuoteArgument;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import hosewright.line.model.LinePlan;
import java.util.function.Supplier;

/** Makes a new revision of a quote from what is to be different; prices quoted before stay. */
public final class QuoteReviseCommand extends ShellCommand {
  private final ReviseQuote reviseQuote;

  public QuoteReviseCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote revise",
                Group.QUOTE,
                "Makes a new revision of a quote, at the prices quoted before",
                "quote revise Q-000001 --quantity 1=12 --add \"1 x Crating @ 35.00\""
                    + " --reason \"three lengths more\"")
            .alias("revise")
            .with(QuoteArgument.of(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why it is revised").asRequired(),
                SignedBy.option())
            .with(AmendmentOptions.options())
            .with(JobAnswers.changes()));
    this.reviseQuote = new ReviseQuote(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    ReviseQuote.Outcome outcome =
        reviseQuote.revise(
            new ReviseQuote.Request(
                in.argument(0).orElseThrow(),
                in.required("reason"),
                JobAnswers.changed(in),
                AmendmentOptions.changes(in),
                SignedBy.name(in)));
    return outcome
        .revised()
        .map(revised -> Answer.of(revised, screen -> QuoteText.of(revised, screen)))
        .orElseGet(() -> unsafe(outcome.plan()));
  }

  private static Answer unsafe(LinePlan plan) {
    return Answer.noSafePlan(
        plan, screen -> PlanText.brief(plan, screen) + "\nNothing was revised.");
  }
}
