package hosewright.line;

import java.util.List;

/**
 * One way to fill a part of a frame, with the least it can cost in any plan.
 *
 * @param <T> a lay, or the parts of a bridge
 */
record Choice<T>(T value, double leastCost) {

  /** Least cost of a list of choices that is sorted cheapest first. */
  static <T> double least(List<Choice<T>> sorted) {
    return sorted.get(0).leastCost();
  }
}
