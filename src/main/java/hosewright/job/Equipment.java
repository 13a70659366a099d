package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.List;

/**
 * How the line is to be laid.
 *
 * @param network where the line starts from several outlets, or feeds several appliances
 * @param accessories item numbers or kinds asked for besides the line
 */
public record Equipment(Network network, Wishes wishes, List<String> accessories) {
  public Equipment {
    accessories = List.copyOf(accessories);
  }

  static Equipment read(Answers answers, List<Problem> problems) {
    Network network = Network.read(answers, problems);
    return new Equipment(
        network, Wishes.read(answers, network), answers.of(JobField.ACCESSORIES).orElse(List.of()));
  }

  Equipment withWishes(Wishes changed) {
    return new Equipment(network, changed, accessories);
  }
}
