package hosewright.job;

import static hosewright.job.question.JobField.ATTACK_LENGTH;
import static hosewright.job.question.JobField.ATTACK_LINES;
import static hosewright.job.question.JobField.ATTACK_SIZE;
import static hosewright.job.question.JobField.FRICTION_COEFFICIENT;
import static hosewright.job.question.JobField.LINES;
import static hosewright.job.question.JobField.OUTLETS;
import static hosewright.job.question.JobField.OWNED;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;

/**
 * How a line is more than one source and one appliance.
 *
 * @param outlets like outlets of the source that a line starts from each, to be joined by a siamese
 *     at the appliance; 1 where one line starts from one
 * @param attack lines of their own behind a wye at the end of the run
 */
public record Network(int outlets, Optional<Attack> attack) {
  public static final Network ONE_LINE = new Network(1, Optional.empty());

  /**
   * Like lines that start at a wye, each with an appliance of its own.
   *
   * @param lines how many, 2 or more
   * @param lengthFt distance of each from the wye along the ground, ft
   * @param hoseSizesIn nominal hose sizes allowed, in; empty for any
   */
  public record Attack(int lines, double lengthFt, List<Double> hoseSizesIn) {
    public Attack {
      hoseSizesIn = List.copyOf(hoseSizesIn);
    }

    /** Hose to lay in one of them, ft. */
    public double neededFt(double slack) {
      return lengthFt * (1 + slack);
    }
  }

  /** Whether it is anything but one line from one outlet to one appliance. */
  boolean branched() {
    return outlets > 1 || attack.isPresent();
  }

  static Network read(Answers answers, List<Problem> problems) {
    int outlets = answers.of(OUTLETS).orElse(1);
    if (outlets > 1) {
      leaveOut(
          answers,
          List.of(ATTACK_LINES, LINES),
          "with outlets: a line is laid from each",
          problems);
    }
    return new Network(outlets, attack(answers, problems));
  }

  private static Optional<Attack> attack(Answers answers, List<Problem> problems) {
    if (!answers.given(ATTACK_LINES)) {
      leaveOut(
          answers,
          List.of(ATTACK_LENGTH, ATTACK_SIZE),
          "without attack-lines, which says how many",
          problems);
      return Optional.empty();
    }
    leaveOut(answers, List.of(LINES), "with attack-lines: one line feeds their wye", problems);
    leaveOut(
        answers,
        List.of(FRICTION_COEFFICIENT, OWNED),
        "with attack-lines: it would not say which of the two hoses it means",
        problems);
    if (!answers.given(ATTACK_LENGTH)) {
      problems.add(
          new Problem(
              ATTACK_LENGTH.word(),
              "",
              "give " + ATTACK_LENGTH.meaning(),
              ATTACK_LENGTH.example()));
    }
    double lengthFt = answers.of(ATTACK_LENGTH).orElse(1.0);
    List<Double> sizesIn = answers.of(ATTACK_SIZE).orElse(List.of());
    return answers.of(ATTACK_LINES).map(count -> new Attack(count, lengthFt, sizesIn));
  }

  private static void leaveOut(
      Answers answers, List<JobField> fields, String when, List<Problem> problems) {
    for (JobField field : fields) {
      if (answers.given(field)) {
        problems.add(new Problem(field.word(), answers.text(field), "left out " + when, ""));
      }
    }
  }
}
