package hosewright.desk;

import hosewright.intake.JobText;
import hosewright.job.Job;
import hosewright.job.JobForm;
import hosewright.job.layout.LayoutForm;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LayoutText;
import hosewright.job.layout.PartsBeside;
import hosewright.job.question.JobField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A job with the words it is asked in, which a quote keeps.
 *
 * @param job of one line, else what holds for all legs
 * @param layout the legs, where they are listed
 * @param beside what is wanted besides what is laid
 * @param text as a job file has it
 */
public record WrittenJob(Job job, Optional<LayoutJob> layout, PartsBeside beside, String text) {

  /**
   * The job that answers ask for.
   *
   * @throws hosewright.problem.BadInputException naming every answer that cannot be used
   */
  public static WrittenJob of(Map<JobField, String> answers) {
    return of(LayoutText.oneLine(answers));
  }

  /**
   * The job that answers and legs ask for.
   *
   * @throws hosewright.problem.BadInputException naming every answer that cannot be used, and the
   *     leg it stands in
   */
  public static WrittenJob of(LayoutText asked) {
    String text = JobText.write(asked);
    if (asked.legs().isEmpty()) {
      return new WrittenJob(JobForm.read(asked.answers()), Optional.empty(), asked.beside(), text);
    }
    LayoutJob layout = LayoutForm.read(asked);
    return new WrittenJob(layout.whole(), Optional.of(layout), asked.beside(), text);
  }

  /** The same job with another answer; an empty one takes it away. */
  public WrittenJob saying(JobField field, String answer) {
    LayoutText asked = JobText.layout(text);
    Map<JobField, String> answers = new TreeMap<>(asked.answers());
    if (answer.isEmpty()) {
      answers.remove(field);
    } else {
      answers.put(field, answer);
    }
    return of(asked.saying(answers));
  }

  /**
   * The same job with its kits written out, so that a kit changed later changes nothing kept.
   *
   * @throws hosewright.problem.NoSuchThingException when there is no kit of a name
   */
  public WrittenJob writtenOut(Kits kits) {
    if (beside.kits().isEmpty()) {
      return this;
    }
    List<String> parts = new ArrayList<>(beside.parts());
    beside.kits().forEach(name -> parts.addAll(kits.get(name).lines()));
    return of(JobText.layout(text).with(new PartsBeside(parts, List.of())));
  }
}
