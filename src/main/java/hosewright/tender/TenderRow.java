package hosewright.tender;

import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One job of a tender, as text.
 *
 * @param line the line of the file it begins on
 * @param answers what it says, without empty cells
 * @param packageFile name of the package file it asks for, in place of a job of its own
 * @param problems why it cannot be read as a row at all; else empty
 */
public record TenderRow(
    long line,
    String id,
    Map<JobField, String> answers,
    Optional<String> packageFile,
    List<Problem> problems) {

  public TenderRow {
    answers = Map.copyOf(answers);
    problems = List.copyOf(problems);
  }

  /** The same row saying other things. */
  public TenderRow saying(Map<JobField, String> other) {
    return new TenderRow(line, id, other, packageFile, problems);
  }

  /** The same row with more amiss. */
  public TenderRow amiss(List<Problem> more) {
    return new TenderRow(
        line, id, answers, packageFile, Stream.concat(problems.stream(), more.stream()).toList());
  }
}
