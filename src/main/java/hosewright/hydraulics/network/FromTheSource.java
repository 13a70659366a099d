package hosewright.hydraulics.network;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Puts nodes into the order the water meets them, and refuses what has no such order. */
final class FromTheSource {
  private final List<Node> nodes;
  private final List<Link> links;
  private final List<Problem> problems = new ArrayList<>();

  private FromTheSource(List<Node> nodes, List<Link> links) {
    this.nodes = nodes;
    this.links = links;
  }

  /**
   * The nodes, each behind those it is fed from.
   *
   * @throws BadInputException naming every node and link that cannot be
   */
  static List<Node> sorted(List<Node> nodes, List<Link> links) {
    FromTheSource network = new FromTheSource(nodes, links);
    network.names();
    network.refuse();
    network.nodes.forEach(network::neighbours);
    network.links.forEach(network::copies);
    network.refuse();
    return network.sorted();
  }

  private void refuse() {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }

  private void names() {
    Set<String> names = new LinkedHashSet<>();
    for (Node node : nodes) {
      if (!names.add(node.name())) {
        problems.add(
            Problem.of("node", node.name(), "two places have this name, give each its own"));
      }
    }
    Set<String> seen = new HashSet<>();
    for (Link link : links) {
      if (!seen.add(link.name())) {
        problems.add(Problem.of("leg", link.name(), "two legs have this name, give each its own"));
      }
      known(names, link.name() + " begins", link.begins());
      known(names, link.name() + " ends", link.ends());
    }
    if (nodes.stream().noneMatch(Node.Source.class::isInstance)) {
      problems.add(Problem.of("source", "", "water comes from somewhere: name where"));
    }
  }

  private void known(Set<String> names, String field, String name) {
    if (!names.contains(name)) {
      problems.add(
          new Problem(
              field,
              name,
              "no place of this layout has that name; it has " + String.join(", ", names),
              Nearest.to(name, names)));
    }
  }

  private void neighbours(Node node) {
    boolean fed = links.stream().anyMatch(link -> link.ends().equals(node.name()));
    boolean feeds = links.stream().anyMatch(link -> link.begins().equals(node.name()));
    if (node instanceof Node.Source) {
      wants(node, !fed, "a source begins legs, and none ends at it");
      wants(node, feeds, "a source begins a leg, and none begins here");
    } else if (node instanceof Node.End) {
      wants(node, fed, "an end is where a leg ends, and none ends here");
      wants(node, !feeds, "water leaves at an end, so no leg begins there");
    } else if (node instanceof Node.Pump) {
      wants(node, fed, "a pump has an intake: let a leg end at it");
      wants(node, feeds, "a pump discharges into a leg: let one begin at it");
    } else {
      wants(node, fed, "nothing feeds it: let a leg end at it");
      wants(node, feeds, "it leads nowhere: let a leg begin at it, or make it an end");
    }
  }

  private void wants(Node node, boolean kept, String allowed) {
    if (!kept) {
      problems.add(Problem.of(sort(node), node.name(), allowed));
    }
  }

  private static String sort(Node node) {
    if (node instanceof Node.Source) {
      return "source";
    }
    if (node instanceof Node.Pump) {
      return "pump";
    }
    return node instanceof Node.End ? "end" : "point";
  }

  private void copies(Link link) {
    if (link.copies() == 1) {
      return;
    }
    Node end = nodes.stream().filter(node -> node.name().equals(link.ends())).findFirst().get();
    boolean alone = links.stream().filter(other -> other.ends().equals(link.ends())).count() == 1;
    if (!(end instanceof Node.End) || !alone) {
      problems.add(
          Problem.of(
              "copies of " + link.name(),
              String.valueOf(link.copies()),
              "each copy has an end of its own, so it ends at an end that no other leg reaches"));
    }
  }

  private List<Node> sorted() {
    List<Node> sorted = new ArrayList<>();
    List<Node> left = new ArrayList<>(nodes);
    List<Link> waiting = new ArrayList<>(links);
    while (!left.isEmpty()) {
      List<Node> ready =
          left.stream()
              .filter(node -> waiting.stream().noneMatch(link -> link.ends().equals(node.name())))
              .toList();
      if (ready.isEmpty()) {
        throw ring(left, waiting);
      }
      left.removeAll(ready);
      sorted.addAll(ready);
      Set<String> names = ready.stream().map(Node::name).collect(Collectors.toSet());
      waiting.removeIf(link -> names.contains(link.begins()));
    }
    return List.copyOf(sorted);
  }

  /** Follows the water up until it comes to a place twice. */
  private static BadInputException ring(List<Node> left, List<Link> waiting) {
    List<String> places = new ArrayList<>(List.of(left.get(0).name()));
    List<String> legs = new ArrayList<>();
    while (true) {
      String at = places.get(places.size() - 1);
      Link link = waiting.stream().filter(one -> one.ends().equals(at)).findFirst().orElseThrow();
      legs.add(0, link.name());
      int met = places.indexOf(link.begins());
      if (met >= 0) {
        List<String> ring = legs.subList(0, places.size() - met);
        return new BadInputException(
            "leg", ring.get(0), "water would run in a ring through " + String.join(", ", ring));
      }
      places.add(link.begins());
    }
  }
}
