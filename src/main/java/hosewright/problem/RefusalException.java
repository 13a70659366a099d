package hosewright.problem;

import java.util.List;

/**
 * Why what was asked is not done, in words for the one who asked; no fault of the program.
 *
 * <p>The kinds are told apart by what that person does next.
 */
public abstract sealed class RefusalException extends RuntimeException
    permits BadInputException, NoSuchThingException, ConflictException, TroubleException {
  private static final long serialVersionUID = 1L;

  private final Kind kind;
  private final transient List<Problem> problems;

  RefusalException(Kind kind, String sentences, List<Problem> problems) {
    super(sentences);
    this.kind = kind;
    this.problems = List.copyOf(problems);
  }

  /** What is to be done next. */
  public enum Kind {
    /** Give something else: what was given is wrong whatever stands in the books. */
    BAD_INPUT,
    /** Name another: it is named as it should be, but nothing of that name is there. */
    NO_SUCH_THING,
    /**
     * Look again, or do something else first, since of what is named the books say otherwise.
     * Nothing outside is broken; that would be {@link #TROUBLE}.
     */
    CONFLICT,
    /** Mend a disk, a server or a file, or wait for it; what was asked may be asked again then. */
    TROUBLE
  }

  public Kind kind() {
    return kind;
  }

  /** What stands in the way, each with the values a program would look for. */
  public List<Problem> problems() {
    return problems;
  }

  static String asSentence(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }
}
