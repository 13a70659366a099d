package hosewright.paper.drawing;

import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.Course.Branch;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.text.WordUtils;

/** The drawing of a layout in letters: each leg under the place it leaves. */
final class CourseText {
  private static final String DOWN = "  |   ";
  private static final String LEAVES = "  |-- ";
  private static final String BLANK = "      ";
  private static final int NARROWEST = 20;

  private final CourseWords words;
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private CourseText(CourseWords words, int width) {
    this.words = words;
    this.width = width;
  }

  static String of(LinePlan plan, UnitSystem units, int width) {
    CourseText text = new CourseText(new CourseWords(plan, units), width);
    Course.of(plan.layout()).forEach(course -> text.course(course, "", false));
    return String.join("\n", text.lines) + "\n";
  }

  private void course(Course course, String margin, boolean met) {
    place(course.at(), margin, met);
    List<Branch> branches = course.branches();
    boolean alone = branches.size() == 1;
    for (int i = 0; i < branches.size(); i++) {
      boolean goesOn = i < branches.size() - 1 || !course.meeting().isEmpty();
      branch(branches.get(i), margin, alone, goesOn);
    }
    for (Course meeting : course.meeting()) {
      course(meeting, margin, true);
    }
  }

  private void place(Node node, String margin, boolean met) {
    String meeting = met ? ", where " + words.meeting(node) : "";
    String water = words.water(node).map(one -> ": " + one).orElse("");
    add(margin, sign(node), words.place(node) + meeting + water, BLANK);
  }

  private static String sign(Node node) {
    return switch (node.role()) {
      case SPLIT -> "[ < ] ";
      case JOIN -> "[ > ] ";
      default -> "[ o ] ";
    };
  }

  private void branch(Branch branch, String margin, boolean alone, boolean goesOn) {
    String meets = branch.end().isPresent() ? "" : "; " + words.meets(branch.leg());
    String leg = branch.leg().name() + ": " + String.join(", ", words.leg(branch.leg())) + meets;
    add(margin, alone ? DOWN : LEAVES, leg, goesOn || alone ? DOWN : BLANK);
    branch.end().ifPresent(end -> course(end, alone ? margin : margin + inner(goesOn), false));
  }

  private static String inner(boolean goesOn) {
    return goesOn ? DOWN : BLANK;
  }

  private void add(String margin, String sign, String text, String under) {
    int room = Math.max(NARROWEST, width - margin.length() - sign.length());
    String[] wrapped = WordUtils.wrap(text, room, "\n", true).split("\n");
    for (int i = 0; i < wrapped.length; i++) {
      lines.add((margin + (i == 0 ? sign : under) + wrapped[i]).stripTrailing());
    }
  }
}
