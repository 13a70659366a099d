package hosewright.command;

import hosewright.line.JobField;
import hosewright.line.JobForm;
import hosewright.problem.Problem;
import hosewright.shell.Asker;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Asks a person for a job, one question at a time. A question mark explains the question, a
 * less-than sign goes back, an empty answer leaves an optional question open.
 */
final class Interview {
  private static final List<JobField> QUESTIONS =
      List.of(
          JobField.FROM,
          JobField.TO,
          JobField.LENGTH,
          JobField.RISE,
          JobField.FLOW,
          JobField.NEED,
          JobField.SOURCE_PRESSURE,
          JobField.USE,
          JobField.SIZE,
          JobField.ACCESSORIES);

  private final Asker asker;
  private final Map<JobField, String> answers = new EnumMap<>(JobField.class);

  Interview(Asker asker) {
    this.asker = asker;
  }

  /**
   * The answers.
   *
   * @return empty when the person broke off
   */
  Optional<Map<JobField, String>> answers() {
    int question = 0;
    String said = "? explains, < goes back, Ctrl-C stops.\n";
    while (question < QUESTIONS.size()) {
      JobField field = QUESTIONS.get(question);
      Optional<String> answer = asker.ask(said + prompt(field), candidates(field));
      said = "";
      if (answer.isEmpty()) {
        return Optional.empty();
      }
      String text = answer.get().strip();
      if (text.equals("?")) {
        said = "  " + field.meaning() + ", such as " + field.example() + ".\n";
      } else if (text.equals("<")) {
        question = Math.max(0, question - 1);
      } else if (text.isEmpty() && answers.containsKey(field)) {
        question++;
      } else if (text.isEmpty() && field.required()) {
        said = "  This one is needed: such as " + field.example() + ".\n";
      } else if (text.isEmpty()) {
        question++;
      } else {
        List<Problem> problems = JobForm.problemsOf(field, text);
        if (problems.isEmpty()) {
          answers.put(field, text);
          question++;
        } else {
          said = "  " + problems.get(0).sentence() + "\n";
        }
      }
    }
    return Optional.of(answers);
  }

  private String prompt(JobField field) {
    String before = answers.getOrDefault(field, "");
    return field.word()
        + (field.required() ? "" : " (may be left empty)")
        + (before.isEmpty() ? "" : " [was " + before + "]")
        + ": ";
  }

  private static List<String> candidates(JobField field) {
    return switch (field) {
      case FROM, TO -> JointCheckCommand.ends();
      case USE -> List.of("fire", "water", "drinking");
      default -> List.of(field.example());
    };
  }
}
