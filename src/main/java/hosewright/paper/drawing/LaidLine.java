package hosewright.paper.drawing;

import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The parts of a line in order, each with the joints in it and behind it. */
public final class LaidLine {

  /** What a part looks like when drawn. */
  public enum Shape {
    OWN,
    HOSE,
    REDUCER,
    FITTING
  }

  /** A joint with its number on the joints sheet. */
  record Numbered(int number, Joint joint) {
    String letter() {
      return JointWords.letter(joint.fit().verdict(), joint.fit().seal());
    }
  }

  /**
   * A part in its place.
   *
   * @param branches like lines that leave it to an appliance of their own each; 1 for most
   * @param inside the joint between like sections
   * @param behind the joint towards the appliance; empty on the last part
   * @param again whether the part was drawn before, and another line leaves it here
   */
  public record Step(
      Part part,
      int branches,
      Optional<Numbered> inside,
      Optional<Numbered> behind,
      boolean again) {

    public Shape shape() {
      return switch (part.role()) {
        case SOURCE, PUMP, APPLIANCE -> Shape.OWN;
        case HOSE -> Shape.HOSE;
        case ADAPTER, DEVICE, SPLIT, JOIN -> part.changesSize() ? Shape.REDUCER : Shape.FITTING;
      };
    }
  }

  private LaidLine() {}

  public static List<Step> of(LinePlan plan) {
    Layout layout = plan.layout();
    List<Step> steps = new ArrayList<>();
    int next = 0;
    for (Placed placed : placed(layout)) {
      Part part = placed.part();
      Optional<Numbered> inside = Optional.empty();
      if (part.isHose() && part.count() > 1) {
        inside = numbered(layout.joints(), next++);
      }
      Optional<Numbered> behind =
          part.role() == Role.APPLIANCE ? Optional.empty() : numbered(layout.joints(), next++);
      steps.add(new Step(part, branches(layout, part), inside, behind, placed.again()));
    }
    return List.copyOf(steps);
  }

  private record Placed(Part part, boolean again) {}

  /** The parts of each leg in turn; one that goes on elsewhere begins with what it leaves. */
  private static List<Placed> placed(Layout layout) {
    List<Placed> placed = new ArrayList<>();
    String at = "";
    for (Leg leg : layout.legs()) {
      if (!leg.begins().equals(at)) {
        placed.add(new Placed(layout.node(leg.begins()).part(), !placed.isEmpty()));
      }
      leg.parts().forEach(part -> placed.add(new Placed(part, false)));
      placed.add(new Placed(layout.node(leg.ends()).part(), false));
      at = leg.ends();
    }
    return placed;
  }

  private static int branches(Layout layout, Part part) {
    return layout.nodes().stream()
        .filter(node -> node.part() == part)
        .mapToInt(layout::branches)
        .findFirst()
        .orElse(1);
  }

  /** The part's item number, or where it comes from instead; empty when the plan says neither. */
  public static String origin(Part part) {
    return part.isBuyers() ? "(customer's own)" : part.item().orElse("(to be sourced)");
  }

  /** The same of a part in its place. */
  static String origin(Step step) {
    return step.again() ? "(the same as before)" : origin(step.part());
  }

  /** The place of the split that lines with an appliance each leave; empty where none does. */
  static Optional<Integer> dividesAt(List<Step> steps) {
    for (int place = 0; place < steps.size(); place++) {
      if (steps.get(place).branches() > 1) {
        return Optional.of(place);
      }
    }
    return Optional.empty();
  }

  private static Optional<Numbered> numbered(List<Joint> joints, int index) {
    return index < joints.size()
        ? Optional.of(new Numbered(index + 1, joints.get(index)))
        : Optional.empty();
  }
}
