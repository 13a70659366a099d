package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.line.assembly.Assembly;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Span;
import hosewright.line.model.Joint;
import hosewright.line.model.Joint.Fit;
import hosewright.line.model.Joint.Side;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Writes the joints of a line down, each part in them named as shortly as tells it apart. */
final class JointWriter {
  private final Map<Placed, Integer> firstSections = new IdentityHashMap<>();
  private final Map<Placed, String> legs = new IdentityHashMap<>();

  private JointWriter(Assembly line) {
    for (Span span : Span.of(line)) {
      int sections = 0;
      for (Placed part : span.parts()) {
        legs.put(part, span.name());
        if (part.isHose()) {
          firstSections.put(part, sections + 1);
          sections += part.count();
        }
      }
      legs.put(span.ends(), span.name());
    }
  }

  static List<Joint> of(Assembly line) {
    JointWriter writer = new JointWriter(line);
    List<Joint> joints = new ArrayList<>();
    line.joints().forEach(joint -> joints.add(writer.joint(joint)));
    return joints;
  }

  private Joint joint(Assembly.MadeJoint joint) {
    Placed up = joint.upstreamPart();
    Placed down = joint.downstreamPart();
    boolean within = up == down;
    int last = up.count();
    return new Joint(
        legs.get(down),
        new Side(
            joint.upstream(), within ? sections(up, 1, last - 1) : name(up, last), up.itemNumber()),
        new Side(
            joint.downstream(),
            within ? sections(down, 2, last) : name(down, 1),
            down.itemNumber()),
        joint.count(),
        Fit.of(joint.verdict()));
  }

  /**
   * A part in as few words as tell it apart.
   *
   * @param which of like sections, 1 for the first
   */
  private String name(Placed part, int which) {
    return switch (part.role()) {
      case SOURCE, PUMP, APPLIANCE -> part.description();
      case HOSE -> sections(part, which, which);
      case ADAPTER ->
          part.item().isEmpty()
              ? "adapter to be sourced"
              : part.upstream().orElseThrow().sizeIn() == part.downstream().orElseThrow().sizeIn()
                  ? "adapter"
                  : "reducer";
      case DEVICE, SPLIT, JOIN -> part.item().map(JointWriter::kind).orElse("fitting");
    };
  }

  private static String kind(Item item) {
    return switch (item.kind()) {
      case BACKFLOW -> "backflow preventer";
      default -> item.kind().word();
    };
  }

  private String sections(Placed part, int from, int to) {
    int before = firstSections.get(part) - 1;
    return from == to
        ? "section " + (before + from)
        : "section " + (before + from) + "-" + (before + to);
  }
}
