package hosewright.line.assembly;

import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;

/** What a plan may join: what mates, and the two halves of a thread known by its name alone. */
public final class Joining {
  private Joining() {}

  /** Whether a plan may join two ends; where it goes by name, it must say so. */
  public static boolean allowed(End a, End b) {
    return Mating.of(a, b).mates() || byName(a, b);
  }

  /** Whether the two have one name, but no figures are held that would prove that they mate. */
  public static boolean byName(End a, End b) {
    return Mating.of(a, b).outcome() == Verdict.Outcome.MEASURE && Mating.sameByName(a, b);
  }

  /** Whether a plan may join two ends where the joint has to come apart again. */
  public static boolean allowedRemovable(End a, End b) {
    return Mating.of(a, b).mates() ? Mating.of(a, b).removable() : byName(a, b);
  }
}
