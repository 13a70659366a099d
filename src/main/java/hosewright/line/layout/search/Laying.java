package hosewright.line.layout.search;

import hosewright.line.search.LegWays;
import hosewright.line.search.LegWays.Wanted;
import hosewright.line.search.LegWays.Way;
import java.util.List;

/** The ways to lay a leg, or legs that meet again, between two ends. */
interface Laying {

  /**
   * No way adds less to the sum of least prices and of what its pressure is worth; infinite where
   * nothing can be laid so.
   *
   * @param eachPsi what each psi that it takes is worth, in the currency's major unit
   */
  double leastCost(double eachPsi);

  /** Every way worth laying that is wanted. */
  List<Way> all(Wanted wanted);

  /** A few ways quickly. */
  List<Way> few();

  /** Ways looked at. */
  int looked();

  static Laying of(LegWays one) {
    return new Laying() {
      @Override
      public double leastCost(double eachPsi) {
        return one.leastCost(eachPsi);
      }

      @Override
      public List<Way> all(Wanted wanted) {
        return one.all(wanted);
      }

      @Override
      public List<Way> few() {
        return one.few();
      }

      @Override
      public int looked() {
        return one.looked();
      }
    };
  }
}
