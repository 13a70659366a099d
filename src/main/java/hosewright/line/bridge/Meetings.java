package hosewright.line.bridge;

import hosewright.line.assembly.Joining;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How two ends meet, kept by their places: a search asks of the same few ends again and again. */
enum Meetings {
  NOT,
  BY_NAME,
  REMOVABLY,
  FOR_GOOD;

  private static final Map<End, Integer> PLACES = places();

  // Filled as asked. Two threads may both find out how two ends meet, but they find the same.
  private static final Meetings[] KNOWN = new Meetings[PLACES.size() * PLACES.size()];

  /**
   * An end with its place among those that some table lists.
   *
   * @param place below zero where none does
   */
  record Listed(End end, int place) {
    static Listed of(End end) {
      return new Listed(end, PLACES.getOrDefault(end, -1));
    }
  }

  private static Map<End, Integer> places() {
    Map<End, Integer> places = new HashMap<>();
    List<End> ends = Families.ends();
    for (End end : ends) {
      places.put(end, places.size());
    }
    return places;
  }

  static Meetings of(Listed open, Listed next) {
    if (open.place() < 0 || next.place() < 0) {
      return judged(open.end(), next.end());
    }
    int pair = open.place() * PLACES.size() + next.place();
    Meetings known = KNOWN[pair];
    if (known == null) {
      known = judged(open.end(), next.end());
      KNOWN[pair] = known;
    }
    return known;
  }

  private static Meetings judged(End open, End next) {
    Verdict verdict = Mating.of(open, next);
    if (verdict.mates()) {
      return verdict.removable() ? REMOVABLY : FOR_GOOD;
    }
    return Joining.byName(open, next) ? BY_NAME : NOT;
  }

  /**
   * Whether a chain may have such a joint.
   *
   * @param byName whether two halves of one name do that are still to be measured
   * @param permanent whether one does that is not meant to come apart
   */
  boolean allowed(boolean byName, boolean permanent) {
    return this == REMOVABLY || this == FOR_GOOD && permanent || this == BY_NAME && byName;
  }
}
