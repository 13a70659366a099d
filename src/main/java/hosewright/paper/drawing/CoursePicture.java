package hosewright.paper.drawing;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Role;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.Course.Branch;
import hosewright.paper.page.Lettering;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the legs of a layout part and meet: places from left to right, each leg a line between two.
 */
final class CoursePicture {
  private static final double WIDTH = 560;
  private static final double MARGIN = 12;
  private static final double SMALL = 6.5;
  private static final double NAME = 7.5;
  private static final double LINE = 1.2;
  private static final double HALF = 7;
  private static final int MOST_WORDS = 5;
  private static final double GAP = 10;

  /** A place takes so much of what a leg does, in width. */
  private static final double PLACE_SHARE = 0.95;

  private final LinePlan plan;
  private final CourseWords words;
  private final List<Mark> marks = new ArrayList<>();
  private final double place;
  private final double leg;
  private final Meetings ends = new Meetings();
  private double top = GAP;

  private CoursePicture(LinePlan plan, int columns) {
    this.plan = plan;
    this.words = new CourseWords(plan, UnitSystem.US);
    double unit = (WIDTH - 2 * MARGIN) / (columns * PLACE_SHARE + Math.max(1, columns - 1));
    this.place = unit * PLACE_SHARE;
    this.leg = unit;
  }

  static Picture of(LinePlan plan) {
    List<Course> courses = Course.of(plan.layout());
    int columns = courses.stream().mapToInt(Course::columns).max().orElse(1);
    CoursePicture picture = new CoursePicture(plan, columns);
    double rowHeight = picture.rowHeight();
    for (Course course : courses) {
      picture.course(course, MARGIN, picture.top, rowHeight);
      picture.top += course.rows() * rowHeight;
    }
    return new Picture(WIDTH, picture.top + GAP / 2, picture.marks);
  }

  /** Room for the words above and below the longest labels. */
  private double rowHeight() {
    int most = 2;
    for (Node node : plan.layout().nodes()) {
      most = Math.max(most, label(node).size());
    }
    int ofLeg = plan.layout().legs().stream().mapToInt(one -> label(one).size()).max().orElse(2);
    double above = NAME * LINE + 4;
    return above + 2 * HALF + Math.max(most, ofLeg) * SMALL * LINE + GAP;
  }

  /** Draws what begins at a place; gives the height of its axis. */
  private double course(Course course, double x, double y, double rowHeight) {
    double axis = axis(y, course.rows(), rowHeight);
    double parts = x + place;
    double meets = x + (1 + course.behindBranches()) * (place + leg);
    if (!course.branches().isEmpty()) {
      line(x + place / 2, axis, parts, axis);
    }
    double down = y + (course.rows() - rowsOf(course)) * rowHeight / 2;
    for (Branch branch : course.branches()) {
      int rows = branch.end().map(Course::rows).orElse(1);
      double at =
          branch.end().isPresent()
              ? course(branch.end().get(), parts + leg, down, rowHeight)
              : axis(down, rows, rowHeight);
      line(parts, axis, parts, at);
      branch(branch, parts, at, course.meeting().isEmpty() ? parts + leg : meets);
      down += rows * rowHeight;
    }
    double next = y + (course.rows() - rowsOf(course.meeting())) * rowHeight / 2;
    for (Course meeting : course.meeting()) {
      double at = course(meeting, meets, next, rowHeight);
      for (double from : ends.at(meeting.at())) {
        line(meets, from, meets, at);
      }
      line(meets, at, meets + place / 2, at);
      next += meeting.rows() * rowHeight;
    }
    // What stands at the place lies over the lines that leave it.
    node(course.at(), x + place / 2, axis);
    return axis;
  }

  private static double axis(double top, int rows, double rowHeight) {
    return top + rows * rowHeight / 2 - SMALL * LINE * 2;
  }

  /** A leg that leaves a place: to the next, or to where it meets others. */
  private void branch(Branch branch, double from, double axis, double meets) {
    if (branch.end().isPresent()) {
      line(from, axis, from + leg + place / 2, axis);
    } else {
      line(from, axis, meets, axis);
      ends.add(plan.layout().node(branch.leg().ends()), axis);
    }
    double middle = from + leg / 2;
    word(middle, axis - 4, NAME, branch.leg().name());
    below(label(branch.leg()), middle, axis - HALF + 2);
  }

  private void line(double fromX, double fromY, double toX, double toY) {
    marks.add(0, new Line(fromX, fromY, toX, toY, 2));
  }

  private static int rowsOf(List<Course> courses) {
    return courses.stream().mapToInt(Course::rows).sum();
  }

  private static int rowsOf(Course course) {
    return Math.max(
        1,
        course.branches().stream()
            .mapToInt(branch -> branch.end().map(Course::rows).orElse(1))
            .sum());
  }

  private void node(Node node, double x, double axis) {
    if (node.role() == Role.SOURCE || node.role() == Role.APPLIANCE) {
      marks.add(new Disc(x, axis, HALF, 1.8, 1));
    } else {
      marks.add(Outline.box(x - HALF, axis - HALF, 2 * HALF, 2 * HALF, 1.8, 0.8));
    }
    below(label(node), x, axis);
  }

  private List<String> label(Node node) {
    List<String> lines = new ArrayList<>(kept(words.place(node), place - GAP / 2));
    words.water(node).ifPresent(water -> lines.addAll(wrapped(water, place - GAP / 2)));
    return lines;
  }

  private List<String> label(Leg one) {
    List<String> lines = new ArrayList<>();
    words.leg(one).forEach(words -> lines.addAll(wrapped(words, leg - GAP / 2)));
    return lines;
  }

  private static List<String> wrapped(String text, double width) {
    return Lettering.sans().wrap(text, SMALL, width);
  }

  private static List<String> kept(String text, double width) {
    List<String> lines = wrapped(text, width);
    if (lines.size() <= MOST_WORDS) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, MOST_WORDS));
    kept.set(MOST_WORDS - 1, kept.get(MOST_WORDS - 1) + "\u2026");
    return kept;
  }

  private void below(List<String> lines, double x, double axis) {
    double baseline = axis + HALF + SMALL + 2;
    for (String line : lines) {
      word(x, baseline, SMALL, line);
      baseline += SMALL * LINE;
    }
  }

  private void word(double x, double y, double sizePt, String text) {
    marks.add(new Words(x, y, sizePt, Anchor.MIDDLE, text));
  }

  /** How high the legs lie that come to where they meet. */
  private static final class Meetings {
    private final Map<String, List<Double>> axes = new HashMap<>();

    void add(Node node, double axis) {
      axes.computeIfAbsent(node.name(), name -> new ArrayList<>()).add(axis);
    }

    List<Double> at(Node node) {
      return axes.getOrDefault(node.name(), List.of());
    }
  }
}
