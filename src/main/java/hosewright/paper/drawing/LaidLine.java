package hosewright.paper.drawing;

import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
   * @param upstream the end that faces the source; empty where it is drawn for what leaves it
   * @param branches like lines that leave it to an appliance of their own each; 1 for most
   * @param inside the joint between like sections
   * @param behind the joint towards the appliance; empty where a leg ends
   * @param again whether the part was drawn before, and another leg leaves it or reaches it here
   * @param leg the leg that begins here, where unlike ones part or meet; empty on all other parts
   */
  public record Step(
      Part part,
      Optional<End> upstream,
      int branches,
      Optional<Numbered> inside,
      Optional<Numbered> behind,
      boolean again,
      Optional<Leg> leg) {

    public Shape shape() {
      return switch (part.role()) {
        case SOURCE, PUMP, APPLIANCE -> Shape.OWN;
        case HOSE -> Shape.HOSE;
        case ADAPTER, DEVICE, SPLIT, JOIN -> part.changesSize() ? Shape.REDUCER : Shape.FITTING;
      };
    }

    /** What a reader is told of a part that was drawn before. */
    String seenAgain() {
      return switch (part.role()) {
        case SOURCE, PUMP -> "another outlet of it";
        case APPLIANCE -> "another inlet of it";
        case HOSE, ADAPTER, DEVICE, SPLIT, JOIN -> "the same as before";
      };
    }

    /** The end that faces the appliance, of several outlets the one that the leg leaves by. */
    public Optional<End> downstream() {
      return behind
          .map(joint -> joint.joint().upstream().end())
          .or(() -> part.downstream().filter(end -> !part.role().isNode()));
    }
  }

  private LaidLine() {}

  public static List<Step> of(LinePlan plan) {
    Layout layout = plan.layout();
    List<Step> steps = new ArrayList<>();
    int next = 0;
    Optional<Numbered> before = Optional.empty();
    for (Placed placed : placed(layout)) {
      Part part = placed.part();
      Optional<End> upstream =
          before.map(joint -> joint.joint().downstream().end()).or(part::upstream);
      Optional<Numbered> inside = Optional.empty();
      if (part.isHose() && part.count() > 1) {
        inside = numbered(layout.joints(), next++);
      }
      before = placed.ends() ? Optional.empty() : numbered(layout.joints(), next++);
      steps.add(
          new Step(
              part,
              placed.leg().isPresent() ? Optional.empty() : upstream,
              layout.branched() ? 1 : branches(layout, part),
              inside,
              before,
              placed.again(),
              placed.leg()));
    }
    return List.copyOf(steps);
  }

  /** The steps of each leg, where unlike ones part or meet. */
  static List<List<Step>> byLeg(List<Step> steps) {
    List<List<Step>> legs = new ArrayList<>();
    for (Step step : steps) {
      if (step.leg().isPresent()) {
        legs.add(new ArrayList<>());
      }
      legs.get(legs.size() - 1).add(step);
    }
    return legs;
  }

  /**
   * A part in its place.
   *
   * @param ends whether nothing of the same leg follows
   */
  private record Placed(Part part, boolean again, boolean ends, Optional<Leg> leg) {}

  /** The parts of each leg in turn; where legs part or meet, each with what stands at its ends. */
  private static List<Placed> placed(Layout layout) {
    boolean apart = layout.branched();
    List<Placed> placed = new ArrayList<>();
    Set<String> shown = new HashSet<>();
    for (Leg leg : layout.legs()) {
      if (apart || placed.isEmpty()) {
        boolean again = !shown.add(leg.begins());
        Part begin = layout.node(leg.begins()).part();
        placed.add(new Placed(begin, again, false, Optional.of(leg).filter(one -> apart)));
      }
      leg.parts().forEach(part -> placed.add(new Placed(part, false, false, Optional.empty())));
      Node end = layout.node(leg.ends());
      boolean last = apart || end.role() == Role.APPLIANCE;
      placed.add(new Placed(end.part(), !shown.add(end.name()), last, Optional.empty()));
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
  public static String origin(Step step) {
    return step.again() ? "(" + step.seenAgain() + ")" : origin(step.part());
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
