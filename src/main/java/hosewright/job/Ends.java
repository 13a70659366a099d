package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.JobField;
import hosewright.job.question.SourceKind;
import hosewright.thread.End;
import java.util.Optional;

/**
 * What the line starts at and what it ends at.
 *
 * @param from the end of the source
 * @param to the end of the appliance
 */
public record Ends(SourceKind source, End from, ApplianceKind appliance, End to) {

  /** Empty where one of them is not known. */
  static Optional<Ends> read(Answers answers) {
    return answers
        .of(JobField.FROM)
        .flatMap(
            from ->
                answers
                    .of(JobField.TO)
                    .map(to -> new Ends(from.kind(), from.end(), to.kind(), to.end())));
  }
}
