package hosewright.job.question;

import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * How a person is asked.
 *
 * @param question in plain words; empty for what is only ever given unasked
 * @param last whether it is asked when all else is known
 * @param matters whether it is worth asking, given the answers so far
 * @param needed whether an answer must be given, given the answers so far
 */
public record Asking(
    String question,
    boolean last,
    Predicate<Map<JobField, String>> matters,
    Predicate<Map<JobField, String>> needed) {

  static Asking never() {
    return new Asking("", false, answers -> false, answers -> false);
  }

  static Asking always(String question) {
    return new Asking(question, false, answers -> true, answers -> false);
  }

  Asking atLast() {
    return new Asking(question, true, matters, needed);
  }

  Asking where(Predicate<Map<JobField, String>> condition) {
    return new Asking(question, last, condition, needed);
  }

  Asking neededWhere(Predicate<Map<JobField, String>> condition) {
    return new Asking(question, last, matters, condition);
  }

  /** Whether an answer was given that holds a word. */
  static Predicate<Map<JobField, String>> says(JobField field, String word) {
    return answers -> answers.getOrDefault(field, "").toLowerCase(Locale.ROOT).contains(word);
  }

  static Predicate<Map<JobField, String>> answered(JobField field) {
    return answers -> answers.containsKey(field);
  }
}
