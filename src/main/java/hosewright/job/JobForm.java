package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Turns the answers of a form, as text, into a {@link Job}, or names everything wrong with them.
 */
public final class JobForm {
  private final List<Problem> problems = new ArrayList<>();

  private JobForm() {}

  /**
   * The job that the answers state.
   *
   * @param answers text by field; a field left out is left open
   * @throws BadInputException naming every missing or unusable answer
   */
  public static Job read(Map<JobField, String> answers) {
    JobForm form = new JobForm();
    form.missing(answers);
    Optional<Job> job = form.job(answers);
    if (!form.problems.isEmpty()) {
      throw new BadInputException(form.problems);
    }
    return job.orElseThrow();
  }

  /** Checks one answer alone, for a form that is filled in step by step. */
  public static List<Problem> problemsOf(JobField field, String answer) {
    JobForm form = new JobForm();
    form.job(Map.of(field, answer));
    return form.problems.stream().filter(problem -> problem.field().equals(field.word())).toList();
  }

  private void missing(Map<JobField, String> answers) {
    for (JobField field : JobField.values()) {
      if (field.required(answers) && answers.getOrDefault(field, "").isBlank()) {
        problems.add(new Problem(field.word(), "", "give " + field.meaning(), field.example()));
      }
    }
  }

  /** Reads every part, so that all problems are found in one go. */
  private Optional<Job> job(Map<JobField, String> texts) {
    Answers answers = Answers.read(texts, problems);
    Optional<Ends> ends = Ends.read(answers);
    Optional<Run> run = Run.read(answers, problems);
    Equipment equipment = Equipment.read(answers, problems);
    int appliances = equipment.network().attack().map(Network.Attack::lines).orElse(1);
    Optional<Water> water = Water.read(answers, appliances, problems);
    Conditions conditions = Conditions.read(answers);
    if (ends.isEmpty() || run.isEmpty() || water.isEmpty() || !problems.isEmpty()) {
      return Optional.empty();
    }
    Heading heading = Heading.read(answers, ends.get());
    Job job = new Job(heading, ends.get(), run.get(), water.get(), equipment, conditions, answers);
    List<Problem> beyond = JobLimits.problemsOf(job);
    problems.addAll(beyond);
    return beyond.isEmpty() ? Optional.of(job) : Optional.empty();
  }
}
