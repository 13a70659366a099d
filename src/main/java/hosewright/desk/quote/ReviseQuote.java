package hosewright.desk.quote;

import hosewright.desk.Books;
import hosewright.desk.Revising;
import hosewright.desk.Revising.Revised;
import hosewright.desk.Signing;
import hosewright.desk.WrittenJob;
import hosewright.desk.kit.PlanWithParts;
import hosewright.desk.words.ItemWords;
import hosewright.intake.JobText;
import hosewright.job.layout.LayoutText;
import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.problem.BadInputException;
import hosewright.quote.Amendments;
import hosewright.quote.Basis;
import hosewright.quote.Group;
import hosewright.quote.Quote;
import hosewright.quote.life.QuoteLife;
import hosewright.quote.life.QuoteLife.Step;
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
      Group of = group(seen, asked.changes().group());
      LayoutText before = JobText.kept(of.jobYaml());
      LayoutText answers = before.saying(changed(before.answers(), asked.answers()));
      // A quote of goods alone was made from no job, and is revised without one.
      boolean goods = !answers.answers().containsKey(JobField.FROM) && answers.equals(before);
      Optional<WrittenJob> job = goods ? Optional.empty() : Optional.of(WrittenJob.of(answers));
      LinePlan plan =
          job.map(wanted -> plan(open, seen, of, answers, before, wanted)).orElse(of.plan());
      if (!plan.feasible()) {
        return new Outcome(plan, Optional.empty());
      }
      Basis basis =
          GroupTaken.into(
              answers.equals(before) ? seen.basis() : basis(seen, of, job.orElseThrow(), plan),
              asked.changes().of(LineChange.Kind.TAKE));
      Amendments amendments =
          new Amending(
                  seen,
                  seen.offer().amendments().fitting(seen.groups(), basis.groups()),
                  ItemWords.in(open, Optional.empty()))
              .after(asked.changes());
      if (basis.equals(seen.basis()) && amendments.equals(seen.offer().amendments())) {
        throw new BadInputException(
            "revise", seen.number(), "say what is to be different: see 'help quote revise'");
      }
      Quote next = open.revisions().revised(seen, basis, amendments.because(reason));
      return new Outcome(
          plan, Optional.of(Revising.keep(open, seen, next, Step.REVISE, asked.by())));
    }
  }

  /** The group whose job is to be different; the first where none is named. */
  private static Group group(Quote seen, Optional<Integer> named) {
    if (named.isEmpty()) {
      return seen.groups().get(0);
    }
    return seen.groups().stream()
        .filter(group -> named.get() == group.number())
        .findFirst()
        .orElseThrow(
            () ->
                new BadInputException(
                    "group",
                    named.get().toString(),
                    "the number of a group of this quote, such as "
                        + seen.groups().get(seen.groups().size() - 1).number()));
  }

  /** The purchase with another job in one of its groups; the only group titles the whole. */
  private static Basis basis(Quote seen, Group of, WrittenJob job, LinePlan plan) {
    boolean alone = seen.groups().size() == 1;
    Group.Heading heading =
        new Group.Heading(job.job().title(), of.heading().count(), of.heading().optional());
    Group now = new Group(of.number(), heading, job.text(), plan);
    return Basis.of(
        alone ? job.job().title() : seen.basis().title(),
        Optional.empty(),
        seen.groups().stream().map(group -> group.number() == of.number() ? now : group).toList());
  }

  private static Map<JobField, String> changed(
      Map<JobField, String> before, Map<JobField, String> different) {
    Map<JobField, String> answers = Answers.over(before, different);
    answers.values().removeIf(String::isBlank);
    return answers;
  }

  /** The plan quoted before, unless the job asks for another. */
  private static LinePlan plan(
      Books open, Quote seen, Group of, LayoutText answers, LayoutText before, WrittenJob job) {
    return withoutTitle(answers.answers()).equals(withoutTitle(before.answers()))
        ? of.plan()
        : new PlanWithParts(open, Optional.empty()).plan(job, open.revisions().kept(seen));
  }

  private static Map<JobField, String> withoutTitle(Map<JobField, String> answers) {
    Map<JobField, String> rest = new TreeMap<>(answers);
    rest.remove(JobField.TITLE);
    return rest;
  }
}
