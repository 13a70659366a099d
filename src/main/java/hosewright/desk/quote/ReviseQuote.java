package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.intake.JobFile;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.Quote;
import hosewright.quote.QuoteLife;
import hosewright.quote.QuoteLife.Step;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

/** Makes a new revision of a quote from what is to be different; prices quoted before stay. */
public final class ReviseQuote {
  private final Supplier<Books> books;

  public ReviseQuote(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is asked.
   *
   * @param number the latest revision of a quote
   * @param reason why it is revised
   * @param answers of the job that are to be different; an empty one takes an answer away
   * @param by who revises it
   */
  public record Request(
      String number, String reason, Map<JobField, String> answers, Changes changes, String by) {
    public Request {
      answers = Map.copyOf(answers);
    }
  }

  /**
   * What came of it.
   *
   * @param plan of the job as it is now
   * @param revised empty where there is no safe plan
   */
  public record Outcome(LinePlan plan, Optional<Revised> revised) {}

  /**
   * The new revision, kept.
   *
   * @throws BadInputException when the quote may not be revised, nothing is to be different, or a
   *     change cannot be made; nothing is kept then
   */
  public Outcome revise(Request asked) {
    try (Books open = books.get()) {
      Quote seen = QuoteChoice.latest(asked.number(), open);
      QuoteLife.take(seen, Step.REVISE);
      String reason = Signing.sentence("reason", asked.reason());
      Map<JobField, String> before = JobFile.parse(seen.basis().jobYaml());
      Map<JobField, String> answers = changed(before, asked.answers());
      // A quote of goods alone was made from no job, and is revised without one.
      boolean goods = !answers.containsKey(JobField.FROM) && answers.equals(before);
      Optional<Job> job = goods ? Optional.empty() : Optional.of(JobForm.read(answers));
      LinePlan plan =
          job.map(wanted -> plan(open, seen, answers, before, wanted)).orElse(seen.plan());
      if (!plan.feasible()) {
        return new Outcome(plan, Optional.empty());
      }
      Amendments amendments =
          new Amending(seen, seen.offer().amendments().fitting(seen.plan(), plan), open.catalogue())
              .after(asked.changes());
      if (answers.equals(before) && amendments.equals(seen.offer().amendments())) {
        throw new BadInputException(
            "revise", seen.number(), "say what is to be different: see 'help quote revise'");
      }
      Quote next =
          open.revisions()
              .revised(
                  seen,
                  answers.equals(before) ? seen.basis().title() : job.orElseThrow().title(),
                  answers.equals(before) ? seen.basis().jobYaml() : JobFile.write(answers),
                  plan,
                  amendments.because(reason));
      return new Outcome(
          plan, Optional.of(Revising.keep(open, seen, next, Step.REVISE, asked.by())));
    }
  }

  private static Map<JobField, String> changed(
      Map<JobField, String> before, Map<JobField, String> different) {
    Map<JobField, String> answers = new TreeMap<>(before);
    answers.putAll(different);
    answers.values().removeIf(String::isBlank);
    return answers;
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
    Map<JobField, String> rest = new TreeMap<>(answers);
    rest.remove(JobField.TITLE);
    return rest;
  }
}
