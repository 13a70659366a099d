package hosewright.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * How many sections of each length make one line, in the order of the hose line's options.
 *
 * @param counts sections of each option
 * @param lengthFt coupled length of all of them, ft
 */
record Lay(List<Integer> counts, double lengthFt) {

  int sections() {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * Every lay that covers a length and from which no section can be spared.
   *
   * <p>A lay with a section to spare costs no less and loses no less pressure than the same lay
   * without it, so leaving those out loses no best plan.
   *
   * @param optionLengthsFt section lengths on offer, longest first
   * @param neededFt length to cover, ft, above zero
   */
  static List<Lay> covering(List<Double> optionLengthsFt, double neededFt) {
    return covering(
        optionLengthsFt, Collections.nCopies(optionLengthsFt.size(), Integer.MAX_VALUE), neededFt);
  }

  /**
   * The same where there are only so many of some lengths.
   *
   * @param most of each length, 0 or more
   */
  static List<Lay> covering(List<Double> optionLengthsFt, List<Integer> most, double neededFt) {
    List<Lay> lays = new ArrayList<>();
    extend(optionLengthsFt, most, neededFt, 0, new int[optionLengthsFt.size()], 0, lays);
    return lays;
  }

  /**
   * The same of so many sections at least: a lay of just so many may hold one that the length alone
   * would not ask for.
   *
   * @param fewest sections, 1 or more
   */
  static List<Lay> covering(
      List<Double> optionLengthsFt, List<Integer> most, double neededFt, int fewest) {
    List<Lay> lays = new ArrayList<>(covering(optionLengthsFt, most, neededFt));
    if (fewest > 1) {
      lays.removeIf(lay -> lay.sections() <= fewest);
      addOfJust(fewest, optionLengthsFt, most, neededFt, new ArrayList<>(), 0, lays);
    }
    return lays;
  }

  private static void addOfJust(
      int sections,
      List<Double> lengthsFt,
      List<Integer> most,
      double neededFt,
      List<Integer> counts,
      double coveredFt,
      List<Lay> lays) {
    int option = counts.size();
    if (option == lengthsFt.size()) {
      if (sections == 0 && coveredFt >= neededFt - 1e-9) {
        lays.add(new Lay(List.copyOf(counts), coveredFt));
      }
      return;
    }
    for (int count = 0; count <= Math.min(sections, most.get(option)); count++) {
      counts.add(count);
      double nowFt = coveredFt + count * lengthsFt.get(option);
      addOfJust(sections - count, lengthsFt, most, neededFt, counts, nowFt, lays);
      counts.remove(option);
    }
  }

  private static void extend(
      List<Double> lengthsFt,
      List<Integer> most,
      double neededFt,
      int option,
      int[] counts,
      double coveredFt,
      List<Lay> lays) {
    double lengthFt = lengthsFt.get(option);
    int enough = sectionsToCover(neededFt - coveredFt, lengthFt);
    boolean last = option == lengthsFt.size() - 1;
    for (int count = last ? enough : 0; count <= Math.min(enough, most.get(option)); count++) {
      counts[option] = count;
      double nowCoveredFt = coveredFt + count * lengthFt;
      if (count == enough) {
        addIfNothingToSpare(lengthsFt, neededFt, counts, nowCoveredFt, lays);
      } else {
        extend(lengthsFt, most, neededFt, option + 1, counts, nowCoveredFt, lays);
      }
    }
    counts[option] = 0;
  }

  /**
   * Sections of a length that cover a distance; a hair over a whole number is rounding, not need.
   */
  private static int sectionsToCover(double distanceFt, double lengthFt) {
    return (int) Math.max(0, Math.ceil(distanceFt / lengthFt - 1e-9));
  }

  private static void addIfNothingToSpare(
      List<Double> lengthsFt, double neededFt, int[] counts, double coveredFt, List<Lay> lays) {
    List<Integer> copy = new ArrayList<>(counts.length);
    double shortestUsedFt = Double.POSITIVE_INFINITY;
    for (int i = 0; i < counts.length; i++) {
      copy.add(counts[i]);
      if (counts[i] > 0) {
        shortestUsedFt = Math.min(shortestUsedFt, lengthsFt.get(i));
      }
    }
    if (coveredFt - shortestUsedFt < neededFt - 1e-9) {
      lays.add(new Lay(List.copyOf(copy), coveredFt));
    }
  }
}
