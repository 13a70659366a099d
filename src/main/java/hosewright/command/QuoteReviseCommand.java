package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.jobfile.JobFile;
import hosewright.line.Job;
import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.line.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes a new revision of a quote from what is to be different; prices quoted before stay. */
final class QuoteReviseCommand extends ShellCommand {
  private final Supplier<Books> books;

  QuoteReviseCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "quote revise",
                Group.QUOTE,
                "Makes a new revision of a quote, at the prices quoted before",
                "quote revise Q-000001 --quantity 1=12 --add \"1 x Crating @ 35.00\""
                    + " --reason \"three lengths more\"")
            .alias("revise")
            .with(QuoteChoice.argument(books))
            .with(
                OptionSpec.value("reason", "TEXT", "why it is revised").asRequired(),
                SignedBy.option())
            .with(AmendmentOptions.options())
            .with(JobAnswers.changes()));
    this.books = books;
  }

  @Override
  protected Answer answer(Invocation in) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(in, open);
      QuoteLife.take(seen, Step.REVISE);
      String reason = Signing.sentence("reason", in.required("reason"));
      Map<JobField, String> before = JobFile.parse(seen.jobYaml());
      Map<JobField, String> answers = JobAnswers.changed(before, in);
      // A quote of goods alone was made from no job, and is revised without one.
      boolean goods = !answers.containsKey(JobField.FROM) && answers.equals(before);
      Optional<Job> job = goods ? Optional.empty() : Optional.of(JobForm.read(answers));
      LinePlan plan =
          job.map(asked -> plan(open, seen, answers, before, asked)).orElse(seen.plan());
      if (!plan.feasible()) {
        return Answer.noSafePlan(
            plan, screen -> PlanText.of(plan, screen) + "\nNothing was revised.");
      }
      Amendments amendments =
          new AmendmentOptions(seen, seen.amendments().fitting(seen.plan(), plan), open.catalogue())
              .read(in);
      if (answers.equals(before) && amendments.equals(seen.amendments())) {
        throw new BadInputException(
            "revise", seen.number(), "say what is to be different: see 'help quote revise'");
      }
      Quote next =
          open.revisions()
              .revised(
                  seen,
                  answers.equals(before) ? seen.title() : job.orElseThrow().title(),
                  answers.equals(before) ? seen.jobYaml() : JobFile.write(answers),
                  plan,
                  amendments.because(reason));
      Revised revised = Revising.keep(open, seen, next, Step.REVISE, SignedBy.name(in));
      return Answer.of(revised, screen -> QuoteText.of(revised, screen));
    }
  }

  /** The plan quoted before, unless the job asks for another. */
  private static LinePlan plan(
      Books open,
      Quote seen,
      Map<JobField, String> answers,
      Map<JobField, String> before,
      Job job) {
    return withoutTitle(answers).equals(withoutTitle(before))
        ? seen.plan()
        : new Planning(open).plan(job, open.revisions().kept(seen));
  }

  private static Map<JobField, String> withoutTitle(Map<JobField, String> answers) {
    Map<JobField, String> rest = new EnumMap<>(JobField.class);
    rest.putAll(answers);
    rest.remove(JobField.TITLE);
    return rest;
  }
}
