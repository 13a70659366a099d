package hosewright.job;

import hosewright.job.question.ApplianceKind;
import hosewright.job.question.JobField;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A line and a source of which the flow is sought.
 *
 * @param job the job; with hardly any water wanted where no flow is
 * @param open whether no flow is wanted, so that the line is laid for what it brings
 */
public record SoughtFlow(Job job, boolean open) {
  /** So little is wanted of an end that any line brings it. */
  private static final String LEAST_FLOW = "1 gpm";

  private static final String LEAST_NEED = "1 psi";

  /** A flow is sought of a job that wants one. */
  public static SoughtFlow of(Job job) {
    return new SoughtFlow(job, false);
  }

  /**
   * Reads the answers. Where the hose is named neither flow nor pressure need be wanted: a tip says
   * what it passes at any pressure, and what is no nozzle takes what comes.
   *
   * @throws BadInputException naming every missing or unusable answer
   */
  public static SoughtFlow read(Map<JobField, String> answers) {
    if (answers.containsKey(JobField.FLOW) || answers.containsKey(JobField.NEED)) {
      return of(JobForm.read(answers));
    }
    Map<JobField, String> least = new TreeMap<>(answers);
    if (answers.containsKey(JobField.TIP)) {
      least.put(JobField.NEED, LEAST_NEED);
    } else if (takesWhatComes(answers)) {
      least.put(JobField.FLOW, LEAST_FLOW);
      least.put(JobField.NEED, "0 psi");
    }
    boolean behindWye = answers.containsKey(JobField.ATTACK_LINES);
    boolean named =
        answers.containsKey(JobField.SIZE)
            && (!behindWye || answers.containsKey(JobField.ATTACK_SIZE));
    if (named) {
      return new SoughtFlow(JobForm.read(least), true);
    }
    List<Problem> problems = new ArrayList<>();
    try {
      JobForm.read(least);
    } catch (BadInputException e) {
      problems.addAll(e.problems());
    }
    JobField size = answers.containsKey(JobField.SIZE) ? JobField.ATTACK_SIZE : JobField.SIZE;
    problems.add(
        new Problem(
            size.word(),
            "",
            "the size of the hose laid, or the flow and need that it is to be planned for",
            size.example()));
    throw new BadInputException(problems);
  }

  /** Whether what stands at the end is an opening, that no pressure is needed at. */
  private static boolean takesWhatComes(Map<JobField, String> answers) {
    try {
      ApplianceKind kind = JobField.TO.read(answers.getOrDefault(JobField.TO, "")).kind();
      return kind == ApplianceKind.TANK || kind == ApplianceKind.PIPE;
    } catch (BadInputException e) {
      // Said with all else that is wrong.
      return false;
    }
  }
}
