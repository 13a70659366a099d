package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.EppsteinKShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * Every way to get from one open end to another with adapters of the catalogue.
 *
 * <p>A vertex is an end that stands open after so many adapters, looking downstream, or an adapter
 * on its way from one open end to the next; adapters are vertices because like ones stand side by
 * side. Joints that are not meant to come apart are allowed only at a pipe, so a chain may begin or
 * finish with one but never hold one inside.
 */
public final class BridgeGraph {
  /** Adapters in one bridge at the most. */
  public static final int MOST_ADAPTERS = 3;

  private final Map<End, List<Bridge.Link>> linksByUpstream = new LinkedHashMap<>();
  private final Map<End, List<Bridge.Link>> removableFrom = new HashMap<>();

  /**
   * @param adapters two-ended adapters that may be used
   */
  public BridgeGraph(List<Item> adapters) {
    for (Item adapter : adapters) {
      End first = adapter.ends().get(0);
      End second = adapter.ends().get(1);
      add(new Bridge.Link(adapter, first, second));
      if (!first.equals(second)) {
        add(new Bridge.Link(adapter, second, first));
      }
    }
  }

  private void add(Bridge.Link link) {
    linksByUpstream.computeIfAbsent(link.upstream(), end -> new ArrayList<>()).add(link);
  }

  /**
   * The bridges of least weight, lightest first.
   *
   * @param from the open end, looking downstream
   * @param to the end to be met
   * @param fromPipe whether the first joint may be permanent
   * @param toPipe whether the last joint may be permanent
   * @param weight what one adapter weighs, zero or more: its price, say
   * @param most how many bridges to give at the most
   * @return empty when no chain of at most {@value #MOST_ADAPTERS} adapters does it
   */
  public List<Bridge> lightest(
      End from,
      End to,
      boolean fromPipe,
      boolean toPipe,
      ToDoubleFunction<Bridge.Link> weight,
      int most) {
    List<Bridge> bridges = new ArrayList<>();
    if (meets(from, to, fromPipe || toPipe)) {
      bridges.add(new Bridge(List.of()));
    }
    Passage passage = new Passage(to, toPipe, weight);
    passage.grow(from, fromPipe);
    for (GraphPath<Vertex, DefaultWeightedEdge> path : passage.paths(most - bridges.size())) {
      bridges.add(new Bridge(path.getVertexList().stream().flatMap(Vertex::adapterHere).toList()));
    }
    return bridges;
  }

  /** Adapters that take an open end with a joint that comes apart again. */
  private List<Bridge.Link> removableFrom(End open) {
    return removableFrom.computeIfAbsent(open, end -> linksFrom(end, false));
  }

  private List<Bridge.Link> linksFrom(End open, boolean permanentAllowed) {
    List<Bridge.Link> links = new ArrayList<>();
    linksByUpstream.forEach(
        (end, ofEnd) -> {
          if (meets(open, end, permanentAllowed)) {
            links.addAll(ofEnd);
          }
        });
    return links;
  }

  private static boolean meets(End open, End next, boolean permanentAllowed) {
    Verdict verdict = Mating.of(open, next);
    return verdict.mates() && (verdict.removable() || permanentAllowed);
  }

  /** The part of the graph that lies between two ends: nothing in it is a dead end. */
  private final class Passage {
    private static final Vertex START = new Vertex(0, null, null, null);
    private static final Vertex GOAL = new Vertex(-1, null, null, null);

    private final End to;
    private final boolean toPipe;
    private final ToDoubleFunction<Bridge.Link> weight;
    private final SimpleDirectedWeightedGraph<Vertex, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    private final Map<Vertex, Boolean> finishes = new HashMap<>();

    Passage(End to, boolean toPipe, ToDoubleFunction<Bridge.Link> weight) {
      this.to = to;
      this.toPipe = toPipe;
      this.weight = weight;
      graph.addVertex(START);
      graph.addVertex(GOAL);
    }

    void grow(End from, boolean fromPipe) {
      List<Vertex> frontier = join(START, linksFrom(from, fromPipe));
      for (int adapters = 1; adapters < MOST_ADAPTERS; adapters++) {
        List<Vertex> next = new ArrayList<>();
        for (Vertex open : frontier) {
          next.addAll(join(open, removableFrom(open.end())));
        }
        frontier = next;
      }
    }

    private List<Vertex> join(Vertex open, List<Bridge.Link> links) {
      List<Vertex> reached = new ArrayList<>();
      for (Bridge.Link link : links) {
        Vertex next = Vertex.open(open.adapters() + 1, link.downstream());
        if (finishes(next)) {
          if (graph.addVertex(next)) {
            reached.add(next);
            if (meets(next.end(), to, toPipe)) {
              edge(next, GOAL, 0);
            }
          }
          Vertex adapter = new Vertex(next.adapters(), next.end(), open.end(), link);
          graph.addVertex(adapter);
          edge(open, adapter, weight.applyAsDouble(link));
          edge(adapter, next, 0);
        }
      }
      return reached;
    }

    /** Whether the goal can be met from here with the adapters that are left. */
    private boolean finishes(Vertex open) {
      Boolean known = finishes.get(open);
      if (known == null) {
        known =
            meets(open.end(), to, toPipe)
                || open.adapters() < MOST_ADAPTERS
                    && removableFrom(open.end()).stream()
                        .map(link -> Vertex.open(open.adapters() + 1, link.downstream()))
                        .anyMatch(this::finishes);
        finishes.put(open, known);
      }
      return known;
    }

    private void edge(Vertex from, Vertex next, double cost) {
      graph.setEdgeWeight(graph.addEdge(from, next), cost);
    }

    List<GraphPath<Vertex, DefaultWeightedEdge>> paths(int most) {
      return most < 1 || graph.inDegreeOf(GOAL) == 0
          ? List.of()
          : new EppsteinKShortestPath<>(graph).getPaths(START, GOAL, most);
    }
  }

  /**
   * An open end, or an adapter between two.
   *
   * @param adapters adapters up to here
   * @param end the end that stands open, or will
   * @param on the open end the adapter is screwed onto; null for an open end
   * @param link the adapter; null for an open end
   */
  private record Vertex(int adapters, End end, End on, Bridge.Link link) {

    static Vertex open(int adapters, End end) {
      return new Vertex(adapters, end, null, null);
    }

    Stream<Bridge.Link> adapterHere() {
      return Stream.ofNullable(link);
    }
  }
}
