package hosewright.desk;

import hosewright.intake.JobFile;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import java.util.Map;

/**
 * A job with the words it is asked in, which a quote keeps.
 *
 * @param text as a job file has it
 */
public record WrittenJob(Job job, String text) {

  /**
   * The job that answers ask for.
   *
   * @throws hosewright.problem.BadInputException naming every answer that cannot be used
   */
  public static WrittenJob of(Map<JobField, String> answers) {
    return new WrittenJob(JobForm.read(answers), JobFile.write(answers));
  }
}
