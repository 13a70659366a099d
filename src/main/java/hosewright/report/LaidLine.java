package hosewright.report;

import hosewright.line.LinePlan;
import hosewright.line.LinePlan.Joint;
import hosewright.line.LinePlan.RunPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The parts of a line in order, each with the joints in it and behind it. */
final class LaidLine {

  /** What a part looks like when drawn. */
  enum Shape {
    OWN,
    HOSE,
    REDUCER,
    FITTING
  }

  /** A joint with its number on the joints sheet. */
  record Numbered(int number, Joint joint) {
    String letter() {
      return JointWords.letter(joint.verdict(), joint.seal());
    }
  }

  /**
   * @param inside the joints between like parts coupled one after another
   * @param behind the joint to the next part
   */
  record Step(RunPart part, Shape shape, Optional<Numbered> inside, Optional<Numbered> behind) {}

  private LaidLine() {}

  static List<Step> of(LinePlan plan) {
    List<Step> steps = new ArrayList<>();
    int next = 0;
    for (RunPart part : plan.run()) {
      Optional<Numbered> inside = Optional.empty();
      if (part.count() > 1 && isInside(part, plan.joints(), next)) {
        inside = numbered(plan.joints(), next++);
      }
      boolean last = steps.size() == plan.run().size() - 1;
      Optional<Numbered> behind = last ? Optional.empty() : numbered(plan.joints(), next++);
      steps.add(new Step(part, shape(plan, part), inside, behind));
    }
    return List.copyOf(steps);
  }

  /** Whether the customer has the part already: what the line starts or ends at. */
  private static boolean isOwn(RunPart part) {
    return part.item().isEmpty() && (part.upstream().isEmpty() || part.downstream().isEmpty());
  }

  /** The part's item number, or where it comes from instead; empty when the plan says neither. */
  static String origin(RunPart part) {
    if (isOwn(part) || part.item().isEmpty() && part.description().startsWith("customer's own")) {
      return "(customer's own)";
    }
    boolean madeUp = part.item().isEmpty() && part.description().contains("made up");
    return madeUp ? "(made up)" : part.item();
  }

  private static boolean isInside(RunPart part, List<Joint> joints, int index) {
    return index < joints.size() && joints.get(index).count() == part.count() - 1;
  }

  private static Optional<Numbered> numbered(List<Joint> joints, int index) {
    return index < joints.size()
        ? Optional.of(new Numbered(index + 1, joints.get(index)))
        : Optional.empty();
  }

  private static Shape shape(LinePlan plan, RunPart part) {
    if (isOwn(part)) {
      return Shape.OWN;
    }
    boolean adapter = plan.adapters().stream().anyMatch(a -> a.item().equals(part.item()));
    String words = part.description().toLowerCase(Locale.ROOT);
    if (!adapter && (words.contains("hose") || words.contains("section made up"))) {
      return Shape.HOSE;
    }
    boolean changesSize =
        part.upstream().isPresent()
            && part.downstream().isPresent()
            && part.upstream().get().sizeIn() != part.downstream().get().sizeIn();
    return changesSize ? Shape.REDUCER : Shape.FITTING;
  }
}
