package hosewright.fleet.record;

import hosewright.thread.End;
import hosewright.thread.Mating;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which apparatus cannot be coupled to which hydrants with the hose it carries and no adapter.
 *
 * <p>An apparatus can when one of its intakes mates with the hydrant, or when some line of its own
 * hose leads from the hydrant's outlet to an intake with every joint mating. Hydrants with the same
 * outlets are taken together.
 */
public final class CouplingMap {
  private CouplingMap() {}

  /**
   * An apparatus and the hydrants it cannot be coupled to.
   *
   * @param apparatus its id
   * @param intakes the ends it takes water by
   * @param hydrantEnds every outlet of those hydrants
   * @param hydrants how many they are
   * @param example one of them
   * @param reason in one sentence
   */
  public record Gap(
      String apparatus,
      List<End> intakes,
      List<End> hydrantEnds,
      int hydrants,
      String example,
      String reason) {}

  /** The two ends of a section. */
  public record Pair(End endA, End endB) {}

  /**
   * The gaps of an agency.
   *
   * @param carried the end pairs of the usable hose of each apparatus, by its id
   */
  public static List<Gap> gaps(Collection<Outlet> outlets, Map<String, Set<Pair>> carried) {
    Map<String, List<End>> intakes = ends(outlets, Outlet.Kind.INTAKE);
    Map<List<End>, List<String>> hydrants = new LinkedHashMap<>();
    ends(outlets, Outlet.Kind.HYDRANT)
        .forEach(
            (hydrant, ends) ->
                hydrants.computeIfAbsent(ends, key -> new ArrayList<>()).add(hydrant));
    List<Gap> gaps = new ArrayList<>();
    intakes.forEach(
        (apparatus, own) -> {
          Set<Pair> hose = carried.getOrDefault(apparatus, Set.of());
          hydrants.forEach(
              (ends, ids) -> {
                if (ends.stream().noneMatch(outlet -> reaches(outlet, own, hose))) {
                  gaps.add(
                      new Gap(apparatus, own, ends, ids.size(), ids.get(0), reason(ends, hose)));
                }
              });
        });
    return gaps;
  }

  private static Map<String, List<End>> ends(Collection<Outlet> outlets, Outlet.Kind kind) {
    Map<String, Set<String>> words = new TreeMap<>();
    Map<String, End> byWord = new LinkedHashMap<>();
    for (Outlet outlet : outlets) {
      if (outlet.kind() == kind) {
        words.computeIfAbsent(outlet.id(), id -> new TreeSet<>()).add(outlet.end().toString());
        byWord.put(outlet.end().toString(), outlet.end());
      }
    }
    Map<String, List<End>> ends = new LinkedHashMap<>();
    words.forEach((id, written) -> ends.put(id, written.stream().map(byWord::get).toList()));
    return ends;
  }

  /** Walks every line the hose can form. */
  private static boolean reaches(End outlet, List<End> intakes, Set<Pair> hose) {
    Set<End> seen = new LinkedHashSet<>();
    Deque<End> open = new ArrayDeque<>(List.of(outlet));
    while (!open.isEmpty()) {
      End end = open.remove();
      if (!seen.add(end)) {
        continue;
      }
      if (intakes.stream().anyMatch(intake -> Mating.of(end, intake).mates())) {
        return true;
      }
      for (Pair pair : hose) {
        if (Mating.of(end, pair.endA()).mates()) {
          open.add(pair.endB());
        }
        if (Mating.of(end, pair.endB()).mates()) {
          open.add(pair.endA());
        }
      }
    }
    return false;
  }

  private static String reason(List<End> hydrantEnds, Set<Pair> hose) {
    Set<End> couplings = new HashSet<>();
    hose.forEach(pair -> couplings.addAll(List.of(pair.endA(), pair.endB())));
    boolean taken =
        hydrantEnds.stream()
            .anyMatch(end -> couplings.stream().anyMatch(c -> Mating.of(end, c).mates()));
    if (hose.isEmpty()) {
      return "it carries no hose on record, and no intake mates with the hydrant";
    }
    return taken
        ? "its hose goes on the hydrant but not on its own intake"
        : "none of its hose goes on the hydrant";
  }
}
