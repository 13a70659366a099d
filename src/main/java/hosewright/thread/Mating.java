package hosewright.thread;

import hosewright.csv.PlainNumber;
import hosewright.csv.ReferenceTable;
import hosewright.thread.JointRule.Pair;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * The mating law: what happens when two ends are put together.
 *
 * <p>Driven by {@code joint-rules.csv}, first row that fits. Total: every pair has a verdict.
 * Symmetric: the order of the two ends does not matter. Whether a joint can be made up when neither
 * part is free to turn is left to whoever lays the line.
 */
public final class Mating {
  private static final List<JointRule> RULES =
      ReferenceTable.rows("threads/joint-rules.csv", JointRule::of);
  private static final List<End> ENDS = Families.ends();
  private static final Map<End, Integer> PLACES = places();

  // Filled as asked. Two threads may both work out a verdict, but they work out equal ones.
  private static final Verdict[] KNOWN = new Verdict[ENDS.size() * ENDS.size()];

  private Mating() {}

  /** The verdict on two ends, in either order. */
  public static Verdict of(End a, End b) {
    Integer placeA = PLACES.get(a);
    Integer placeB = PLACES.get(b);
    if (placeA == null || placeB == null) {
      return unlisted(
          Stream.of(a, b).filter(e -> !PLACES.containsKey(e)).map(End::toString).sorted().toList());
    }
    int place = Math.min(placeA, placeB) * ENDS.size() + Math.max(placeA, placeB);
    Verdict known = KNOWN[place];
    if (known == null) {
      known = judge(ENDS.get(Math.min(placeA, placeB)), ENDS.get(Math.max(placeA, placeB)));
      KNOWN[place] = known;
    }
    return known;
  }

  /**
   * Whether the two are the two halves of one named joint, even where no figures are held for it: a
   * plan may then go by name, and must say that both are to be measured.
   */
  public static boolean sameByName(End a, End b) {
    return a.sizeIn() == b.sizeIn() && a.family().equals(b.family()) && joined(a, b);
  }

  private static boolean joined(End a, End b) {
    String role = pair(a, b).role();
    return role.equals("joined") || role.equals("sexless");
  }

  private static Verdict judge(End a, End b) {
    Pair pair = pair(a, b);
    Verdict said = RULES.stream().filter(r -> r.speaksOf(pair)).findFirst().orElseThrow().verdict();
    return new Verdict(
        said.outcome(),
        said.seal(),
        said.removable(),
        said.engagement(),
        said.reason()
            .replace("{male}", pair.male().toString())
            .replace("{female}", pair.female().toString())
            .replace("{size}", PlainNumber.of(pair.male().sizeIn()))
            .replace("{family}", pair.male().family()),
        said.source());
  }

  private static Pair pair(End a, End b) {
    boolean bEnters = b.gender() == Gender.MALE || b.gender() == Gender.PLUG;
    boolean aEnters = a.gender() == Gender.MALE || a.gender() == Gender.PLUG;
    return bEnters && !aEnters ? new Pair(b, a) : new Pair(a, b);
  }

  private static Verdict unlisted(List<String> ends) {
    return new Verdict(
        Verdict.Outcome.MEASURE,
        Verdict.Seal.NONE,
        false,
        "",
        "No table lists " + String.join(" or ", ends) + ": measure it.",
        "common practice, no source");
  }

  private static Map<End, Integer> places() {
    Map<End, Integer> places = new HashMap<>();
    for (End end : ENDS) {
      places.put(end, places.size());
    }
    return places;
  }
}
