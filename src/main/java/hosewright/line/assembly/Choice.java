package hosewright.line.assembly;

import java.util.List;

/**
 * One way to fill a part of a topology.
 *
 * @param <T> a lay, or the parts of a bridge
 * @param leastCost the least it can cost in any plan, in the currency's major unit
 * @param lossPsi pressure it takes at the job's flow, psi
 * @param ratedPsi lowest pressure that hose or adapters in it may carry, psi; infinite where none
 *     is rated
 */
public record Choice<T>(T value, double leastCost, double lossPsi, double ratedPsi) {

  /** Least cost of a list of choices that is sorted cheapest first. */
  public static <T> double least(List<Choice<T>> sorted) {
    return sorted.get(0).leastCost();
  }
}
