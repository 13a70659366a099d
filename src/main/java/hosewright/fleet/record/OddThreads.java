package hosewright.fleet.record;

import hosewright.fleet.record.CouplingMap.Pair;
import hosewright.thread.End;
import hosewright.thread.Mating;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Hose whose couplings do not mate with the rest of the fleet's.
 *
 * <p>A pair of couplings is odd when fewer than half of the sections with couplings of its nominal
 * size, itself among them, can be joined to it.
 */
public final class OddThreads {
  private OddThreads() {}

  /**
   * Odd hose.
   *
   * @param ends its two couplings
   * @param sections how many sections have them
   * @param joins how many sections with couplings of the size can be joined to one of them
   * @param ofSize how many sections have couplings of the size
   */
  public record Odd(List<End> ends, int sections, int joins, int ofSize) {}

  /**
   * The odd ones of a fleet.
   *
   * @param sections usable sections by their couplings
   */
  public static List<Odd> among(Map<Pair, Integer> sections) {
    List<Odd> odd = new ArrayList<>();
    sections.forEach(
        (pair, count) -> {
          int joins = 0;
          int ofSize = 0;
          for (Map.Entry<Pair, Integer> other : sections.entrySet()) {
            if (sharesSize(pair, other.getKey())) {
              ofSize += other.getValue();
              joins += joins(pair, other.getKey()) ? other.getValue() : 0;
            }
          }
          if (joins * 2 < ofSize) {
            odd.add(new Odd(List.of(pair.endA(), pair.endB()), count, joins, ofSize));
          }
        });
    return odd;
  }

  private static boolean sharesSize(Pair a, Pair b) {
    return ends(a).stream()
        .anyMatch(end -> ends(b).stream().anyMatch(other -> other.sizeIn() == end.sizeIn()));
  }

  private static boolean joins(Pair a, Pair b) {
    return ends(a).stream()
        .anyMatch(end -> ends(b).stream().anyMatch(other -> Mating.of(end, other).mates()));
  }

  private static List<End> ends(Pair pair) {
    return List.of(pair.endA(), pair.endB());
  }
}
