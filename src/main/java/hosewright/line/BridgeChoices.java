package hosewright.line;

import hosewright.catalogue.NetPrice;
import hosewright.thread.End;
import hosewright.thread.Gender;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The bridges over each gap, cheapest first, fetched in growing numbers and kept. */
final class BridgeChoices {
  private static final int FIRST_FETCH = 8;
  private static final int GROWTH = 4;

  private final BridgeGraph graph;
  private final NetPrice prices;
  private final Map<Frame.Gap, Fetched> known = new HashMap<>();

  BridgeChoices(BridgeGraph graph, NetPrice prices) {
    this.graph = graph;
    this.prices = prices;
  }

  /**
   * @param complete whether there is no other bridge in the catalogue
   */
  record Fetched(List<Choice<List<Placed>>> choices, int asked, boolean complete) {
    boolean none() {
      return choices.isEmpty();
    }
  }

  Fetched over(Frame.Gap gap) {
    return known.computeIfAbsent(gap, g -> fetch(g, FIRST_FETCH));
  }

  /** Fetches more bridges over a gap, where there are more. */
  Fetched more(Frame.Gap gap) {
    Fetched now = over(gap);
    if (!now.complete()) {
      known.put(gap, fetch(gap, now.asked() * GROWTH));
    }
    return known.get(gap);
  }

  private Fetched fetch(Frame.Gap gap, int most) {
    List<Bridge> bridges =
        graph.cheapest(gap.from(), gap.to(), gap.fromPipe(), gap.toPipe(), most);
    List<Choice<List<Placed>>> choices = new ArrayList<>();
    for (Bridge bridge : bridges) {
      List<Placed> parts =
          bridge.links().stream().map(link -> Placed.adapter(link, gap.lines())).toList();
      choices.add(new Choice<>(parts, leastCost(bridge) * gap.lines()));
    }
    choices.sort(
        Comparator.<Choice<List<Placed>>>comparingDouble(Choice::leastCost)
            .thenComparingInt(choice -> choice.value().size()));
    return new Fetched(List.copyOf(choices), most, bridges.size() < most);
  }

  private double leastCost(Bridge bridge) {
    return bridge.links().stream()
        .mapToDouble(link -> Basket.leastCost(link.item(), 1, prices))
        .sum();
  }

  /** The adapter that would fill a gap nothing in the catalogue fills. */
  static Fetched toSource(Frame.Gap gap) {
    End upstream = facing(gap.from());
    End downstream = facing(gap.to());
    List<Placed> parts = List.of(Placed.toSource(upstream, downstream, gap.lines()));
    return new Fetched(List.of(new Choice<>(parts, 0)), 1, true);
  }

  /** The half that meets an end; a gasketed female is wanted with a swivel. */
  private static End facing(End end) {
    End half = end.opposite();
    boolean swivels = half.gender() == Gender.FEMALE && half.carriesGasket();
    return new End(half.sizeIn(), half.family(), half.gender(), swivels);
  }
}
