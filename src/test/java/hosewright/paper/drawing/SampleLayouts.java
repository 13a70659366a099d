package hosewright.paper.drawing;

import hosewright.line.model.Bill;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Hydraulics.Station;
import hosewright.line.model.Joint;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Node;
import hosewright.line.model.Owner;
import hosewright.line.model.Part;
import hosewright.line.model.Role;
import hosewright.thread.End;
import hosewright.thread.Mating;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Layouts whose legs part and meet, written down by hand. */
final class SampleLayouts {
  private static final End MALE = End.parse("2.5 NH male");
  private static final End FEMALE = End.parse("2.5 NH female swivel");

  private SampleLayouts() {}

  /** A supply line, a wye, a low and a high line behind it. */
  static LinePlan tree() {
    return plan(
        List.of(
            node("source", Role.SOURCE, "pump discharge"),
            node("wye", Role.SPLIT, "Gated wye"),
            node("low end", Role.APPLIANCE, "low nozzle"),
            node("high end", Role.APPLIANCE, "high nozzle")),
        List.of(
            leg("yard", "source", "wye", 100, 0),
            leg("low", "wye", "low end", 100, 0),
            leg("high", "wye", "high end", 150, 30)));
  }

  /** Two lines of unlike length into a siamese, and a monitor behind it. */
  static LinePlan joined() {
    return plan(
        List.of(
            node("source", Role.SOURCE, "pump discharge"),
            node("siamese", Role.JOIN, "Siamese"),
            node("monitor end", Role.APPLIANCE, "monitor")),
        List.of(
            leg("left", "source", "siamese", 300, 0),
            leg("right", "source", "siamese", 350, 0),
            leg("last", "siamese", "monitor end", 50, 0)));
  }

  /** One leg behind another, without any that leave. */
  static LinePlan chain() {
    return plan(
        List.of(
            node("source", Role.SOURCE, "pump discharge"),
            node("wye", Role.SPLIT, "Gated wye"),
            node("end", Role.APPLIANCE, "nozzle")),
        List.of(leg("first", "source", "wye", 100, 0), leg("second", "wye", "end", 100, 0)));
  }

  private static Node node(String name, Role role, String description) {
    boolean buyers = role == Role.SOURCE || role == Role.APPLIANCE;
    Part part =
        new Part(
            role,
            buyers ? Owner.BUYER : Owner.DEALER,
            new Part.Goods(
                buyers ? Optional.empty() : Optional.of("N-" + description.toUpperCase()),
                description),
            new Part.Ends(Optional.of(FEMALE), Optional.of(MALE)),
            1,
            Optional.empty(),
            Part.Flow.NONE);
    return new Node(name, part, 1);
  }

  private static Leg leg(String name, String begins, String ends, double lengthFt, double riseFt) {
    Part hose =
        new Part(
            Role.HOSE,
            Owner.DEALER,
            new Part.Goods(Optional.of("HOSE-" + name), "Hose of " + name),
            new Part.Ends(Optional.of(FEMALE), Optional.of(MALE)),
            1,
            Optional.of(new Part.Section(lengthFt, Optional.empty())),
            Part.Flow.NONE);
    return new Leg(
        name,
        begins,
        ends,
        1,
        Optional.of(new Leg.Hose(2.5, 2.5, "Sample", 2.5, lengthFt, lengthFt)),
        new Leg.Water(250, 100, 90, Leg.Friction.NONE, 16, 10)
            .along(
                List.of(
                    new Station("begins " + name, 0, 0, 100, 120),
                    new Station("ends " + name, lengthFt, riseFt, 90, 120))),
        List.of(hose));
  }

  private static LinePlan plan(List<Node> nodes, List<Leg> legs) {
    List<Joint> joints =
        legs.stream()
            .flatMap(leg -> List.of(joint(leg, "up"), joint(leg, "down")).stream())
            .toList();
    Hydraulics water = Hydraulics.notCalculated("by hand");
    return new LinePlan(
        new LinePlan.Asked(
            "A layout.",
            250,
            50,
            List.of(),
            legs.stream()
                .filter(leg -> leg.ends().endsWith("end"))
                .map(leg -> new LinePlan.OfLeg(leg.name(), 250, 60, Optional.empty()))
                .toList()),
        new LinePlan.Answer(true, Optional.empty(), List.of(), List.of()),
        new Layout(nodes, legs, joints, List.of()),
        new Hydraulics(
            water.pressures(),
            water.losses(),
            water.friction(),
            water.forces(),
            water.filled(),
            legs.get(0).water().profile(),
            List.of()),
        List.of(),
        new Bill(
            List.of(),
            List.of(),
            Money.zero(CurrencyUnit.USD),
            LocalDate.of(2026, 11, 2),
            Bill.Gaskets.NONE,
            List.of(),
            List.of()),
        new LinePlan.Weighed(List.of(), new LinePlan.Searched(0, 0, 0, 0)));
  }

  private static Joint joint(Leg leg, String which) {
    return new Joint(
        leg.name(),
        new Joint.Side(MALE, which, ""),
        new Joint.Side(FEMALE, which, ""),
        1,
        Joint.Fit.of(Mating.of(MALE, FEMALE)));
  }
}
