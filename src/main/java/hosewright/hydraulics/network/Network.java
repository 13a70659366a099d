package hosewright.hydraulics.network;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Nodes and the links between them, as the water runs: it divides and joins as often as it likes,
 * and never comes round.
 *
 * <p>What is no such thing is refused, naming the node or the link: a ring, what no source feeds,
 * what leads nowhere, a pump without intake, a name used twice.
 *
 * @param nodes in any order; kept so that each stands behind those it is fed from
 * @param links in any order
 */
public record Network(List<Node> nodes, List<Link> links) {

  public Network {
    links = List.copyOf(links);
    nodes = FromTheSource.sorted(List.copyOf(nodes), links);
    Heights.of(nodes, links);
  }

  /** The node of a name that a link or a question has used. */
  public Node node(String name) {
    return nodes.stream().filter(node -> node.name().equals(name)).findFirst().orElseThrow();
  }

  /** The link of a name. */
  public Link link(String name) {
    return links.stream().filter(link -> link.name().equals(name)).findFirst().orElseThrow();
  }

  /** Nodes of one sort. */
  public <N extends Node> List<N> nodes(Class<N> sort) {
    return nodes.stream().filter(sort::isInstance).map(sort::cast).toList();
  }

  /** Links that end at a node. */
  public List<Link> into(String node) {
    return links.stream().filter(link -> link.ends().equals(node)).toList();
  }

  /** Links that begin at a node. */
  public List<Link> outOf(String node) {
    return links.stream().filter(link -> link.begins().equals(node)).toList();
  }

  /** How many like ends an end stands for: the copies of the link that reaches it. */
  public int copies(String end) {
    return into(end).stream().mapToInt(Link::copies).max().orElse(1);
  }

  /** How high every node lies, ft, by its name. */
  public Map<String, Double> heightsFt() {
    return Heights.of(nodes, links);
  }

  /** Whether links meet again anywhere, so that the flow in them is to be found by their losses. */
  boolean joins() {
    return nodes.stream().anyMatch(node -> into(node.name()).size() > 1);
  }

  /** Nodes by the number of the part they lie in, where no water of one part reaches another. */
  Map<String, Integer> parts() {
    Map<String, Integer> parts = new LinkedHashMap<>();
    for (int i = 0; i < nodes.size(); i++) {
      parts.put(nodes.get(i).name(), i);
    }
    for (int i = 0; i < nodes.size(); i++) {
      for (Link link : links) {
        int least = Math.min(parts.get(link.begins()), parts.get(link.ends()));
        parts.put(link.begins(), least);
        parts.put(link.ends(), least);
      }
    }
    return parts;
  }

  /** Every node by its name. */
  Map<String, Node> byName() {
    return nodes.stream().collect(Collectors.toMap(Node::name, Function.identity()));
  }

  /** Names of the nodes that water from a node may come to, itself among them. */
  List<String> behind(String node) {
    List<String> reached = new ArrayList<>(List.of(node));
    for (int i = 0; i < reached.size(); i++) {
      for (Link link : outOf(reached.get(i))) {
        if (!reached.contains(link.ends())) {
          reached.add(link.ends());
        }
      }
    }
    return reached;
  }

  /** Links by the node they end at. */
  Map<String, List<Link>> byEnd() {
    Map<String, List<Link>> byEnd = new HashMap<>();
    nodes.forEach(node -> byEnd.put(node.name(), new ArrayList<>()));
    links.forEach(link -> byEnd.get(link.ends()).add(link));
    return byEnd;
  }
}
