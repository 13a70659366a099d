package hosewright.line.bridge;

import hosewright.line.assembly.Bridge;
import hosewright.thread.End;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * The part of a {@link BridgeGraph} that lies between two ends: nothing in it is a dead end.
 *
 * <p>A state is an end that stands open after so many adapters, looking downstream; a step screws
 * one more adapter onto it.
 *
 * <p>Bridges come out by a best-first walk with the exact weight still to come as its guide. The k
 * shortest paths of JGraphT 1.5.2 (Eppstein) were tried here: they leave out bridges of like weight
 * and then do not come in order, which loses the cheapest plan.
 */
public final class Passage {
  private final BridgeGraph graph;
  private final boolean direct;
  private final boolean[] meets;

  /** Steps by the number of adapters before them, then by the place of the end they start at. */
  private final List<List<List<Step>>> steps = new ArrayList<>();

  /**
   * @param link place of the adapter, turned the way water meets it
   * @param to place of the end that stands open then
   */
  private record Step(int link, int to) {}

  Passage(
      BridgeGraph graph,
      End from,
      End to,
      boolean fromPipe,
      boolean toPipe,
      Predicate<Bridge.Link> allowed) {
    Meetings.Listed first = Meetings.Listed.of(from);
    Meetings.Listed last = Meetings.Listed.of(to);
    this.graph = graph;
    this.direct = graph.meets(first, last, fromPipe || toPipe);
    this.meets = new boolean[graph.ends().size()];
    for (int end = 0; end < meets.length; end++) {
      meets[end] = graph.meets(graph.ends().get(end), last, toPipe);
    }
    boolean[] usable = new boolean[graph.linkCount()];
    for (int link = 0; link < usable.length; link++) {
      usable[link] = allowed.test(graph.link(link));
    }
    grow(graph.linksFrom(first, fromPipe), usable);
  }

  private void grow(int[] firstLinks, boolean[] usable) {
    boolean[][] finishes = finishes(usable);
    steps.add(List.of(steps(firstLinks, usable, finishes[0])));
    for (int before = 1; before < BridgeGraph.MOST_ADAPTERS; before++) {
      boolean[] open = new boolean[meets.length];
      steps.get(before - 1).forEach(from -> from.forEach(step -> open[step.to()] = true));
      List<List<Step>> layer = new ArrayList<>();
      for (int end = 0; end < open.length; end++) {
        layer.add(
            open[end] ? steps(graph.removableFrom(end), usable, finishes[before]) : List.of());
      }
      steps.add(layer);
    }
  }

  private List<Step> steps(int[] links, boolean[] usable, boolean[] finishes) {
    List<Step> found = new ArrayList<>();
    for (int link : links) {
      int to = graph.endAfter(link);
      if (usable[link] && finishes[to]) {
        found.add(new Step(link, to));
      }
    }
    return found;
  }

  /** By adapters before a step and end after it: whether the goal can be met from there. */
  private boolean[][] finishes(boolean[] usable) {
    boolean[][] finishes = new boolean[BridgeGraph.MOST_ADAPTERS][];
    finishes[BridgeGraph.MOST_ADAPTERS - 1] = meets;
    for (int before = BridgeGraph.MOST_ADAPTERS - 2; before >= 0; before--) {
      boolean[] later = finishes[before + 1];
      boolean[] now = meets.clone();
      for (int end = 0; end < now.length; end++) {
        now[end] |= goesOn(graph.removableFrom(end), usable, later);
      }
      finishes[before] = now;
    }
    return finishes;
  }

  private boolean goesOn(int[] links, boolean[] usable, boolean[] later) {
    for (int link : links) {
      if (usable[link] && later[graph.endAfter(link)]) {
        return true;
      }
    }
    return false;
  }

  /**
   * The least that any bridge weighs; empty when there is none.
   *
   * @param weights by place of a link, zero or more
   */
  public OptionalDouble leastWeight(double[] weights) {
    double least = direct ? 0 : onwards(weights)[0][0];
    return least == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(least);
  }

  /** By adapters before and open end: the least that steps from there on weigh, one at least. */
  private double[][] onwards(double[] weights) {
    double[][] onwards = new double[BridgeGraph.MOST_ADAPTERS + 1][];
    onwards[BridgeGraph.MOST_ADAPTERS] = new double[meets.length];
    Arrays.fill(onwards[BridgeGraph.MOST_ADAPTERS], Double.POSITIVE_INFINITY);
    for (int before = BridgeGraph.MOST_ADAPTERS - 1; before >= 0; before--) {
      List<List<Step>> layer = steps.get(before);
      onwards[before] = new double[layer.size()];
      for (int end = 0; end < layer.size(); end++) {
        double least = Double.POSITIVE_INFINITY;
        for (Step step : layer.get(end)) {
          double rest = meets[step.to()] ? 0 : onwards[before + 1][step.to()];
          least = Math.min(least, weights[step.link()] + rest);
        }
        onwards[before][end] = least;
      }
    }
    return onwards;
  }

  /**
   * Every bridge, lightest first, worked out one by one as it is asked for.
   *
   * @param weights by place of a link, zero or more
   */
  public Iterator<Bridge> lightestFirst(double[] weights) {
    return new Walk(weights);
  }

  /**
   * A chain, whole or still to be lengthened.
   *
   * @param before the chain without its last adapter; null for no adapter at all
   * @param link place of the last adapter
   * @param end place of the end that stands open
   * @param whole whether it is a bridge as it is
   * @param bound no bridge that begins like this weighs less
   */
  private record Chain(
      Chain before, int adapters, int link, int end, boolean whole, double weight, double bound) {}

  private final class Walk implements Iterator<Bridge> {
    private final double[] weights;
    private final double[][] onwards;
    private final PriorityQueue<Chain> waiting =
        new PriorityQueue<>(
            Comparator.comparingDouble(Chain::bound)
                .thenComparingInt(Chain::adapters)
                .thenComparingInt(Chain::link));

    Walk(double[] weights) {
      this.weights = weights;
      this.onwards = onwards(weights);
      if (direct) {
        waiting.add(new Chain(null, 0, -1, 0, true, 0, 0));
      }
      addLonger(new Chain(null, 0, -1, 0, false, 0, 0));
    }

    private void addLonger(Chain chain) {
      double bound = chain.weight() + onwards[chain.adapters()][chain.end()];
      if (bound < Double.POSITIVE_INFINITY) {
        waiting.add(
            new Chain(
                chain.before(),
                chain.adapters(),
                chain.link(),
                chain.end(),
                false,
                chain.weight(),
                bound));
      }
    }

    @Override
    public boolean hasNext() {
      return !waiting.isEmpty();
    }

    @Override
    public Bridge next() {
      while (!waiting.isEmpty()) {
        Chain chain = waiting.remove();
        if (chain.whole()) {
          return bridge(chain);
        }
        for (Step step : steps.get(chain.adapters()).get(chain.end())) {
          double weight = chain.weight() + weights[step.link()];
          int adapters = chain.adapters() + 1;
          Chain longer = new Chain(chain, adapters, step.link(), step.to(), true, weight, weight);
          if (meets[step.to()]) {
            waiting.add(longer);
          }
          addLonger(longer);
        }
      }
      throw new NoSuchElementException();
    }
  }

  private Bridge bridge(Chain whole) {
    Deque<Bridge.Link> links = new ArrayDeque<>();
    for (Chain chain = whole; chain.link() >= 0; chain = chain.before()) {
      links.addFirst(graph.link(chain.link()));
    }
    return new Bridge(List.copyOf(links));
  }
}
