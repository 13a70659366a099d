package hosewright.paper.drawing;

import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.Node;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A layout as it is drawn: what stands at a place, the legs that leave it, and where some of them
 * meet again.
 *
 * @param branches the legs that leave it
 * @param meeting where legs behind it meet, each with what follows it
 */
record Course(Node at, List<Branch> branches, List<Course> meeting) {

  /**
   * A leg with what lies behind it.
   *
   * @param end empty where it meets other legs, which is drawn once behind where they part
   */
  record Branch(Leg leg, Optional<Course> end) {}

  /** One for each source. */
  static List<Course> of(Layout layout) {
    Tracing tracing = new Tracing(layout);
    List<Course> courses = new ArrayList<>();
    List<Node> sources =
        layout.nodes().stream().filter(node -> node.role() == Role.SOURCE).toList();
    for (Node source : sources) {
      courses.add(tracing.from(source));
    }
    return courses;
  }

  /** How many branches lie side by side at the most. */
  int rows() {
    int ofBranches = branches.stream().mapToInt(leg -> leg.end().map(Course::rows).orElse(1)).sum();
    int ofMeeting = meeting.stream().mapToInt(Course::rows).sum();
    return Math.max(1, Math.max(ofBranches, ofMeeting));
  }

  /** How many places follow one another at the most, this one among them. */
  int columns() {
    return 1 + behindBranches() + meeting.stream().mapToInt(Course::columns).max().orElse(0);
  }

  /** How many places stand between this one and where its legs meet, at the most. */
  int behindBranches() {
    return branches.stream()
        .mapToInt(leg -> leg.end().map(Course::columns).orElse(0))
        .max()
        .orElse(0);
  }

  /** Follows the water, and remembers which legs have come to a place where several meet. */
  private static final class Tracing {
    private final Layout layout;
    private final Map<String, Integer> arrived = new HashMap<>();
    private final List<Node> reached = new ArrayList<>();

    Tracing(Layout layout) {
      this.layout = layout;
    }

    Course from(Node at) {
      int before = reached.size();
      List<Branch> branches = new ArrayList<>();
      for (Leg leg : layout.behind(at)) {
        branches.add(new Branch(leg, end(layout.node(leg.ends()))));
      }
      List<Course> meeting = new ArrayList<>();
      while (reached.size() > before) {
        meeting.add(from(reached.remove(before)));
      }
      return new Course(at, branches, meeting);
    }

    /** What is drawn at the end of a leg; where legs meet, the last to come lets it go on. */
    private Optional<Course> end(Node next) {
      int meet = layout.into(next).size();
      if (meet <= 1) {
        return Optional.of(from(next));
      }
      if (arrived.merge(next.name(), 1, Integer::sum) == meet) {
        reached.add(next);
      }
      return Optional.empty();
    }
  }
}
