package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.KShortestSimplePaths;
import org.jgrapht.graph.DirectedWeightedMultigraph;

/**
 * Every way to get from one open end to another with adapters of the catalogue.
 *
 * <p>A vertex is an end that stands open, looking downstream; an edge is an adapter screwed onto it,
 * which leaves its other end open. Joints that are not meant to come apart are allowed only at a
 * pipe, so a chain may begin or finish with one but never hold one inside.
 */
public final class BridgeGraph {
  /** Adapters in one bridge at the most. */
  public static final int MOST_ADAPTERS = 3;

  private final Map<End, List<Bridge.Link>> linksByUpstream = new LinkedHashMap<>();
  private final ToDoubleFunction<Item> weight;

  /**
   * @param adapters two-ended adapters that may be used
   * @param weight what one of an adapter costs at least, zero or more
   */
  public BridgeGraph(List<Item> adapters, ToDoubleFunction<Item> weight) {
    this.weight = weight;
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
   * The cheapest bridges, cheapest first.
   *
   * @param from the open end, looking downstream
   * @param to the end to be met
   * @param fromPipe whether the first joint may be permanent
   * @param toPipe whether the last joint may be permanent
   * @param most how many bridges to give at the most
   * @return empty when no chain of at most {@value #MOST_ADAPTERS} adapters does it
   */
  public List<Bridge> cheapest(End from, End to, boolean fromPipe, boolean toPipe, int most) {
    List<Bridge> bridges = new ArrayList<>();
    Verdict direct = Mating.of(from, to);
    if (direct.mates() && (direct.removable() || fromPipe || toPipe)) {
      bridges.add(new Bridge(List.of()));
    }
    var graph = new DirectedWeightedMultigraph<Vertex, Step>(Step.class);
    Vertex start = new Vertex(Place.START, from);
    Vertex goal = new Vertex(Place.GOAL, to);
    graph.addVertex(start);
    graph.addVertex(goal);
    connect(graph, start, fromPipe);
    for (Vertex vertex : List.copyOf(graph.vertexSet())) {
      if (vertex.place() == Place.OPEN && meets(vertex.end(), to, toPipe)) {
        graph.addEdge(vertex, goal, new Step(null));
      }
    }
    for (GraphPath<Vertex, Step> path :
        new KShortestSimplePaths<>(graph, MOST_ADAPTERS + 1).getPaths(start, goal, most)) {
      bridges.add(
          new Bridge(
              path.getEdgeList().stream()
                  .filter(step -> step.link() != null)
                  .map(Step::link)
                  .toList()));
    }
    return bridges;
  }

  /** Grows the graph outwards from the start, so that only ends within reach are in it. */
  private void connect(
      DirectedWeightedMultigraph<Vertex, Step> graph, Vertex start, boolean fromPipe) {
    List<Vertex> frontier = List.of(start);
    for (int depth = 0; depth < MOST_ADAPTERS; depth++) {
      List<Vertex> next = new ArrayList<>();
      for (Vertex vertex : frontier) {
        boolean permanentAllowed = vertex.place() == Place.START && fromPipe;
        linksByUpstream.forEach(
            (end, links) -> {
              if (meets(vertex.end(), end, permanentAllowed)) {
                links.forEach(link -> addStep(graph, vertex, link, next));
              }
            });
      }
      frontier = next;
    }
  }

  private void addStep(
      DirectedWeightedMultigraph<Vertex, Step> graph,
      Vertex vertex,
      Bridge.Link link,
      List<Vertex> next) {
    Vertex reached = new Vertex(Place.OPEN, link.downstream());
    if (reached.equals(vertex)) {
      return;
    }
    if (graph.addVertex(reached)) {
      next.add(reached);
    }
    Step step = new Step(link);
    graph.addEdge(vertex, reached, step);
    graph.setEdgeWeight(step, weight.applyAsDouble(link.item()));
  }

  private static boolean meets(End open, End next, boolean permanentAllowed) {
    Verdict verdict = Mating.of(open, next);
    return verdict.mates() && (verdict.removable() || permanentAllowed);
  }

  private enum Place {
    START,
    OPEN,
    GOAL
  }

  private record Vertex(Place place, End end) {}

  /** An edge; edges of a multigraph are told apart by identity, so this is no record. */
  private static final class Step {
    private final Bridge.Link link;

    Step(Bridge.Link link) {
      this.link = link;
    }

    Bridge.Link link() {
      return link;
    }
  }
}
