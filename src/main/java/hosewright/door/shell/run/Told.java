package hosewright.door.shell.run;

import hosewright.door.shell.screen.Answer;
import hosewright.problem.RefusalException;

/**
 * How a failure is told to another program.
 *
 * @param kind the word for it in the document of {@code --json}
 */
record Told(String kind, int exitCode) {
  static final Told OUR_FAULT = new Told("our_fault", Answer.OUR_FAULT);

  static Told of(RefusalException.Kind kind) {
    return switch (kind) {
      case BAD_INPUT -> new Told("bad_input", Answer.REFUSED);
      case NO_SUCH_THING -> new Told("no_such_thing", Answer.REFUSED);
      case CONFLICT -> new Told("conflict", Answer.REFUSED);
      case TROUBLE -> new Told("trouble", Answer.REFUSED);
    };
  }
}
