package hosewright.line.hose;

import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Lay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The lays of one leg, cheapest first, found as a search comes to need them, and kept.
 *
 * <p>A long line of many section lengths has millions of lays, of which a search looks at a few: so
 * only those are found whose sections cost less than a limit that rises as dearer ones are asked
 * for.
 */
public final class LegLays {
  /** Cheap lays that are looked at for one as short as any. */
  private static final int MOST_COMPARED = 100;

  private static final Comparator<Choice<Lay>> CHEAPEST_FIRST =
      Comparator.<Choice<Lay>>comparingDouble(Choice::leastCost)
          .thenComparingInt(choice -> choice.value().sections());

  private static final double GROWTH = 1.5;

  /** Far below a cent, far above what adding up many prices may lose. */
  private static final double ROUNDING = 1e-6;

  private final Cover cover;
  private final Cover ofStock;
  private final boolean couples;
  private final double cheapestSection;
  private final CoverFloor leastCost;
  private final CoverFloor leastEmptyLb;
  private final Predicate<Lay> wanted;
  private final Function<Lay, Choice<Lay>> priced;
  private final Predicate<Lay> toBeHad;
  private final DoubleSupplier lossPsi;
  private double leastLossPsi = Double.NaN;

  private boolean inStock;
  private List<Choice<Lay>> found = List.of();
  private double foundUpTo = Double.NEGATIVE_INFINITY;
  private boolean foundAll;

  /**
   * What is to be known of a lay.
   *
   * @param wanted which of the lays that cover the length are meant at all; some must be
   * @param priced what a lay costs, no less than its sections at their least, and loses
   * @param toBeHad whether enough can be had of what a lay is made of
   */
  public record Judge(
      Predicate<Lay> wanted, Function<Lay, Choice<Lay>> priced, Predicate<Lay> toBeHad) {}

  /**
   * @param ofStock the same with no more sections of an option than can be had
   * @param couples whether the sections couple to each other
   * @param emptyLb what one section of each option weighs, lb
   * @param leastEach the least that one section of each option can cost
   * @param lossPsi the least that any lay loses, psi; asked for when first needed
   */
  public LegLays(
      Cover cover,
      Cover ofStock,
      boolean couples,
      double[] emptyLb,
      double[] leastEach,
      Judge judge,
      DoubleSupplier lossPsi) {
    this.cover = cover;
    this.ofStock = ofStock;
    this.couples = couples;
    this.cheapestSection = Arrays.stream(leastEach).filter(each -> each > 0).min().orElse(1);
    this.leastCost = new CoverFloor(cover, leastEach);
    this.leastEmptyLb = new CoverFloor(cover, emptyLb);
    this.wanted = judge.wanted();
    this.priced = judge.priced();
    this.toBeHad = judge.toBeHad();
    this.lossPsi = lossPsi;
    this.inStock = isPossible(ofStock);
  }

  /** Whether there is none: too little hose, or sections that do not couple to each other. */
  public boolean isEmpty() {
    return !isPossible(cover);
  }

  private boolean isPossible(Cover some) {
    return couples ? some.isPossible() : some.isPossibleWithOne();
  }

  /** No lay costs less; known without looking for one. */
  public double bound() {
    return leastCost.ofAll();
  }

  /** The least that any lay loses, psi. */
  public double leastLossPsi() {
    if (Double.isNaN(leastLossPsi)) {
      leastLossPsi = lossPsi.getAsDouble();
    }
    return leastLossPsi;
  }

  /** Whether enough can be had of what some lay is made of; if not, no lay passes. */
  public boolean inStock() {
    cheapest();
    return inStock;
  }

  /** The cheapest of those that can be had, else the cheapest; there must be one. */
  public Choice<Lay> cheapest() {
    return at(0, Double.POSITIVE_INFINITY).orElseThrow();
  }

  public double leastCost() {
    return cheapest().leastCost();
  }

  /** The shortest, and of those that are as short a cheap one; there must be one. */
  public Choice<Lay> shortest() {
    return shortestOf(option -> true).orElseThrow();
  }

