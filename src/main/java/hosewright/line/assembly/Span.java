package hosewright.line.assembly;

import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an assembled line from one node to the next.
 *
 * @param name what papers call it
 * @param first place of its first part among those of the line
 * @param begins what stands where it begins
 * @param parts what lies between the nodes
 * @param ends what stands where it ends
 */
public record Span(String name, int first, Placed begins, List<Placed> parts, Placed ends) {

  public static List<Span> of(Assembly line) {
    List<Span> spans = new ArrayList<>();
    List<Placed> all = line.parts();
    int begin = 0;
    for (int place = 1; place < all.size(); place++) {
      if (all.get(place).role().isNode()) {
        List<Placed> between = all.subList(begin + 1, place);
        spans.add(
            new Span(
                name(all.get(begin), between, all.get(place)),
                begin + 1,
                all.get(begin),
                between,
                all.get(place)));
        begin = place;
      }
    }
    return spans;
  }

  /** The name of the stretch that a part lies in; what a stretch ends at is told with it. */
  public static String nameOf(Placed part, List<Span> spans) {
    return spans.stream()
        .filter(span -> span.ends == part || span.parts.stream().anyMatch(p -> p == part))
        .map(Span::name)
        .findFirst()
        .orElse("");
  }

  private static String name(Placed begins, List<Placed> between, Placed ends) {
    boolean hose = between.stream().anyMatch(Placed::isHose);
    if (ends.role() == Role.JOIN) {
      return "lines";
    }
    if (ends.role() == Role.SPLIT) {
      return hose ? "supply line" : "to the wye";
    }
    if (begins.role() == Role.SPLIT) {
      return "attack lines";
    }
    return begins.role() == Role.JOIN ? "behind the siamese" : "line";
  }

  /** How many of it lie side by side. */
  public int lines() {
    return parts.stream()
        .filter(Placed::isHose)
        .mapToInt(Placed::lines)
        .findFirst()
        .orElseGet(() -> parts.stream().mapToInt(Placed::lines).max().orElse(1));
  }
}
