package hosewright.line.plan;

import hosewright.catalogue.Item;
import hosewright.catalogue.Sort;
import hosewright.hydraulics.law.Physical;
import hosewright.line.assembly.Placed;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.search.Divider;
import hosewright.line.model.Joint;
import hosewright.line.model.Joint.Side;
import hosewright.line.model.Layout;
import hosewright.line.model.Layout.StationDevice;
import hosewright.line.model.Leg;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Part.Ends;
import hosewright.line.model.Part.Flow;
import hosewright.line.model.Part.Goods;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Writes a layout's legs down as one layout, each leg between the nodes it really lies between. */
final class TreeWriter {
  private static final String SOURCE = "source";

  private final FedLayout fed;
  private final Optional<Item> strainer;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Leg> legs = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<StationDevice> devices = new ArrayList<>();

  private TreeWriter(FedLayout fed, Optional<Item> strainer) {
    this.fed = fed;
    this.strainer = strainer;
  }

  /**
   * @param strainer what the suction leg begins at, where one draws
   */
  static Layout of(FedLayout fed, Optional<Item> strainer) {
    TreeWriter writer = new TreeWriter(fed, strainer);
    fed.legs().forEach(writer::add);
    return new Layout(writer.nodes, writer.legs, writer.joints, writer.devices);
  }

  private void add(FedLeg leg) {
    Layout alone =
        BoughtEnd.of(
            LayoutWriter.of(leg.job(), leg.line(), leg.hydraulics()),
            leg.laid().way().goods().wanted().pieces());
    int copies = leg.laid().asked().copies();
    Node first = alone.nodes().get(0);
    Node last = alone.nodes().get(alone.nodes().size() - 1);
    String begins = begins(leg);
    String ends = ends(leg);
    if (leg.before().isEmpty() && nodes.isEmpty()) {
      nodes.add(new Node(SOURCE, source(first.part()), outlets()));
    }
    for (Node node : alone.nodes()) {
      if (node != first && node != last) {
        nodes.add(new Node(inner(leg, node), node.part(), node.count() * copies));
      }
    }
    nodes.add(
        leg.laid().divider().isPresent()
            ? new Node(ends, divider(leg), 1)
            : new Node(ends, last.part(), last.count() * copies));
    for (Leg one : alone.legs()) {
      legs.add(
          new Leg(
              alone.legs().size() == 1 ? leg.name() : leg.name() + ", " + one.name(),
              one.begins().equals(first.name()) ? begins : inner(leg, alone.node(one.begins())),
              one.ends().equals(last.name()) ? ends : inner(leg, alone.node(one.ends())),
              one.lines() * copies,
              one.hose(),
              one == alone.legs().get(0) ? one.water().along(leg.stations()) : one.water(),
              one.parts()));
    }
    int lastJoint = alone.joints().size() - 1;
    for (int i = 0; i <= lastJoint; i++) {
      joints.add(joint(leg, alone, i == 0, i == lastJoint, alone.joints().get(i)));
    }
    devices.addAll(alone.devices());
  }

  /** Open water has no end of its own: what stands in it has. */
  private Part source(Part part) {
    return strainer
        .map(
            item ->
                new Part(
                    part.role(),
                    Owner.DEALER,
                    new Goods(Optional.of(item.number()), item.description()),
                    part.ends(),
                    part.count(),
                    part.section(),
                    part.flow()))
        .orElse(part);
  }

  private int outlets() {
    return fed.legs().stream()
        .filter(leg -> leg.before().isEmpty())
        .mapToInt(leg -> leg.laid().asked().copies())
        .sum();
  }

  private static String begins(FedLeg leg) {
    return leg.before().map(TreeWriter::ends).orElse(SOURCE);
  }

  /** What stands where a leg ends, by a name of its own. */
  private static String ends(FedLeg leg) {
    return leg.laid()
        .divider()
        .map(
            divider ->
                divider
                    .pump()
                    .map(Divider.Pump::name)
                    .orElseGet(() -> word(divider) + " behind " + leg.name()))
        .orElse("appliance of " + leg.name());
  }

  private static String inner(FedLeg leg, Node node) {
    return node.name() + " in " + leg.name();
  }

  private static String word(Divider divider) {
    if (divider.pump().isPresent()) {
      return "pump";
    }
    Sort sort = divider.item().map(Item::sort).orElse(Sort.WYE);
    return sort == Sort.WATER_THIEF ? "water thief" : sort == Sort.MANIFOLD ? "manifold" : "wye";
  }

  private static Part divider(FedLeg leg) {
    Placed part = leg.laid().divider().orElseThrow().towards(0);
    double takenPsi = 0;
    for (int i = 0; i < leg.laid().behind().size(); i++) {
      takenPsi = Math.max(takenPsi, leg.laid().dividerPsi(i));
    }
    double inletIn = part.portIn(part.upstream().orElseThrow());
    return new Part(
        part.role(),
        part.item().isPresent() ? Owner.DEALER : Owner.BUYER,
        new Goods(part.item().map(Item::number), part.description()),
        new Ends(part.upstream(), part.downstream()),
        1,
        Optional.empty(),
        new Flow(
            part.waterwayIn(),
            leg.hydraulics().calculated()
                ? Physical.velocityFtPerS(leg.job().flowGpm(), inletIn)
                : 0,
            leg.hydraulics().calculated() ? takenPsi : 0));
  }

  /** Where a joint is with what divides the water, that is named. */
  private static Joint joint(FedLeg leg, Layout alone, boolean first, boolean last, Joint joint) {
    Optional<FedLeg> before = first ? leg.before() : Optional.empty();
    Optional<FedLeg> behind =
        last ? Optional.of(leg).filter(one -> one.laid().divider().isPresent()) : Optional.empty();
    return new Joint(
        alone.legs().size() == 1 ? leg.name() : leg.name() + ", " + joint.leg(),
        before.map(one -> side(one, joint.upstream())).orElse(joint.upstream()),
        behind.map(one -> side(one, joint.downstream())).orElse(joint.downstream()),
        joint.count(),
        joint.fit());
  }

  private static Side side(FedLeg divided, Side side) {
    Divider divider = divided.laid().divider().orElseThrow();
    return new Side(
        side.end(),
        divider.pump().map(Divider.Pump::name).orElseGet(() -> word(divider)),
        divider.item().map(Item::number).orElse(""));
  }
}
