package hosewright.line;

import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/**
 * A whole line put together: every part in its place, from source to appliance.
 *
 * @param parts the parts of one line in order; {@link Placed#lines()} tells which stand side by
 *     side
 * @param joints every joint between them, and between like sections
 */
record Assembly(Frame frame, Lay lay, List<Placed> parts, List<MadeJoint> joints) {

  /**
   * A joint of the line.
   *
   * @param count like joints one after another, as between like sections
   * @param lines how many times the joint stands side by side
   */
  record MadeJoint(
      Placed upstreamPart,
      Placed downstreamPart,
      End upstream,
      End downstream,
      int count,
      int lines,
      Verdict verdict) {}

  /**
   * Puts a line together.
   *
   * @param bridges one for each of {@link Frame#gaps}, in order
   */
  static Assembly of(Job job, Frame frame, Lay lay, List<List<Placed>> bridges) {
    List<Placed> parts = new ArrayList<>();
    Iterator<List<Placed>> bridge = bridges.iterator();
    parts.add(Placed.source(describe(job.source()), job.from()));
    for (Bridge.Link part : frame.before()) {
      parts.addAll(bridge.next());
      parts.add(Placed.fitting(Placed.Role.DEVICE, part, 1));
    }
    parts.addAll(bridge.next());
    addSections(frame, lay, parts);
    for (Bridge.Link part : frame.after()) {
      parts.addAll(bridge.next());
      parts.add(Placed.fitting(Placed.Role.DEVICE, part, 1));
    }
    parts.addAll(bridge.next());
    parts.add(Placed.appliance(describe(job.appliance()), job.to()));
    return new Assembly(frame, lay, List.copyOf(parts), joints(parts));
  }

  private static void addSections(Frame frame, Lay lay, List<Placed> parts) {
    HoseLine hose = frame.hose();
    for (int i = 0; i < hose.options().size(); i++) {
      int count = lay.counts().get(i);
      if (count > 0) {
        parts.add(
            Placed.sections(hose, hose.options().get(i), frame.reversed(), count, frame.lines()));
      }
    }
  }

  private static List<MadeJoint> joints(List<Placed> parts) {
    List<MadeJoint> joints = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      Placed part = parts.get(i);
      if (part.count() > 1) {
        joints.add(joint(part, part, part.count() - 1));
      }
      if (i + 1 < parts.size()) {
        joints.add(joint(part, parts.get(i + 1), 1));
      }
    }
    return List.copyOf(joints);
  }

  private static MadeJoint joint(Placed upstream, Placed downstream, int count) {
    End up = upstream.downstream().orElseThrow();
    End down = downstream.upstream().orElseThrow();
    return new MadeJoint(
        upstream,
        downstream,
        up,
        down,
        count,
        Math.max(upstream.lines(), downstream.lines()),
        Mating.of(up, down));
  }

  static String describe(SourceKind kind) {
    return switch (kind) {
      case HYDRANT -> "hydrant outlet";
      case PUMP -> "pump discharge";
      case PIPE -> "pipe stub";
      case TANK -> "tank outlet";
      case OUTLET -> "outlet";
    };
  }

  static String describe(ApplianceKind kind) {
    return switch (kind) {
      case NOZZLE -> "nozzle";
      case MONITOR -> "monitor";
      case SPRINKLER -> "sprinkler inlet";
      case TANK -> "tank inlet";
      case PIPE -> "pipe";
      case APPLIANCE -> "appliance";
    };
  }

  int adapters() {
    return (int) parts.stream().filter(part -> part.role() == Placed.Role.ADAPTER).count();
  }

  /** Every part in order, in words: the same for no two lines that differ. */
  String spelledOut() {
    StringBuilder words = new StringBuilder();
    for (Placed part : parts) {
      words
          .append(part.count())
          .append(' ')
          .append(part.itemNumber())
          .append(' ')
          .append(part.description())
          .append(' ')
          .append(part.upstream())
          .append(part.downstream())
          .append('\n');
    }
    return words.toString();
  }

  boolean hasPartToSource() {
    return parts.stream()
        .anyMatch(part -> part.role() == Placed.Role.ADAPTER && part.item().isEmpty());
  }
}
