package hosewright.line.goods;

import java.util.Arrays;

/**
 * What is known of pairs of numbers: found once, looked up many millions of times.
 *
 * <p>A map of boxed keys took most of the time of a layout with every size open: the hash of a pair
 * put into a {@code Long} is the same for very many pairs.
 */
final class PairCosts {
  private static final int FIRST_ROOM = 256;

  /** Spreads keys that lie near each other: 2 to the 64 by the golden ratio. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private static final long EMPTY = -1;

  private long[] pairs = filled(FIRST_ROOM);
  private double[] costs = new double[FIRST_ROOM];
  private int size;

  /** What is known of a pair of numbers from 0 on; not a number where nothing is. */
  double of(int one, int other) {
    int at = place(pairs, pair(one, other));
    return pairs[at] == EMPTY ? Double.NaN : costs[at];
  }

  void put(int one, int other, double cost) {
    if (2 * ++size > pairs.length) {
      grow();
    }
    int at = place(pairs, pair(one, other));
    pairs[at] = pair(one, other);
    costs[at] = cost;
  }

  private void grow() {
    long[] more = filled(2 * pairs.length);
    double[] moved = new double[more.length];
    for (int i = 0; i < pairs.length; i++) {
      if (pairs[i] != EMPTY) {
        int at = place(more, pairs[i]);
        more[at] = pairs[i];
        moved[at] = costs[i];
      }
    }
    pairs = more;
    costs = moved;
  }

  /** Where a pair stands, or would. */
  private static int place(long[] pairs, long pair) {
    int at = (int) (pair * SPREAD >>> Integer.SIZE) & pairs.length - 1;
    while (pairs[at] != pair && pairs[at] != EMPTY) {
      at = at + 1 & pairs.length - 1;
    }
    return at;
  }

  private static long pair(int one, int other) {
    return (long) one << Integer.SIZE | other;
  }

  private static long[] filled(int room) {
    long[] empty = new long[room];
    Arrays.fill(empty, EMPTY);
    return empty;
  }
}
