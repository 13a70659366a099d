package hosewright.line.assembly;

import hosewright.job.Job;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.SourceKind;
import hosewright.line.model.Role;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * A whole line put together: every part in its place, from source to appliance.
 *
 * @param lays one for each of the topology's legs
 * @param parts the parts of one line in order; {@link Placed#lines()} tells which stand side by
 *     side
 * @param joints every joint between them, and between like sections
 */
public record Assembly(
    Topology topology, List<Lay> lays, List<Placed> parts, List<MadeJoint> joints) {

  public Assembly {
    lays = List.copyOf(lays);
  }

  /** The lay of the leg that starts at the source. */
  public Lay lay() {
    return lays.get(0);
  }

  /** Sections to couple, of all lines together. */
  public int sections() {
    return sections(any -> true);
  }

  /** Sections of a sort to couple, of all lines together. */
  public int sections(Predicate<SectionOption> sort) {
    int sections = 0;
    for (int i = 0; i < lays.size(); i++) {
      LegShape leg = topology.legs().get(i);
      sections += leg.hose().sections(lays.get(i), sort) * leg.lines();
    }
    return sections;
  }

  /** The least that hose in the line is rated for at a temperature, psi; empty when none is. */
  public OptionalDouble hoseWorkingPsi(double temperatureF) {
    return parts().stream()
        .filter(part -> part.role() == Role.HOSE)
        .flatMapToDouble(part -> part.rating().workingPsiAt(temperatureF).stream())
        .min();
  }

  /** Hose between source and appliance, ft. */
  public double laidFt() {
    return lays.stream().mapToDouble(Lay::lengthFt).sum();
  }

  /**
   * A joint of the line.
   *
   * @param count like joints one after another, as between like sections
   * @param lines how many times the joint stands side by side
   */
  public record MadeJoint(
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
   * @param lays one for each leg
   * @param bridges one for each of {@link Topology#gaps}, in order
   */
  public static Assembly of(
      Job job, Topology topology, List<Lay> lays, List<List<Placed>> bridges) {
    List<Placed> parts = new ArrayList<>();
    Iterator<List<Placed>> bridge = bridges.iterator();
    parts.add(Placed.source(describe(job.source()), job.from(), topology.outlets()));
    addDevices(topology.before(), topology.outlets(), bridge, parts);
    for (int i = 0; i < topology.legs().size(); i++) {
      LegShape leg = topology.legs().get(i);
      parts.addAll(bridge.next());
      addLeg(leg, lays.get(i), bridge, parts);
      addDevices(leg.after(), leg.afterLines(), bridge, parts);
    }
    parts.addAll(bridge.next());
    parts.add(Placed.appliance(describe(job.appliance()), job.to(), job.appliances()));
    return new Assembly(topology, lays, List.copyOf(parts), joints(parts));
  }

  private static void addDevices(
      List<Bridge.Link> devices, int lines, Iterator<List<Placed>> bridge, List<Placed> parts) {
    for (Bridge.Link device : devices) {
      parts.addAll(bridge.next());
      parts.add(Placed.inLine(device, lines));
    }
  }

  /** The sections of a leg, the longest first, with what stands at couplings between them. */
  private static void addLeg(
      LegShape leg, Lay lay, Iterator<List<Placed>> bridge, List<Placed> parts) {
    List<Integer> couplings = leg.couplings(lay);
    int from = 0;
    for (int i = 0; i < couplings.size(); i++) {
      addSections(leg, lay, from, couplings.get(i), parts);
      addDevices(leg.midway().get(i).parts(), leg.lines(), bridge, parts);
      parts.addAll(bridge.next());
      from = couplings.get(i);
    }
    addSections(leg, lay, from, lay.sections(), parts);
  }

  private static void addSections(LegShape leg, Lay lay, int from, int to, List<Placed> parts) {
    HoseLine hose = leg.hose();
    int before = 0;
    for (int i = 0; i < hose.options().size(); i++) {
      int laid = lay.counts().get(i);
      int count = Math.min(to, before + laid) - Math.max(from, before);
      if (count > 0) {
        parts.add(Placed.sections(hose, hose.options().get(i), leg.reversed(), count, leg.lines()));
      }
      before += laid;
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

  public static String describe(SourceKind kind) {
    return switch (kind) {
      case HYDRANT -> "hydrant outlet";
      case PUMP -> "pump discharge";
      case PIPE -> "pipe stub";
      case TANK -> "tank outlet";
      case OUTLET -> "outlet";
      case OPEN_WATER -> "strainer in open water";
    };
  }

  public static String describe(ApplianceKind kind) {
    return switch (kind) {
      case NOZZLE -> "nozzle";
      case MONITOR -> "monitor";
      case SPRINKLER -> "sprinkler inlet";
      case TANK -> "tank inlet";
      case PIPE -> "pipe";
      case APPLIANCE -> "appliance";
    };
  }

  public int adapters() {
    return (int) parts.stream().filter(part -> part.role() == Role.ADAPTER).count();
  }

  /** Every part in order, in words: the same for no two lines that differ. */
  public String spelledOut() {
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

  public boolean hasPartToSource() {
    return parts.stream().anyMatch(part -> part.role() == Role.ADAPTER && part.item().isEmpty());
  }
}
