package hosewright.tender;

import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;

/**
 * One job of a tender, as text.
 *
 * @param line the line of the file it begins on
 * @param answers what it says, without empty cells
 * @param problems why it cannot be read as a row at all; else empty
 */
public record TenderRow(
    long line, String id, Map<JobField, String> answers, List<Problem> problems) {

  public TenderRow {
    answers = Map.copyOf(answers);
    problems = List.copyOf(problems);
  }
}
