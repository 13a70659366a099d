package hosewright.interview;

import hosewright.line.JobField;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;

/**
 * One question and when it matters.
 *
 * @param asks the question in plain words
 * @param matters whether it is worth asking, given the answers so far
 * @param needed whether an answer must be given, given the answers so far
 */
record Question(
    JobField field,
    String asks,
    Predicate<Map<JobField, String>> matters,
    Predicate<Map<JobField, String>> needed) {

  static Question of(JobField field, String asks) {
    return new Question(field, asks, answers -> true, answers -> field.required());
  }

  Question when(Predicate<Map<JobField, String>> condition) {
    return new Question(field, asks, condition, needed);
  }

  Question asNeeded() {
    return new Question(field, asks, matters, answers -> true);
  }

  /** Whether an answer was given that holds a word. */
  static Predicate<Map<JobField, String>> says(JobField field, String word) {
    return answers -> answers.getOrDefault(field, "").toLowerCase(Locale.ROOT).contains(word);
  }

  static Predicate<Map<JobField, String>> answered(JobField field) {
    return answers -> answers.containsKey(field);
  }
}
