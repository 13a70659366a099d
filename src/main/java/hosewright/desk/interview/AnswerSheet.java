package hosewright.desk.interview;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.job.question.Questions;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What was answered so far, what was left open, and in which order it was asked. */
final class AnswerSheet {
  private final Questions questions;
  private final Map<JobField, String> answers = new TreeMap<>();
  private final Set<JobField> open = new HashSet<>();
  private final List<JobField> order = new ArrayList<>();

  AnswerSheet(Questions questions) {
    this.questions = questions;
  }

  Map<JobField, String> answers() {
    return new TreeMap<>(answers);
  }

  Optional<String> answer(JobField field) {
    return Optional.ofNullable(answers.get(field));
  }

  /** The answers as they would stand with one more. */
  Map<JobField, String> with(JobField field, String answer) {
    return Answers.over(answers, Map.of(field, answer));
  }

  void put(JobField field, String answer) {
    Map<JobField, String> now = with(field, answer);
    answers.clear();
    answers.putAll(now);
    open.remove(field);
    asked(field);
  }

  void leaveOpen(JobField field) {
    answers.remove(field);
    open.add(field);
    asked(field);
  }

  /** Notes that a question was asked, where it was not before: going back keeps the order. */
  void asked(JobField field) {
    if (!order.contains(field)) {
      order.add(field);
    }
  }

  /** The question that was asked before this one; empty for the first. */
  Optional<JobField> before(JobField field) {
    int at = order.contains(field) ? order.indexOf(field) : order.size();
    return at == 0 ? Optional.empty() : Optional.of(order.get(at - 1));
  }

  /** The question asked last; empty where none was. */
  Optional<JobField> last() {
    return order.isEmpty() ? Optional.empty() : Optional.of(order.get(order.size() - 1));
  }

  /** What is to be asked next; empty once no question that matters is open. */
  Optional<JobField> next() {
    return questions.next(answers, open);
  }

  boolean needs(JobField field) {
    return questions.needed(field, answers);
  }

  /** Whether all is there that a plan takes. */
  boolean isWhole(Map<JobField, String> of) {
    return JobField.values().stream()
        .noneMatch(
            field ->
                (field.required(of) || field.asking().needed().test(of)) && !of.containsKey(field));
  }
}
