package hosewright.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What a user gave cannot be used; carries every problem found, not just the first. */
public final class BadInputException extends RefusalException {
  private static final long serialVersionUID = 1L;

  private BadInputException(String sentences, List<Problem> problems) {
    super(Kind.BAD_INPUT, sentences, problems);
  }

  public BadInputException(List<Problem> problems) {
    this(sentences(problems), problems);
  }

  /**
   * Some problems out of more.
   *
   * @param closing a sentence that says how many there are and how to see them
   */
  public BadInputException(List<Problem> problems, String closing) {
    this(sentences(problems) + "\n" + closing, problems);
  }

  public BadInputException(String field, String value, String allowed) {
    this(List.of(Problem.of(field, value, allowed)));
  }

  /** All that was refused of one input, each in its own words. */
  public static BadInputException ofAll(List<? extends RefusalException> refused) {
    return new BadInputException(
        refused.stream().map(RefusalException::getMessage).collect(Collectors.joining("\n")),
        refused.stream().flatMap(refusal -> refusal.problems().stream()).toList());
  }

  private static String sentences(List<Problem> problems) {
    return problems.stream().map(Problem::sentence).collect(Collectors.joining("\n"));
  }
}
