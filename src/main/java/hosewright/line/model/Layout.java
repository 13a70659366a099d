package hosewright.line.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Where hose runs, divides, joins and ends.
 *
 * @param nodes source first
 * @param legs in the order water meets them; each begins at the node before it
 * @param joints of one line of each leg, source first
 * @param devices what stands at couplings between sections, nearest to the source first
 */
public record Layout(
    List<Node> nodes, List<Leg> legs, List<Joint> joints, List<StationDevice> devices) {
  /** Nothing is laid. */
  public static final Layout NONE = new Layout(List.of(), List.of(), List.of(), List.of());

  public Layout {
    nodes = List.copyOf(nodes);
    legs = List.copyOf(legs);
    joints = List.copyOf(joints);
    devices = List.copyOf(devices);
  }

  /**
   * A device between two sections.
   *
   * @param askedFt station it was asked for, ft of hose from the source
   * @param atFt station of the coupling it stands at
   */
  public record StationDevice(String item, double askedFt, double atFt) {}

  /** Every part of one line of each leg, and what stands at the nodes, source first. */
  public List<Part> run() {
    List<Part> run = new ArrayList<>();
    Set<String> passed = new HashSet<>();
    for (Leg leg : legs) {
      if (passed.add(leg.begins())) {
        run.add(node(leg.begins()).part());
      }
      run.addAll(leg.parts());
      if (passed.add(leg.ends())) {
        run.add(node(leg.ends()).part());
      }
    }
    return run;
  }

  /**
   * The node of a name.
   *
   * @throws IllegalArgumentException where there is none
   */
  public Node node(String name) {
    return nodes.stream()
        .filter(node -> node.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no node " + name));
  }

  /** Legs in which hose is laid, source first. */
  public List<Leg> hoseLegs() {
    return legs.stream().filter(leg -> leg.hose().isPresent()).toList();
  }

  /** The hose nearest to the source; empty where nothing is laid. */
  public Optional<Leg> firstHoseLeg() {
    return hoseLegs().stream().findFirst();
  }

  /** How many appliances are fed. */
  public int appliances() {
    return nodes.stream().filter(node -> node.role() == Role.APPLIANCE).mapToInt(Node::count).sum();
  }

  /** Whether unlike lines end at appliances of their own, or a pump stands between two. */
  public boolean endsApart() {
    return nodes.stream().filter(node -> node.role() == Role.APPLIANCE).count() > 1
        || nodes.stream().anyMatch(node -> node.role() == Role.PUMP);
  }

  /** Whether its water is drawn: what stands in it is bought with the line. */
  public boolean draws() {
    return nodes.stream().anyMatch(node -> node.role() == Role.SOURCE && !node.part().isBuyers());
  }

  /** How many outlets of the source a line starts from. */
  public int outlets() {
    return nodes.stream().filter(node -> node.role() == Role.SOURCE).mapToInt(Node::count).sum();
  }

  /** The legs behind a node, one for each line that leaves it. */
  public List<Leg> behind(Node node) {
    return legs.stream().filter(leg -> leg.begins().equals(node.name())).toList();
  }

  /** The legs that end at a node, one for each line that reaches it. */
  public List<Leg> into(Node node) {
    return legs.stream().filter(leg -> leg.ends().equals(node.name())).toList();
  }

  /**
   * Whether unlike legs begin or end at one node, so that parts one after another do not show it.
   */
  public boolean branched() {
    return nodes.stream().anyMatch(node -> behind(node).size() > 1 || into(node).size() > 1);
  }

  /** Like lines that leave a split to an appliance of their own each; 1 for any other node. */
  public int branches(Node node) {
    return behind(node).stream()
        .filter(leg -> node.role() == Role.SPLIT)
        .filter(leg -> node(leg.ends()).role() == Role.APPLIANCE)
        .mapToInt(Leg::lines)
        .findFirst()
        .orElse(1);
  }

  /** The split whose lines each have an appliance; empty where one appliance is fed. */
  public Optional<Node> dividesAt() {
    return nodes.stream().filter(node -> branches(node) > 1).findFirst();
  }

  /** How many like lines lie side by side from the source on, to one appliance. */
  public int abreast() {
    Optional<Leg> branch = branchLeg();
    return legs.stream()
        .filter(leg -> branch.isEmpty() || !branch.get().equals(leg))
        .mapToInt(Leg::lines)
        .max()
        .orElse(1);
  }

  /** How many lines lie side by side, and between which parts, in words without a full stop. */
  public String sideBySide() {
    String from =
        nodes.stream().anyMatch(node -> node.role() == Role.SPLIT) ? "the wye" : "the source";
    return nodes.stream().noneMatch(node -> node.role() == Role.JOIN)
        ? abreast() + " lines like this one"
        : "From " + from + " to the siamese lie " + abreast() + " such lines";
  }

  /** The hose laid from a split to an appliance of its own each; empty where one is fed. */
  public Optional<Leg> branchLeg() {
    return dividesAt().flatMap(node -> behind(node).stream().findFirst());
  }

  /** Sections laid in all. */
  public int sectionsInAll() {
    return legs.stream()
        .flatMap(leg -> leg.sectionCounts().stream())
        .mapToInt(SectionCount::count)
        .sum();
  }

  /** Sections laid that the buyer has. */
  public List<SectionCount> ownSections() {
    return legs.stream().flatMap(leg -> leg.ownSectionCounts().stream()).toList();
  }

  /** How many adapters, devices, splits and joins stand in all lines. */
  public int fittings() {
    int atNodes =
        nodes.stream().filter(node -> node.role().isFitting()).mapToInt(Node::count).sum();
    return atNodes
        + legs.stream()
            .mapToInt(
                leg ->
                    leg.lines()
                        * (int) leg.parts().stream().filter(p -> p.role().isFitting()).count())
            .sum();
  }

  /** What stands where between sections, in sentences without a full stop. */
  public List<String> stations() {
    return devices.stream()
        .map(
            device ->
                String.format(
                    Locale.ROOT,
                    "%s stands %.0f ft along the hose, at the coupling nearest to the %.0f ft asked"
                        + " for",
                    device.item(),
                    device.atFt(),
                    device.askedFt()))
        .toList();
  }

  /**
   * What a list of the parts of one line does not say by itself, in sentences with a full stop: how
   * often it is laid, and what stands where.
   */
  public List<String> remarks() {
    List<String> remarks = new ArrayList<>();
    if (branched()) {
      legs.stream()
          .filter(leg -> leg.lines() > 1)
          .map(leg -> leg.lines() + " such lines are laid of leg " + leg.name() + ": one is shown.")
          .forEach(remarks::add);
      stations().forEach(sentence -> remarks.add(sentence + "."));
      return remarks;
    }
    if (abreast() > 1) {
      remarks.add(sideBySide() + (outlets() > 1 ? ", one from each outlet." : "."));
    }
    dividesAt()
        .ifPresent(
            node ->
                remarks.add(
                    "Behind the wye, part "
                        + (run().indexOf(node.part()) + 1)
                        + ", all parts are needed "
                        + branches(node)
                        + " times: one of "
                        + branches(node)
                        + " like attack lines is shown."));
    stations().forEach(sentence -> remarks.add(sentence + "."));
    return remarks;
  }
}
