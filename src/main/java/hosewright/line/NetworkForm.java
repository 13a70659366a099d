package hosewright.line;

import static hosewright.line.JobField.ATTACK_LENGTH;
import static hosewright.line.JobField.ATTACK_LINES;
import static hosewright.line.JobField.ATTACK_SIZE;
import static hosewright.line.JobField.FRICTION_COEFFICIENT;
import static hosewright.line.JobField.LINES;
import static hosewright.line.JobField.OUTLETS;
import static hosewright.line.JobField.OWNED;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Reads how the line divides: attack lines behind a wye, or lines from several outlets. */
final class NetworkForm {
  private final Function<JobField, Optional<String>> answers;
  private final List<Problem> problems;

  NetworkForm(Function<JobField, Optional<String>> answers, List<Problem> problems) {
    this.answers = answers;
    this.problems = problems;
  }

  Job.Network network() {
    int outlets = count(OUTLETS, 1).orElse(1);
    if (outlets > 1) {
      leaveOut(List.of(ATTACK_LINES, LINES), "with outlets: a line is laid from each");
    }
    return new Job.Network(outlets, attack());
  }

  private Optional<Job.Attack> attack() {
    Optional<Integer> lines = count(ATTACK_LINES, 2);
    if (answers.apply(ATTACK_LINES).isEmpty()) {
      leaveOut(List.of(ATTACK_LENGTH, ATTACK_SIZE), "without attack-lines, which says how many");
      return Optional.empty();
    }
    leaveOut(List.of(LINES), "with attack-lines: one line feeds their wye");
    leaveOut(
        List.of(FRICTION_COEFFICIENT, OWNED),
        "with attack-lines: it would not say which of the two hoses it means");
    Optional<String> length = answers.apply(ATTACK_LENGTH);
    if (length.isEmpty()) {
      problems.add(
          new Problem(
              ATTACK_LENGTH.word(),
              "",
              "give " + ATTACK_LENGTH.meaning(),
              ATTACK_LENGTH.example()));
    }
    try {
      List<Double> sizesIn =
          answers
              .apply(ATTACK_SIZE)
              .map(text -> JobForm.sizes(ATTACK_SIZE.word(), text))
              .orElse(List.of());
      double lengthFt =
          length.map(text -> Measures.lengthFt(ATTACK_LENGTH.word(), text)).orElse(1.0);
      return lines.map(count -> new Job.Attack(count, lengthFt, sizesIn));
    } catch (BadInputException e) {
      problems.addAll(e.problems());
      return Optional.empty();
    }
  }

  private Optional<Integer> count(JobField field, int least) {
    Optional<String> text = answers.apply(field);
    if (text.isPresent() && !text.get().matches("[" + least + "-3]")) {
      problems.add(new Problem(field.word(), text.get(), least == 1 ? "1, 2 or 3" : "2 or 3", "2"));
      return Optional.empty();
    }
    return text.map(Integer::parseInt);
  }

  private void leaveOut(List<JobField> fields, String when) {
    for (JobField field : fields) {
      answers
          .apply(field)
          .ifPresent(text -> problems.add(new Problem(field.word(), text, "left out " + when, "")));
    }
  }
}
