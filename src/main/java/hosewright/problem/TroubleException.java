package hosewright.problem;

import java.util.List;

/** A disk, a server or a file the program needs is not as it should be. */
public non-sealed class TroubleException extends RefusalException {
  private static final long serialVersionUID = 1L;

  private final Kept kept;

  /**
   * @param thing what cannot be used: a store, a database
   * @param named which
   * @param what what is the matter and what would help
   */
  public TroubleException(String thing, String named, String what, Kept kept) {
    this(Problem.of(thing, named, what), kept);
  }

  private TroubleException(Problem problem, Kept kept) {
    super(
        Kind.TROUBLE,
        "The %s cannot be used: %s (%s). %s"
            .formatted(problem.field(), problem.allowed(), problem.value(), kept.sentence),
        List.of(problem));
    this.kept = kept;
  }

  /** What became of the step that met with it. */
  public enum Kept {
    NOTHING("Nothing was kept."),
    /** Word was lost on the way back. */
    MAYBE("Whether the last step was kept is not known: look before you repeat it.");

    private final String sentence;

    Kept(String sentence) {
      this.sentence = sentence;
    }
  }

  public final Kept kept() {
    return kept;
  }
}
