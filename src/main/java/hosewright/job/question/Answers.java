package hosewright.job.question;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * The answers to a job's questions, as they were typed and as they were read.
 *
 * @param texts without those left open
 * @param values what each says, without those that could not be read
 */
public record Answers(Map<JobField, String> texts, Map<JobField, Object> values) {
  public Answers {
    texts = Map.copyOf(texts);
    values = Map.copyOf(values);
  }

  /**
   * Reads every answer, so that all problems are found in one go.
   *
   * @param problems what is wrong with them is added here
   */
  public static Answers read(Map<JobField, String> texts, List<Problem> problems) {
    Map<JobField, String> given = new TreeMap<>();
    Map<JobField, Object> values = new TreeMap<>();
    new TreeMap<>(texts)
        .forEach(
            (field, text) -> {
              if (!text.isBlank()) {
                given.put(field, text.strip());
                try {
                  values.put(field, field.read(text));
                } catch (BadInputException e) {
                  problems.addAll(e.problems());
                }
              }
            });
    return new Answers(given, values);
  }

  /**
   * Answers with others that win over them, and over what says the same in other words: a route
   * over a length and a rise, and either of those over a route.
   */
  public static Map<JobField, String> over(
      Map<JobField, String> before, Map<JobField, String> winning) {
    Map<JobField, String> answers = new TreeMap<>(before);
    for (JobField given : winning.keySet()) {
      if (given.equals(JobField.ROUTE)) {
        answers.keySet().removeAll(List.of(JobField.LENGTH, JobField.RISE));
      } else if (given.equals(JobField.LENGTH) || given.equals(JobField.RISE)) {
        answers.remove(JobField.ROUTE);
      }
    }
    answers.putAll(winning);
    return answers;
  }

  /** What was typed; the empty text where nothing was. */
  public String text(JobField field) {
    return texts.getOrDefault(field, "");
  }

  /** Whether anything was typed, readable or not. */
  public boolean given(JobField field) {
    return texts.containsKey(field);
  }

  /** What was said; empty where nothing was. */
  @SuppressWarnings("unchecked")
  public // a question's own reader made its value
  <T> Optional<T> said(Question<T> question) {
    return Optional.ofNullable((T) values.get(question));
  }

  /** What was said, or else is usual. */
  public <T> Optional<T> of(Question<T> question) {
    return given(question) ? said(question) : question.usual();
  }

  /** What was said, or else is usual, of a question not known by its type. */
  public Optional<Object> value(JobField field) {
    Question<?> question = (Question<?>) field;
    return of(question).map(Object.class::cast);
  }

  /** A number that was said, or else is usual. */
  public OptionalDouble number(Question<Double> question) {
    return of(question).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
