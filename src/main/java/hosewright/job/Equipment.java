package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * How the line is to be laid.
 *
 * @param network where the line starts from several outlets, or feeds several appliances
 * @param accessories item numbers or kinds asked for besides the line, by name or by the notes of
 *     its route
 */
public record Equipment(Network network, Wishes wishes, List<String> accessories) {
  public Equipment {
    accessories = List.copyOf(accessories);
  }

  static Equipment read(Answers answers, List<Problem> problems) {
    Network network = Network.read(answers, problems);
    List<String> accessories = new ArrayList<>(answers.of(JobField.ACCESSORIES).orElse(List.of()));
    double slack = answers.of(JobField.SLACK).orElse(0.0);
    double behindFt = network.attack().map(Network.Attack::lengthFt).orElse(0.0);
    answers
        .of(JobField.ROUTE)
        .map(way -> RouteNotes.goods(way, slack, way.lengthFt() - behindFt, problems))
        .ifPresent(accessories::addAll);
    return new Equipment(network, Wishes.read(answers, network), accessories);
  }

  Equipment wanting(List<String> other) {
    return new Equipment(network, wishes, other);
  }

  Equipment withWishes(Wishes changed) {
    return new Equipment(network, changed, accessories);
  }
}
