package hosewright.line.bridge;

import hosewright.catalogue.Item;
import hosewright.line.assembly.Bridge;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Every way to get from one open end to another with adapters of the catalogue.
 *
 * <p>Joints that are not meant to come apart are allowed only at a pipe, so a chain may begin or
 * finish with one but never hold one inside.
 */
public final class BridgeGraph {
  /** Adapters in one bridge at the most. */
  public static final int MOST_ADAPTERS = 3;

  private final boolean byName;
  private final List<Bridge.Link> links = new ArrayList<>();
  private final List<Meetings.Listed> ends = new ArrayList<>();
  private final int[] downstreamEnds;

  /** Every upstream end, with the places of the links that have it. */
  private final List<Behind> behind;

  /** By end: the links that take it, when it stands open, with a joint that comes apart again. */
  private final int[][] removableFrom;

  private record Behind(Meetings.Listed end, int[] links) {}

  /**
   * Bridges whose every joint mates.
   *
   * @param adapters two-ended adapters that may be used
   */
  public BridgeGraph(List<Item> adapters) {
    this(adapters, false);
  }

  /** Bridges for a plan, which joins two halves of one name where it says to measure them. */
  public static BridgeGraph forPlans(List<Item> adapters) {
    return new BridgeGraph(adapters, true);
  }

  private BridgeGraph(List<Item> adapters, boolean byName) {
    this.byName = byName;
    for (Item adapter : adapters) {
      End first = adapter.ends().get(0);
      End second = adapter.ends().get(1);
      links.add(new Bridge.Link(adapter, first, second));
      if (!first.equals(second)) {
        links.add(new Bridge.Link(adapter, second, first));
      }
    }
    Map<End, Integer> places = new LinkedHashMap<>();
    downstreamEnds =
        links.stream()
            .mapToInt(link -> places.computeIfAbsent(link.downstream(), end -> places.size()))
            .toArray();
    places.keySet().forEach(end -> ends.add(Meetings.Listed.of(end)));
    behind =
        IntStream.range(0, links.size())
            .boxed()
            .collect(
                Collectors.groupingBy(
                    place -> links.get(place).upstream(), LinkedHashMap::new, Collectors.toList()))
            .entrySet()
            .stream()
            .map(
                entry ->
                    new Behind(
                        Meetings.Listed.of(entry.getKey()),
                        entry.getValue().stream().mapToInt(Integer::intValue).toArray()))
            .toList();
    removableFrom = new int[ends.size()][];
  }

  /**
   * The bridges of least weight, lightest first.
   *
   * @param from the open end, looking downstream
   * @param to the end to be met
   * @param fromPipe whether the first joint may be permanent
   * @param toPipe whether the last joint may be permanent
   * @param weights by place of a link, as {@link #weigh} gives them
   * @param most how many bridges to give at the most
   * @return empty when no chain of at most {@value #MOST_ADAPTERS} adapters does it
   */
  List<Bridge> lightest(
      End from, End to, boolean fromPipe, boolean toPipe, double[] weights, int most) {
    Iterator<Bridge> all = passage(from, to, fromPipe, toPipe, link -> true).lightestFirst(weights);
    List<Bridge> bridges = new ArrayList<>();
    while (bridges.size() < most && all.hasNext()) {
      bridges.add(all.next());
    }
    return bridges;
  }

  /** All bridges between two ends that are made of certain links only. */
  public Passage passage(
      End from, End to, boolean fromPipe, boolean toPipe, Predicate<Bridge.Link> allowed) {
    return new Passage(this, from, to, fromPipe, toPipe, allowed);
  }

  /** The weight of each link, by its place. */
  public double[] weigh(ToDoubleFunction<Bridge.Link> weight) {
    return links.stream().mapToDouble(weight).toArray();
  }

  Bridge.Link link(int place) {
    return links.get(place);
  }

  int linkCount() {
    return links.size();
  }

  /** Ends that may stand open after an adapter. */
  List<Meetings.Listed> ends() {
    return ends;
  }

  /** The place in {@link #ends} of the end that stands open after a link. */
  int endAfter(int link) {
    return downstreamEnds[link];
  }

  int[] removableFrom(int end) {
    if (removableFrom[end] == null) {
      removableFrom[end] = linksFrom(ends.get(end), false);
    }
    return removableFrom[end];
  }

  int[] linksFrom(Meetings.Listed open, boolean permanentAllowed) {
    IntStream.Builder from = IntStream.builder();
    for (Behind next : behind) {
      if (meets(open, next.end(), permanentAllowed)) {
        for (int link : next.links()) {
          from.add(link);
        }
      }
    }
    return from.build().sorted().toArray();
  }

  boolean meets(Meetings.Listed open, Meetings.Listed next, boolean permanentAllowed) {
    return Meetings.of(open, next).allowed(byName, permanentAllowed);
  }
}
