package hosewright.problem;

import java.util.List;

/** What was named stands otherwise than the step needs it. */
public final class ConflictException extends RefusalException {
  private static final long serialVersionUID = 1L;

  private final Why why;

  private ConflictException(Why why, String thing, String named, String standing) {
    this(why, Problem.of(thing, named, standing));
  }

  private ConflictException(Why why, Problem problem) {
    super(
        Kind.CONFLICT,
        asSentence((problem.field() + " " + problem.value()).strip() + " " + problem.allowed()),
        List.of(problem));
    this.why = why;
  }

  /** Which of the two a conflict is. */
  public enum Why {
    /** Another changed it since it was read: read it again. */
    SOMEBODY_WAS_FIRST,
    /** It is in a state in which the step is not taken: do something else first. */
    STATE_FORBIDS
  }

  /**
   * Somebody else changed it since it was read.
   *
   * @param what what became of it, as it follows its name: "was revised meanwhile"
   */
  public static ConflictException somebodyWasFirst(String thing, String named, String what) {
    return new ConflictException(
        Why.SOMEBODY_WAS_FIRST, thing, named, what + ": look at it again first");
  }

  /**
   * Its state forbids the step.
   *
   * @param state how it stands, as it follows its name: "is cancelled"
   * @param first what to do first or instead
   */
  public static ConflictException stateForbids(
      String thing, String named, String state, String first) {
    return new ConflictException(Why.STATE_FORBIDS, thing, named, state + ": " + first);
  }

  public Why why() {
    return why;
  }
}
