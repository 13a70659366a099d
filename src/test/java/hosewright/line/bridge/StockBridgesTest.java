package hosewright.line.bridge;

import static hosewright.thread.Verdict.Outcome.JAMS;
import static hosewright.thread.Verdict.Outcome.NO;
import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.line.assembly.Bridge;
import hosewright.line.bridge.StockBridges.Way;
import hosewright.line.plan.DemoCatalogue;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.joda.money.CurrencyUnit;
import org.junit.jupiter.api.Test;

final class StockBridgesTest {
  private static final StockBridges STOCK =
      new StockBridges(
          DemoCatalogue.get(),
          DemoCatalogue.get().listPricesOn(DemoCatalogue.DATE),
          CurrencyUnit.USD);

  @Test
  void every_chain_holds_together_and_is_permanent_only_at_its_two_ends() {
    long seed = 1960;
    for (End[] pair : pairs(seed)) {
      for (Way way : STOCK.cheapest(pair[0], pair[1], 3)) {
        List<Verdict> joints = joints(pair[0], pair[1], way);
        for (int i = 0; i < joints.size(); i++) {
          boolean inside = i > 0 && i < joints.size() - 1;
          if (!joints.get(i).mates() || (inside && !joints.get(i).removable())) {
            throw new AssertionError("seed " + seed + ": " + pair[0] + " to " + pair[1] + way);
          }
        }
        assertThat(way.links()).hasSizeLessThanOrEqualTo(3);
      }
    }
  }

  @Test
  void removable_ways_go_before_permanent_ones_and_cheap_ones_before_dear() {
    long seed = 1963;
    for (End[] pair : pairs(seed)) {
      List<Way> ways = STOCK.cheapest(pair[0], pair[1], 4);
      for (int i = 1; i < ways.size(); i++) {
        boolean before = removable(pair, ways.get(i - 1));
        boolean now = removable(pair, ways.get(i));
        assertThat(before || !now).as("seed %d: %s to %s", seed, pair[0], pair[1]).isTrue();
        if (before == now && !ways.get(i - 1).links().isEmpty()) {
          assertThat(ways.get(i - 1).cost()).isLessThanOrEqualTo(ways.get(i).cost());
        }
      }
      assertThat(ways).doesNotHaveDuplicates();
    }
  }

  @Test
  void the_shortest_has_no_more_adapters_than_the_cheapest() {
    for (End[] pair : pairs(1961)) {
      List<Way> cheapest = STOCK.cheapest(pair[0], pair[1], 1);
      assertThat(STOCK.shortest(pair[0], pair[1]).isPresent()).isEqualTo(!cheapest.isEmpty());
      STOCK
          .shortest(pair[0], pair[1])
          .ifPresent(
              way ->
                  assertThat(way.links()).hasSizeLessThanOrEqualTo(cheapest.get(0).links().size()));
    }
  }

  @Test
  void the_adapter_to_be_found_has_halves_that_take_the_two_ends() {
    for (End end : Families.ends()) {
      Optional<End> half = StockBridges.facing(end);
      boolean joins = Families.ends().stream().anyMatch(other -> takes(end, other));
      assertThat(half.isPresent()).as(end.toString()).isEqualTo(joins);
      if (half.map(h -> Mating.of(end, h).outcome())
          .filter(o -> o == NO || o == JAMS)
          .isPresent()) {
        throw new AssertionError(end + " was to be met by " + half.get());
      }
    }
    assertThat(facing("2 NPT male")).isEqualTo("2 NPSH female swivel");
    assertThat(facing("2 NPT female")).isEqualTo("2 NPT male");
    assertThat(facing("2 cam plug")).isEqualTo("2 cam socket");
    assertThat(facing("2.5 QST male")).isEqualTo("2.5 QST female swivel");
  }

  @Test
  void nothing_is_to_be_found_for_a_taper_swivel_that_joins_nothing() {
    // A taper thread locks as it tightens: ASME B1.20.1; swivel: common practice, no source.
    assertThat(StockBridges.facing(End.parse("2 NPT female swivel"))).isEmpty();
    assertThat(STOCK.toSource(End.parse("2 NPT female swivel"), End.parse("4 Storz"))).isEmpty();
  }

  private static boolean takes(End end, End other) {
    Verdict verdict = Mating.of(end, other);
    boolean byName = verdict.outcome() == Verdict.Outcome.MEASURE && Mating.sameByName(end, other);
    return verdict.mates() || byName;
  }

  private static String facing(String end) {
    return StockBridges.facing(End.parse(end)).orElseThrow().toString();
  }

  @Test
  void with_one_part_found_elsewhere_the_rest_is_in_the_catalogue() {
    End from = End.parse("2.5 QST male");
    End to = End.parse("4 Storz");

    List<Way> ways = STOCK.withOneSourced(from, to);

    assertThat(ways).isNotEmpty();
    for (Way way : ways) {
      assertThat(way.missing()).hasSize(1);
      assertThat(way.links()).isNotEmpty();
      End open = way.missing().get(0).downstream();
      assertThat(Mating.of(open, way.links().get(0).upstream()).mates()).isTrue();
    }
  }

  @Test
  void two_standard_adapters_meet_in_a_common_hose_thread() {
    StockBridges empty =
        new StockBridges(
            new Catalogue(List.of(), List.of(), List.of(), List.of()),
            (item, quantity) -> Optional.empty(),
            CurrencyUnit.USD);
    End from = End.parse("2.5 QST male");
    End to = End.parse("4 Storz");
    assertThat(empty.withOneSourced(from, to)).isEmpty();

    List<Way> ways = empty.withTwoSourced(from, to);

    assertThat(ways).isNotEmpty();
    for (Way way : ways) {
      assertThat(way.links()).isEmpty();
      StockBridges.Gap first = way.missing().get(0);
      StockBridges.Gap second = way.missing().get(1);
      assertThat(takes(from, first.upstream())).isTrue();
      assertThat(Mating.of(first.downstream(), second.upstream()).removable()).isTrue();
      assertThat(takes(second.downstream(), to)).isTrue();
    }
  }

  private static boolean removable(End[] pair, Way way) {
    return joints(pair[0], pair[1], way).stream().allMatch(Verdict::removable);
  }

  private static List<Verdict> joints(End from, End to, Way way) {
    List<Verdict> verdicts = new ArrayList<>();
    End open = from;
    for (Bridge.Link link : way.links()) {
      verdicts.add(Mating.of(open, link.upstream()));
      open = link.downstream();
    }
    verdicts.add(Mating.of(open, to));
    return verdicts;
  }

  private static List<End[]> pairs(long seed) {
    List<End> ends =
        Families.ends().stream()
            .filter(
                end -> List.of("NH", "NPSH", "NPT", "Storz", "cam", "GHT").contains(end.family()))
            .toList();
    Random random = new Random(seed);
    List<End[]> pairs = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      pairs.add(
          new End[] {ends.get(random.nextInt(ends.size())), ends.get(random.nextInt(ends.size()))});
    }
    return pairs;
  }
}
