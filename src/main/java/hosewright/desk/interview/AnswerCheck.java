package hosewright.desk.interview;

import hosewright.csv.WrittenNumber;
import hosewright.intake.RouteFile;
import hosewright.job.JobForm;
import hosewright.job.question.JobField;
import hosewright.job.question.Offer;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads what was typed to a question as the answer it means, or says why it is none. */
final class AnswerCheck {
  private final Desk desk;

  AnswerCheck(Desk desk) {
    this.desk = desk;
  }

  /** An answer and the question it belongs to. */
  record Read(JobField field, String answer) {}

  /**
   * The answer meant.
   *
   * @throws BadInputException naming what is allowed
   */
  Read read(JobField asked, String said) {
    // Whoever has surveyed the way names its file where others say how far it is.
    JobField field =
        asked.equals(JobField.LENGTH) && RouteFile.isNamed(said) ? JobField.ROUTE : asked;
    String meant = field.offer() == Offer.CUSTOMERS ? customer(field, said) : withUnit(field, said);
    String answer = RouteFile.putInto(Map.of(field, meant), Optional.empty()).get(field);
    List<Problem> problems = JobForm.problemsOf(field, answer);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Read(field, answer);
  }

  /** The prompt shows a unit, so a number alone cannot be mistaken. */
  private static String withUnit(JobField field, String said) {
    boolean bare = WrittenNumber.plain(said).matches("[-+]?\\d+(\\.\\d+)?");
    return field.unit().filter(unit -> bare).map(unit -> said + " " + unit).orElse(said);
  }

  /** A customer by identifier, by name or by how the name begins. */
  private String customer(JobField field, String said) {
    String typed = said.strip();
    List<Map.Entry<String, String>> all = List.copyOf(desk.customers().entrySet());
    Optional<String> exact =
        all.stream()
            .filter(
                one ->
                    one.getKey().equalsIgnoreCase(typed) || one.getValue().equalsIgnoreCase(typed))
            .map(Map.Entry::getKey)
            .findFirst();
    List<String> begun =
        all.stream()
            .filter(one -> one.getValue().regionMatches(true, 0, typed, 0, typed.length()))
            .map(Map.Entry::getKey)
            .toList();
    if (exact.isPresent() || begun.size() == 1) {
      return exact.orElseGet(() -> begun.get(0));
    }
    List<String> known = List.copyOf(desk.customers().keySet());
    List<String> names = Stream.concat(known.stream(), desk.customers().values().stream()).toList();
    throw new BadInputException(
        List.of(
            new Problem(
                field.word(),
                said,
                "one of " + String.join(", ", begun.isEmpty() ? known : begun),
                Nearest.to(typed, names))));
  }
}
