package hosewright.line;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Spliterators;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.EppsteinShortestPathIterator;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * The part of a {@link BridgeGraph} that lies between two ends: nothing in it is a dead end.
 *
 * <p>A state is an end that stands open after so many adapters, looking downstream; a step screws
 * one more adapter onto it.
 */
final class Passage {
  private final BridgeGraph graph;
  private final boolean direct;
  private final boolean[] meets;

  /** Steps by the number of adapters before them. */
  private final List<List<Step>> steps = new ArrayList<>();

  /**
   * @param from place of the end the adapter is screwed onto; -1 for the end the bridge starts at
   * @param link place of the adapter, turned the way water meets it
   * @param to place of the end that stands open then
   */
  private record Step(int from, int link, int to) {}

  Passage(
      BridgeGraph graph,
      End from,
      End to,
      boolean fromPipe,
      boolean toPipe,
      Predicate<Bridge.Link> allowed) {
    this.graph = graph;
    this.direct = BridgeGraph.meets(from, to, fromPipe || toPipe);
    this.meets = new boolean[graph.ends().size()];
    for (int end = 0; end < meets.length; end++) {
      meets[end] = BridgeGraph.meets(graph.ends().get(end), to, toPipe);
    }
    boolean[] usable = new boolean[graph.linkCount()];
    for (int link = 0; link < usable.length; link++) {
      usable[link] = allowed.test(graph.link(link));
    }
    grow(graph.linksFrom(from, fromPipe), usable);
  }

  private void grow(int[] firstLinks, boolean[] usable) {
    boolean[][] finishes = finishes(usable);
    List<Step> first = new ArrayList<>();
    addSteps(-1, firstLinks, usable, finishes[0], first);
    steps.add(first);
    for (int before = 1; before < BridgeGraph.MOST_ADAPTERS; before++) {
      boolean[] open = new boolean[meets.length];
      steps.get(before - 1).forEach(step -> open[step.to()] = true);
      List<Step> next = new ArrayList<>();
      for (int end = 0; end < open.length; end++) {
        if (open[end]) {
          addSteps(end, graph.removableFrom(end), usable, finishes[before], next);
        }
      }
      steps.add(next);
    }
  }

  private void addSteps(
      int from, int[] links, boolean[] usable, boolean[] finishes, List<Step> into) {
    for (int link : links) {
      int to = graph.endAfter(link);
      if (usable[link] && finishes[to]) {
        into.add(new Step(from, link, to));
      }
    }
  }

  /** By adapters before a step and end after it: whether the goal can be met from there. */
  private boolean[][] finishes(boolean[] usable) {
    boolean[][] finishes = new boolean[BridgeGraph.MOST_ADAPTERS][];
    finishes[BridgeGraph.MOST_ADAPTERS - 1] = meets;
    for (int before = BridgeGraph.MOST_ADAPTERS - 2; before >= 0; before--) {
      boolean[] later = finishes[before + 1];
      boolean[] now = meets.clone();
      for (int end = 0; end < now.length; end++) {
        now[end] |=
            Arrays.stream(graph.removableFrom(end))
                .anyMatch(link -> usable[link] && later[graph.endAfter(link)]);
      }
      finishes[before] = now;
    }
    return finishes;
  }

  /**
   * The least that any bridge weighs; empty when there is none.
   *
   * @param weights by place of a link, zero or more
   */
  OptionalDouble leastWeight(double[] weights) {
    double[] onwards = new double[meets.length];
    for (int before = BridgeGraph.MOST_ADAPTERS - 1; before >= 1; before--) {
      double[] now = new double[meets.length];
      Arrays.fill(now, Double.POSITIVE_INFINITY);
      for (Step step : steps.get(before)) {
        double weight = weights[step.link()] + onward(onwards, step.to());
        now[step.from()] = Math.min(now[step.from()], weight);
      }
      onwards = now;
    }
    double least = direct ? 0 : Double.POSITIVE_INFINITY;
    for (Step step : steps.get(0)) {
      least = Math.min(least, weights[step.link()] + onward(onwards, step.to()));
    }
    return least == Double.POSITIVE_INFINITY ? OptionalDouble.empty() : OptionalDouble.of(least);
  }

  private double onward(double[] onwards, int end) {
    return meets[end] ? 0 : onwards[end];
  }

  /**
   * Every bridge, lightest first, worked out one by one as it is asked for.
   *
   * @param weights by place of a link, zero or more
   */
  Iterator<Bridge> lightestFirst(double[] weights) {
    Stream<Bridge> none = direct ? Stream.of(new Bridge(List.of())) : Stream.empty();
    Stream<Bridge> chains = steps.get(0).isEmpty() ? Stream.empty() : chains(weights);
    return Stream.concat(none, chains).iterator();
  }

  /**
   * A vertex is a state, or an adapter on its way from one state to the next: adapters are vertices
   * because like ones stand side by side.
   */
  private Stream<Bridge> chains(double[] weights) {
    SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> paths =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    List<Integer> linkOfVertex = new ArrayList<>();
    int start = vertex(paths, linkOfVertex, -1);
    int goal = vertex(paths, linkOfVertex, -1);
    int[] open = new int[meets.length];
    for (List<Step> layer : steps) {
      int[] next = new int[meets.length];
      for (Step step : layer) {
        if (next[step.to()] == 0) {
          next[step.to()] = vertex(paths, linkOfVertex, -1);
          if (meets[step.to()]) {
            edge(paths, next[step.to()], goal, 0);
          }
        }
        int adapter = vertex(paths, linkOfVertex, step.link());
        edge(paths, step.from() < 0 ? start : open[step.from()], adapter, weights[step.link()]);
        edge(paths, adapter, next[step.to()], 0);
      }
      open = next;
    }
    var lightest = new EppsteinShortestPathIterator<>(paths, start, goal);
    return StreamSupport.stream(Spliterators.spliteratorUnknownSize(lightest, 0), false)
        .map(path -> bridge(path, linkOfVertex));
  }

  private static int vertex(
      SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> paths,
      List<Integer> linkOfVertex,
      int link) {
    int vertex = linkOfVertex.size();
    linkOfVertex.add(link);
    paths.addVertex(vertex);
    return vertex;
  }

  private static void edge(
      SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> paths,
      int from,
      int to,
      double weight) {
    paths.setEdgeWeight(paths.addEdge(from, to), weight);
  }

  private Bridge bridge(GraphPath<Integer, DefaultWeightedEdge> path, List<Integer> linkOfVertex) {
    return new Bridge(
        path.getVertexList().stream()
            .map(linkOfVertex::get)
            .filter(link -> link >= 0)
            .map(graph::link)
            .toList());
  }
}
