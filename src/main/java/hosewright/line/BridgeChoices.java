package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The bridges over each gap, cheapest first, fetched in growing numbers and kept. */
final class BridgeChoices {
  private static final int FIRST_FETCH = 8;
  private static final int GROWTH = 4;

  private final BridgeGraph graph;
  private final PriceFloor floor;
  private final double flowGpm;
  private final Map<Frame.Gap, Fetched> known = new HashMap<>();

  /**
   * @param adapters what bridges may be made of
   * @param flowGpm flow of the whole line, or 0 where losses are not calculated
   */
  BridgeChoices(List<Item> adapters, PriceFloor floor, double flowGpm) {
    this.graph = new BridgeGraph(adapters);
    this.floor = floor;
    this.flowGpm = flowGpm;
  }

  /**
   * @param leastLossPsi the least that any bridge of the catalogue takes here, psi
   * @param complete whether there is no other bridge in the catalogue
   */
  record Fetched(
      List<Choice<List<Placed>>> choices, double leastLossPsi, int asked, boolean complete) {
    boolean none() {
      return choices.isEmpty();
    }
  }

  Fetched over(Frame.Gap gap) {
    Fetched fetched = known.get(gap);
    if (fetched == null) {
      fetched = fetch(gap, FIRST_FETCH, leastLossPsi(gap));
      known.put(gap, fetched);
    }
    return fetched;
  }

  /** Fetches more bridges over a gap, where there are more. */
  Fetched more(Frame.Gap gap) {
    Fetched now = over(gap);
    if (!now.complete()) {
      known.put(gap, fetch(gap, now.asked() * GROWTH, now.leastLossPsi()));
    }
    return known.get(gap);
  }

  private Fetched fetch(Frame.Gap gap, int most, double leastLossPsi) {
    List<Bridge> bridges = lightest(gap, link -> floor.ofOne(link.item()), most);
    List<Choice<List<Placed>>> choices = new ArrayList<>();
    for (Bridge bridge : bridges) {
      double cost = bridge.links().stream().mapToDouble(link -> floor.ofOne(link.item())).sum();
      choices.add(new Choice<>(placed(bridge, gap), cost * gap.lines(), lossPsi(bridge, gap)));
    }
    choices.sort(
        Comparator.<Choice<List<Placed>>>comparingDouble(Choice::leastCost)
            .thenComparingInt(choice -> choice.value().size()));
    return new Fetched(List.copyOf(choices), leastLossPsi, most, bridges.size() < most);
  }

  private double leastLossPsi(Frame.Gap gap) {
    return lightest(gap, link -> lossPsi(link, gap), 1).stream()
        .mapToDouble(bridge -> lossPsi(bridge, gap))
        .findFirst()
        .orElse(0);
  }

  private List<Bridge> lightest(Frame.Gap gap, ToDoubleFunction<Bridge.Link> weight, int most) {
    return graph.lightest(gap.from(), gap.to(), gap.fromPipe(), gap.toPipe(), weight, most);
  }

  private static List<Placed> placed(Bridge bridge, Frame.Gap gap) {
    return bridge.links().stream().map(link -> Placed.adapter(link, gap.lines())).toList();
  }

  private double lossPsi(Bridge bridge, Frame.Gap gap) {
    return bridge.links().stream().mapToDouble(link -> lossPsi(link, gap)).sum();
  }

  private double lossPsi(Bridge.Link link, Frame.Gap gap) {
    return flowGpm == 0
        ? 0
        : PlanHydraulics.fitting(Placed.adapter(link, gap.lines())).lossPsi(flowGpm);
  }

  /** The adapter that would fill a gap nothing in the catalogue fills. */
  static Fetched toSource(Frame.Gap gap, OptionalDouble ratedPsi) {
    End upstream = facing(gap.from());
    End downstream = facing(gap.to());
    List<Placed> parts = List.of(Placed.toSource(upstream, downstream, ratedPsi, gap.lines()));
    return new Fetched(List.of(new Choice<>(parts, 0, 0)), 0, 1, true);
  }

  /** The half that meets an end; a gasketed female is wanted with a swivel. */
  private static End facing(End end) {
    End half = end.opposite();
    boolean swivels = half.gender() == Gender.FEMALE && half.carriesGasket();
    return new End(half.sizeIn(), half.family(), half.gender(), swivels);
  }
}
