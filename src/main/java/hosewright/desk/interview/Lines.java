package hosewright.desk.interview;

import hosewright.job.question.Glossary;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is said to a person and heard from them, whatever the question. */
final class Lines {
  private Lines() {}

  /**
   * What was typed, without blanks around it.
   *
   * @throws Interview.BrokenOff when the person pressed Ctrl-C
   */
  static String ask(Asker asker, String prompt, List<String> candidates)
      throws Interview.BrokenOff {
    return asker
        .answer(prompt, candidates)
        .map(String::strip)
        .orElseThrow(Interview.BrokenOff::new);
  }

  /** What the tab key offers to a question. */
  static List<String> candidates(JobField field, List<Choice> offered) {
    return offered.isEmpty()
        ? List.of(field.example())
        : offered.stream().map(Choice::answer).toList();
  }

  /** A question of the job, a word of the trade, or both where one word is both. */
  static String explained(String word) {
    Optional<JobField> field = JobField.of(word.strip().toLowerCase(Locale.ROOT));
    if (field.isEmpty()) {
      return Glossary.explain(word);
    }
    String asked =
        field.get().word() + ": " + field.get().meaning() + ", such as " + field.get().example();
    return Glossary.meaning(word).map(meaning -> asked + ". " + meaning).orElse(asked + ".");
  }

  /** The problems of one field. */
  static List<Problem> about(JobField field, List<Problem> problems) {
    return problems.stream().filter(problem -> problem.field().equals(field.word())).toList();
  }
}
