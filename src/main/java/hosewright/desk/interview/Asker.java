package hosewright.desk.interview;

import java.util.List;
import java.util.Optional;

/** Puts questions to a person at a terminal; what is answered never enters the command history. */
public interface Asker {

  /**
   * One answer.
   *
   * @param prompt shown before the cursor
   * @param candidates offered on the tab key
   * @return what was typed, trimmed; empty when the person pressed Ctrl-C or Ctrl-D
   */
  Optional<String> ask(String prompt, List<String> candidates);

  /** Tells the person something, wrapped to the screen; what is indented stays so. */
  void say(String text);
}
