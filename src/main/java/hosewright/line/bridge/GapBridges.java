package hosewright.line.bridge;

import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Choice;
import hosewright.line.assembly.Placed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/** The bridges over one gap, fetched as a search comes to need them, and kept. */
public final class GapBridges {
  private static final Comparator<Choice<List<Placed>>> CHEAPEST_FIRST =
      Comparator.<Choice<List<Placed>>>comparingDouble(Choice::leastCost)
          .thenComparingInt(choice -> choice.value().size());

  private final boolean sold;
  private final double leastCost;
  private final double leastLossPsi;
  private final Supplier<Iterator<Bridge>> cheapestFirst;
  private final Supplier<Bridge> widest;
  private final Function<Bridge, Choice<List<Placed>>> priced;
  private final List<Choice<List<Placed>>> fetched = new ArrayList<>();
  private Iterator<Bridge> rest;

  /**
   * @param sold whether they are made of what the catalogue has; if not, a part is to be sourced
   * @param leastCost cost of the cheapest bridge
   * @param leastLossPsi the least that any bridge takes, psi
   * @param cheapestFirst every bridge there is, at least one; asked for when the first is needed
   * @param widest the one that takes least
   * @param priced tells what a bridge costs and takes
   */
  public GapBridges(
      boolean sold,
      double leastCost,
      double leastLossPsi,
      Supplier<Iterator<Bridge>> cheapestFirst,
      Supplier<Bridge> widest,
      Function<Bridge, Choice<List<Placed>>> priced) {
    this.sold = sold;
    this.leastCost = leastCost;
    this.leastLossPsi = leastLossPsi;
    this.cheapestFirst = cheapestFirst;
    this.widest = widest;
    this.priced = priced;
  }

  /** Whether the catalogue has what they are made of. */
  public boolean isSold() {
    return sold;
  }

  public double leastCost() {
    return leastCost;
  }

  public double leastLossPsi() {
    return leastLossPsi;
  }

  /** The one that takes least. */
  public Choice<List<Placed>> widest() {
    return priced.apply(widest.get());
  }

  /** So many of the cheapest, or all where there are no more. */
  public List<Choice<List<Placed>>> cheapest(int most) {
    boolean more = fetched.size() < most && rest().hasNext();
    while (fetched.size() < most && rest().hasNext()) {
      fetched.add(priced.apply(rest().next()));
    }
    if (more) {
      fetched.sort(CHEAPEST_FIRST);
    }
    return List.copyOf(fetched.subList(0, Math.min(most, fetched.size())));
  }

  /** The bridge in a place of the order, cheapest first; empty where there are no more. */
  public Optional<Choice<List<Placed>>> at(int place) {
    while (fetched.size() <= place && rest().hasNext()) {
      fetched.add(priced.apply(rest().next()));
    }
    return place < fetched.size() ? Optional.of(fetched.get(place)) : Optional.empty();
  }

  /** Whether there are more than so many. */
  public boolean moreThan(int count) {
    return fetched.size() > count || rest().hasNext();
  }

  private Iterator<Bridge> rest() {
    if (rest == null) {
      rest = cheapestFirst.get();
    }
    return rest;
  }
}
