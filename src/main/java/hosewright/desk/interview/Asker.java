package hosewright.desk.interview;

import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;

/** Puts questions to a person at a terminal; what is answered never enters the command history. */
public interface Asker {

  /**
   * Whatever is typed; {@link #answer} is what to ask with.
   *
   * @param prompt shown before the cursor
   * @param candidates offered on the tab key
   * @return what was typed, trimmed; empty when the person pressed Ctrl-C or Ctrl-D
   */
  Optional<String> ask(String prompt, List<String> candidates);

  /** One answer, asked for again until it is text that may be kept. */
  default Optional<String> answer(String prompt, List<String> candidates) {
    while (true) {
      Optional<String> given = ask(prompt, candidates);
      Optional<Problem> refusal = given.flatMap(text -> PlainText.refusal("the answer", text));
      if (refusal.isEmpty()) {
        return given;
      }
      say("  " + refusal.get().sentence());
    }
  }

  /** Tells the person something, wrapped to the screen; what is indented stays so. */
  void say(String text);
}
