package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** What is no network is refused in words that name the node or the link. */
class BadNetworksTest {
  private static final Node SOURCE = new Node.Source("hydrant", new FixedPressure(100));
  private static final Node WYE = new Node.Junction("wye");
  private static final Node END = new Node.End("nozzle", new Demand.KFactor(10));

  private static Link leg(String name, String begins, String ends) {
    return new Link(name, begins, ends, hose(0));
  }

  private static List<LineElement> hose(double riseFt) {
    return List.of(new HoseLeg("hose", new CoefficientLaw(2), 100, riseFt, 2.5, 1, 1));
  }

  private static void refused(ThrowingCallable made, String... words) {
    assertThatThrownBy(made).isInstanceOf(BadInputException.class).hasMessageContainingAll(words);
  }

  private static ThrowingCallable network(List<Node> nodes, Link... links) {
    return () -> new Network(nodes, List.of(links));
  }

  @Test
  void a_ring() {
    refused(
        network(
            List.of(SOURCE, WYE, new Node.Junction("siamese"), END),
            leg("yard", "hydrant", "wye"),
            leg("out", "wye", "siamese"),
            leg("back", "siamese", "wye"),
            leg("last", "siamese", "nozzle")),
        "ring",
        "out",
        "back");
  }

  @Test
  void a_place_that_nothing_feeds() {
    refused(
        network(
            List.of(SOURCE, WYE, END, new Node.End("roof", new Demand.KFactor(5))),
            leg("yard", "hydrant", "nozzle"),
            leg("stair", "wye", "roof")),
        "'wye'",
        "feeds");
  }

  @Test
  void a_place_that_leads_nowhere() {
    refused(
        network(
            List.of(SOURCE, WYE, END),
            leg("yard", "hydrant", "nozzle"),
            leg("stair", "hydrant", "wye")),
        "'wye'",
        "nowhere");
  }

  @Test
  void a_pump_without_intake() {
    refused(
        network(
            List.of(SOURCE, new Node.Pump("relay", new FixedPressure(100)), END),
            leg("yard", "hydrant", "nozzle"),
            leg("stair", "relay", "nozzle")),
        "'relay'",
        "intake");
  }

  @Test
  void a_leg_that_goes_on_behind_an_end() {
    refused(
        network(
            List.of(SOURCE, END, new Node.End("roof", new Demand.KFactor(5))),
            leg("yard", "hydrant", "nozzle"),
            leg("stair", "nozzle", "roof")),
        "'nozzle'",
        "no leg begins there");
  }

  @Test
  void two_places_or_two_legs_of_one_name() {
    refused(
        network(List.of(SOURCE, END, END), leg("yard", "hydrant", "nozzle")), "'nozzle'", "two");
    refused(
        network(
            List.of(SOURCE, END),
            leg("yard", "hydrant", "nozzle"),
            leg("yard", "hydrant", "nozzle")),
        "'yard'",
        "two");
  }

  @Test
  void a_leg_to_no_known_place_with_the_nearest_that_is() {
    refused(
        network(List.of(SOURCE, END), leg("yard", "hidrant", "nozzle")),
        "yard begins",
        "'hidrant'",
        "Did you mean 'hydrant'?");
  }

  @Test
  void no_source() {
    refused(network(List.of(END, WYE), leg("yard", "wye", "nozzle")), "source is missing");
  }

  @Test
  void lines_that_meet_at_two_heights() {
    refused(
        network(
            List.of(SOURCE, WYE, END),
            leg("level", "hydrant", "wye"),
            new Link("steep", "hydrant", "wye", hose(9)),
            leg("last", "wye", "nozzle")),
        "height of wye",
        "steep comes to 9 ft",
        "level comes to 0 ft");
  }

  @Test
  void copies_that_do_not_each_have_an_end() {
    refused(
        network(
            List.of(SOURCE, WYE, END),
            new Link("yard", "hydrant", "wye", hose(0), 1, 2),
            leg("last", "wye", "nozzle")),
        "copies of yard");
  }

  @Test
  void a_pump_in_the_middle_of_a_leg() {
    List<LineElement> elements = new ArrayList<>(hose(0));
    elements.add(new RelayPump("booster", new FixedPressure(50)));
    refused(() -> new Link("yard", "hydrant", "nozzle", elements), "yard", "'booster'");
  }

  @Test
  void a_question_about_what_is_no_end_or_has_no_flow_or_supply() {
    Network network = new Network(List.of(SOURCE, END), List.of(leg("yard", "hydrant", "nozzle")));
    refused(() -> NetworkHydraulics.required(network, Map.of("nozzel", 5.0)), "mean 'nozzle'?");
    refused(() -> NetworkHydraulics.required(network, Map.of()), "flow of nozzle");
    Network unknown =
        new Network(
            List.of(Node.Source.unknown("hydrant"), END),
            List.of(leg("yard", "hydrant", "nozzle")));
    refused(() -> NetworkHydraulics.arriving(unknown), "supply of hydrant");
  }

  @Test
  void a_tip_larger_than_the_hose_before_it() {
    Network network =
        new Network(
            List.of(SOURCE, new Node.End("tip", new Demand.SmoothBore(3))),
            List.of(leg("yard", "hydrant", "tip")));
    refused(() -> NetworkHydraulics.arriving(network), "tip", "2.5 in");
  }
}
