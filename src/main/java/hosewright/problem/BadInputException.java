package hosewright.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What a user gave cannot be used; carries every problem found, not just the first. */
public class BadInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  public BadInputException(List<Problem> problems) {
    super(problems.stream().map(Problem::sentence).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /**
   * Some problems out of more.
   *
   * @param closing a sentence that says how many there are and how to see them
   */
  public BadInputException(List<Problem> problems, String closing) {
    super(
        problems.stream().map(Problem::sentence).collect(Collectors.joining("\n"))
            + "\n"
            + closing);
    this.problems = List.copyOf(problems);
  }

  public BadInputException(String field, String value, String allowed) {
    this(List.of(Problem.of(field, value, allowed)));
  }

  public List<Problem> problems() {
    return problems;
  }
}
