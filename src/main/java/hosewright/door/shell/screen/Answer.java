package hosewright.door.shell.screen;

import java.util.function.Function;

/**
 * What a command answers.
 *
 * @param document what {@code --json} prints, as a record or a map; component names are the JSON
 *     names
 * @param text what a person reads, without a final line end
 * @param exitCode 0 done, 2 something is in trouble, 3 no safe plan
 */
public record Answer(Object document, Function<Screen, String> text, int exitCode) {
  public static final int DONE = 0;
  public static final int OUR_FAULT = 1;
  public static final int REFUSED = 2;
  static final int NO_SAFE_PLAN = 3;

  public static Answer of(Object document, Function<Screen, String> text) {
    return new Answer(document, text, DONE);
  }

  /** The same with one more sentence below. */
  public Answer with(String sentence) {
    return new Answer(document, screen -> text.apply(screen) + "\n\n" + sentence, exitCode);
  }

  public static Answer of(Object document, String text) {
    return of(document, screen -> text);
  }

  /** An answer that is there, but part of which failed through our fault. */
  public static Answer partlyFailed(Object document, Function<Screen, String> text) {
    return new Answer(document, text, OUR_FAULT);
  }

  /** An answer that is there, and says that something outside is not as it should be. */
  public static Answer trouble(Object document, Function<Screen, String> text) {
    return new Answer(document, text, REFUSED);
  }

  /** An answer that shows why there is no safe plan: still printed, and the exit code says so. */
  public static Answer noSafePlan(Object document, Function<Screen, String> text) {
    return new Answer(document, text, NO_SAFE_PLAN);
  }
}
