package hosewright.job.question;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * How a person is asked.
 *
 * @param question in plain words; empty where the meaning serves
 * @param ever whether it is asked at all, rather than only ever said unasked
 * @param last whether it is asked when all else is known
 * @param matters whether it is worth asking, given the answers so far
 * @param needed whether an answer must be given, given the answers so far
 */
public record Asking(
    String question,
    boolean ever,
    boolean last,
    Predicate<Map<JobField, String>> matters,
    Predicate<Map<JobField, String>> needed) {

  static Asking never() {
    return new Asking("", false, false, answers -> false, answers -> false);
  }

  static Asking always(String question) {
    return new Asking(question, true, false, answers -> true, answers -> false);
  }

  Asking atLast() {
    return new Asking(question, ever, true, matters, needed);
  }

  Asking where(Predicate<Map<JobField, String>> condition) {
    return new Asking(question, ever, last, condition, needed);
  }

  Asking neededWhere(Predicate<Map<JobField, String>> condition) {
    return new Asking(question, ever, last, matters, condition);
  }

  /** Whether an answer was given that holds a word. */
  static Predicate<Map<JobField, String>> says(JobField field, String word) {
    return answers -> answers.getOrDefault(field, "").toLowerCase(Locale.ROOT).contains(word);
  }

  static Predicate<Map<JobField, String>> answered(JobField field) {
    return answers -> answers.containsKey(field);
  }
}
