package hosewright.hydraulics.network;

import hosewright.hydraulics.law.Given;
import hosewright.problem.BadInputException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How high nodes lie: a source where it says, every other by the rise of the links to it. */
final class Heights {
  /** Ways to one place that differ by no more are rounded otherwise, ft. */
  private static final double ROUNDING_FT = 0.05;

  private Heights() {}

  /**
   * Heights by name, ft.
   *
   * @param nodes each behind those it is fed from
   * @throws BadInputException where two ways to a node rise otherwise
   */
  static Map<String, Double> of(List<Node> nodes, List<Link> links) {
    Map<String, Double> heightsFt = new HashMap<>();
    Map<String, Link> by = new HashMap<>();
    for (Node node : nodes) {
      if (node instanceof Node.Source source) {
        heightsFt.put(node.name(), source.heightFt());
      }
      for (Link link : links) {
        if (link.ends().equals(node.name())) {
          double heightFt = heightsFt.get(link.begins()) + link.riseFt();
          Link other = by.putIfAbsent(node.name(), link);
          if (other == null) {
            heightsFt.put(node.name(), heightFt);
          } else if (!(Math.abs(heightFt - heightsFt.get(node.name())) <= ROUNDING_FT)) {
            throw refused(node, link, heightFt, other, heightsFt.get(node.name()));
          }
        }
      }
    }
    return heightsFt;
  }

  private static BadInputException refused(
      Node node, Link link, double heightFt, Link other, double otherFt) {
    return new BadInputException(
        "height of " + node.name(),
        Given.plain(heightFt) + " ft",
        String.format(
            Locale.ROOT,
            "lines that meet end at one height, and %s comes to %s ft where %s comes to %s ft",
            link.name(),
            Given.plain(heightFt),
            other.name(),
            Given.plain(otherFt)));
  }
}
