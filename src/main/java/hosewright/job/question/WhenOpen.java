package hosewright.job.question;

import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What holds where a question is left open.
 *
 * @param usual the answer taken, as it could be typed; empty for none
 * @param said what help says is taken; may be empty
 * @param assumption what is then taken for granted, in plain words; may be empty
 * @param applies whether that is so, given the other answers
 */
public record WhenOpen(
    Optional<String> usual,
    String said,
    String assumption,
    Predicate<Map<JobField, String>> applies) {

  static WhenOpen nothing() {
    return new WhenOpen(Optional.empty(), "", "", answers -> true);
  }

  WhenOpen taking(String answer, String words) {
    return new WhenOpen(Optional.of(answer), words, assumption, applies);
  }

  WhenOpen saying(String words) {
    return new WhenOpen(usual, words, assumption, applies);
  }

  WhenOpen assuming(String sentence, Predicate<Map<JobField, String>> where) {
    return new WhenOpen(usual, said, sentence.replace("{}", usual.orElse("")), where);
  }
}
