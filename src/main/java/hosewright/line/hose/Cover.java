package hosewright.line.hose;

import hosewright.line.assembly.Lay;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Consumer;

/**
 * The lays that cover a length: every one from which no section can be spared, and every one of
 * just the fewest sections, which may hold one that the length alone would not ask for.
 *
 * <p>A lay with a section to spare costs no less and loses no less pressure than the same lay
 * without it, so leaving those out loses no best plan. (With devices at stations a needless section
 * moves their height on a slope by a little and so may help them; nobody is sold one for that.)
 *
 * @param lengthsFt section lengths on offer, longest first
 * @param most sections of each, 0 or more
 * @param neededFt length to cover, ft, above zero
 * @param fewest sections, 1 or more
 */
public record Cover(List<Double> lengthsFt, List<Integer> most, double neededFt, int fewest) {
  private static final double HAIR_FT = 1e-9;
  private static final double STEPS_PER_FT = 1e6;

  /** More than rounding many sections to whole steps may lose. */
  private static final long ROUNDING_STEPS = 1_000;

  /** Tells that no lay is wanted that begins with given sections. */
  interface Cut {
    /**
     * @param counts sections of each option; those up to {@code option} are chosen
     * @param coveredFt what they cover, ft
     */
    boolean cuts(int[] counts, int option, double coveredFt);
  }

  /** Whether there is any lay. */
  boolean isPossible() {
    double coveredFt = 0;
    long sections = 0;
    for (int i = 0; i < lengthsFt.size(); i++) {
      sections += most.get(i);
      coveredFt += lengthsFt.get(i) * most.get(i);
    }
    return sections >= fewest && covers(coveredFt);
  }

  /** Whether there is a lay of one section. */
  boolean isPossibleWithOne() {
    for (int i = 0; i < lengthsFt.size(); i++) {
      if (fewest == 1 && most.get(i) > 0 && covers(lengthsFt.get(i))) {
        return true;
      }
    }
    return false;
  }

  /** Gives every lay that is not cut, those of many long sections first. */
  void each(Cut cut, Consumer<Lay> taker) {
    choose(new int[lengthsFt.size()], 0, 0, 0, cut, taker);
  }

  private void choose(
      int[] counts, int option, int sections, double coveredFt, Cut cut, Consumer<Lay> taker) {
    if (option == counts.length) {
      if (covers(coveredFt) && (sections == fewest || nothingToSpare(counts, coveredFt))) {
        taker.accept(lay(counts, coveredFt));
      }
      return;
    }
    double lengthFt = lengthsFt.get(option);
    int enough = Math.max(sectionsToCover(neededFt - coveredFt, lengthFt), fewest - sections);
    int fewestOfIt = option == counts.length - 1 ? enough : 0;
    for (int count = Math.min(enough, most.get(option)); count >= fewestOfIt; count--) {
      counts[option] = count;
      double nowFt = coveredFt + count * lengthFt;
      if (!cut.cuts(counts, option, nowFt)) {
        choose(counts, option + 1, sections + count, nowFt, cut, taker);
      }
    }
    counts[option] = 0;
  }

  /**
   * Sections of a length that cover a distance; a hair over a whole number is rounding, not need.
   */
  private static int sectionsToCover(double distanceFt, double lengthFt) {
    return (int) Math.max(0, Math.ceil(distanceFt / lengthFt - HAIR_FT));
  }

  private boolean nothingToSpare(int[] counts, double coveredFt) {
    int sections = 0;
    double shortestUsedFt = 0;
    for (int i = 0; i < counts.length; i++) {
      sections += counts[i];
      if (counts[i] > 0) {
        shortestUsedFt = lengthsFt.get(i);
      }
    }
    return sections > fewest && !covers(coveredFt - shortestUsedFt);
  }

  private boolean covers(double coveredFt) {
    return coveredFt >= neededFt - HAIR_FT;
  }

  private static Lay lay(int[] counts, double coveredFt) {
    List<Integer> sections = new ArrayList<>(counts.length);
    for (int count : counts) {
      sections.add(count);
    }
    return new Lay(List.copyOf(sections), coveredFt);
  }

  /**
   * The least that the sections of any lay add up to; there must be a lay.
   *
   * @param each of one section of each option, zero or more
   */
  public double least(double[] each) {
    CoverFloor floor = new CoverFloor(this, each);
    double[] least = {Double.POSITIVE_INFINITY};
    each(
        (counts, option, coveredFt) -> floor.ofBegun(counts, option, coveredFt) >= least[0],
        lay -> {
          double sum = 0;
          for (int i = 0; i < each.length; i++) {
            sum += each[i] * lay.counts().get(i);
          }
          least[0] = Math.min(least[0], sum);
        });
    return least[0];
  }

  /**
   * No lay is shorter than this, ft, nor the shortest by a thousandth longer; there must be one.
   */
  public double shortestFt() {
    // What can be covered, in millionths of a foot, and with how many sections at the most.
    TreeMap<Long, Integer> reached = new TreeMap<>();
    reached.put(0L, 0);
    long needed = (long) Math.floor(neededFt * STEPS_PER_FT) - ROUNDING_STEPS;
    for (int option = 0; option < lengthsFt.size(); option++) {
      long length = (long) Math.floor(lengthsFt.get(option) * STEPS_PER_FT);
      TreeMap<Long, Integer> further = new TreeMap<>(reached);
      for (var from : reached.entrySet()) {
        long covered = from.getKey();
        int sections = from.getValue();
        for (int i = 0; i < most.get(option) && (covered < needed || sections < fewest); i++) {
          covered += length;
          sections++;
          further.merge(covered, sections, Math::max);
        }
      }
      reached = further;
    }
    return reached.entrySet().stream()
            .filter(lay -> lay.getKey() >= needed && lay.getValue() >= fewest)
            .mapToLong(lay -> lay.getKey())
            .min()
            .orElseThrow()
        / STEPS_PER_FT;
  }
}