  /**
   * The shortest of some options alone, and of those that are as short a cheap one; empty where
   * they do not cover the length.
   */
  public Optional<Choice<Lay>> shortestOf(IntPredicate usable) {
    cheapest();
    List<Choice<Lay>> shorter = new ArrayList<>();
    double[] shortestFt = {Double.POSITIVE_INFINITY};
    each(
        (counts, option, coveredFt) ->
            coveredFt >= shortestFt[0] - ROUNDING || counts[option] > 0 && !usable.test(option),
        lay -> {
          shortestFt[0] = lay.lengthFt();
          shorter.add(priced.apply(lay));
        });
    if (shorter.isEmpty()) {
      return Optional.empty();
    }
    for (int place = 0; place < MOST_COMPARED; place++) {
      Optional<Choice<Lay>> cheap = at(place, Double.POSITIVE_INFINITY);
      if (cheap.isEmpty()) {
        break;
      }
      if (cheap.get().value().lengthFt() <= shortestFt[0] + ROUNDING
          && ofUsable(cheap.get().value(), usable)) {
        return cheap;
      }
    }
    return Optional.of(shorter.get(shorter.size() - 1));
  }

  private static boolean ofUsable(Lay lay, IntPredicate usable) {
    return IntStream.range(0, lay.counts().size())
        .allMatch(option -> lay.counts().get(option) == 0 || usable.test(option));
  }

  /** Of so many of the cheapest the one that is rated highest; there must be one. */
  public Choice<Lay> strongest(int most) {
    Choice<Lay> strongest = cheapest();
    for (int place = 1; place < most; place++) {
      Optional<Choice<Lay>> next = at(place, Double.POSITIVE_INFINITY);
      if (next.isEmpty()) {
        break;
      }
      strongest = next.get().ratedPsi() > strongest.ratedPsi() ? next.get() : strongest;
    }
    return strongest;
  }

  /** The lay in a place of the order; empty where there is none that costs no more than a limit. */
  public Optional<Choice<Lay>> at(int place, double mostCost) {
    while (found.size() <= place && !foundAll && foundUpTo < mostCost) {
      findMore(mostCost);
    }
    return place < found.size() ? Optional.of(found.get(place)) : Optional.empty();
  }

  /**
   * The least of everything that lays have which begin with some sections.
   *
   * @param emptyLb weight of one line, empty, lb
   */
  public record Begun(double cost, int sections, double emptyLb) {}

  /** Gives every lay, in no order of cost, but for those whose beginnings are pointless. */
  public void each(Predicate<Begun> pointless, Consumer<Choice<Lay>> taker) {
    each(
        (counts, option, coveredFt) -> pointless.test(begun(counts, option, coveredFt)),
        lay -> taker.accept(priced.apply(lay)));
  }

  /** The least of everything that any lay has. */
  public Begun begunWithNothing() {
    return begun(new int[cover.lengthsFt().size()], -1, 0);
  }

  private Begun begun(int[] counts, int option, double coveredFt) {
    int more = 0;
    double leftFt = cover.neededFt() - coveredFt;
    if (option + 1 < counts.length && leftFt > 0) {
      more = (int) Math.ceil(leftFt / cover.lengthsFt().get(option + 1) - ROUNDING);
    }
    return new Begun(
        leastCost.ofBegun(counts, option, coveredFt),
        Math.max(cover.fewest(), sections(counts, option) + more),
        leastEmptyLb.ofBegun(counts, option, coveredFt));
  }

  private void each(Cover.Cut cut, Consumer<Lay> taker) {
    (inStock ? ofStock : cover)
        .each(
            (counts, option, coveredFt) ->
                cut.cuts(counts, option, coveredFt) || !couples && sections(counts, option) > 1,
            lay -> {
              if (wanted.test(lay) && (!inStock || toBeHad.test(lay))) {
                taker.accept(lay);
              }
            });
  }

  private void findMore(double mostCost) {
    double gap = Math.max(cheapestSection, (foundUpTo - bound()) * GROWTH);
    find(Math.min(bound() + gap, mostCost));
    if (foundAll && found.isEmpty() && inStock) {
      inStock = false;
      foundAll = false;
      foundUpTo = Double.NEGATIVE_INFINITY;
    }
  }

  /** Finds every lay up to a cost. */
  private void find(double cost) {
    List<Choice<Lay>> lays = new ArrayList<>();
    boolean[] more = new boolean[1];
    each(
        (counts, option, coveredFt) -> {
          boolean tooDear = leastCost.ofBegun(counts, option, coveredFt) > cost + ROUNDING;
          more[0] |= tooDear;
          return tooDear;
        },
        lay -> {
          Choice<Lay> choice = priced.apply(lay);
          if (choice.leastCost() <= cost + ROUNDING) {
            lays.add(choice);
          } else {
            more[0] = true;
          }
        });
    lays.sort(CHEAPEST_FIRST);
    found = List.copyOf(lays);
    foundUpTo = cost;
    foundAll = !more[0];
  }

  private static int sections(int[] counts, int option) {
    int sections = 0;
    for (int i = 0; i <= option; i++) {
      sections += counts[i];
    }
    return sections;
  }
}
