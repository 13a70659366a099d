package hosewright.line.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.LineHydraulics;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Split;
import hosewright.line.search.SmallShop;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Each figure is reckoned beside it: v = 0.4085 Q/d² ft/s; velocity head 0.434 v²/64.35 psi; Crane
 * TP-410 p. A-26 for changes of bore, 0.5 (1 - β²) narrowing and (1 - β²)² widening on the smaller
 * bore; a tee in its line 0.9 (LMNO Engineering); taught: 10 psi for an appliance from 350 gpm on
 * (Renton Fire Department hydraulics training).
 */
class FittingLossTest {
  private static final String[] SMALL_SIAMESE = {
    "1.5 NH female swivel", "1.5 NH female swivel", "2.5 NH male"
  };

  @Test
  void a_narrow_siamese_takes_what_its_waterway_takes_where_that_is_more_than_the_taught_loss() {
    Placed siamese = siamese(part(ItemKind.SIAMESE, SMALL_SIAMESE).loss(10));

    // 800 gpm, 400 in each inlet: v = 0.4085 x 400/2.25 = 72.62 ft/s, head 0.434 x 72.62²/64.35 =
    // 35.57 psi. β² = (1.5/2.5)² = 0.36: K = 0.9 + 0.64² = 1.3096, so 46.58 psi.
    assertThat(FittingLoss.of(siamese).lossPsi(800)).isCloseTo(46.58, within(0.05));
  }

  @Test
  void below_the_flow_a_loss_is_taught_for_the_waterway_still_counts() {
    Placed siamese = siamese(part(ItemKind.SIAMESE, SMALL_SIAMESE).loss(10));

    // 300 gpm, 150 in each: (150/400)² of the loss at 800 gpm, 46.58 x 0.140625 = 6.55 psi.
    assertThat(FittingLoss.of(siamese).lossPsi(300)).isCloseTo(6.55, within(0.01));
  }

  @Test
  void the_taught_loss_is_a_floor_from_350_gpm_on_with_a_stated_figure_or_without() {
    String[] wide = {"2.5 NH female swivel", "2.5 NH female swivel", "5 Storz"};
    for (Placed siamese :
        new Placed[] {
          siamese(part(ItemKind.SIAMESE, wide).loss(10)), siamese(part(ItemKind.SIAMESE, wide))
        }) {
      // 349 gpm, 174.5 in each 2.5 in inlet: v = 0.4085 x 174.5/6.25 = 11.405 ft/s, head 0.877
      // psi; β² = 0.25: K = 0.9 + 0.75² = 1.4625, so 1.283 psi.
      assertThat(FittingLoss.of(siamese).lossPsi(349)).isCloseTo(1.283, within(0.002));
      assertThat(FittingLoss.of(siamese).lossPsi(350)).isEqualTo(10);
    }
  }

  @Test
  void a_loss_by_the_waterway_is_told_with_the_fittings_and_a_taught_figure_with_the_appliances() {
    LineElement siamese = FittingLoss.of(siamese(part(ItemKind.SIAMESE, SMALL_SIAMESE).loss(10)));
    assertThat(LineHydraulics.losses(List.of(siamese), 300).fittingPsi())
        .isCloseTo(6.55, within(0.01));
    assertThat(LineHydraulics.losses(List.of(siamese), 360).appliancePsi()).isEqualTo(10);
    assertThat(LineHydraulics.losses(List.of(siamese), 800).fittingPsi())
        .isCloseTo(46.58, within(0.05));
  }

  @Test
  void a_makers_coefficient_goes_before_what_is_taught() {
    Placed siamese = siamese(part(ItemKind.SIAMESE, SMALL_SIAMESE).loss(10).lossCoefficient(0.5));

    // K = 0.5 on the head of 35.57 psi at 400 gpm in each inlet.
    assertThat(FittingLoss.of(siamese).lossPsi(800)).isCloseTo(17.79, within(0.02));
  }

  @Test
  void at_a_wye_each_outlet_is_judged_by_its_own_share_and_the_inlet_by_the_whole() {
    Item narrow =
        sold(part(ItemKind.WYE, "2.5 NH female swivel", "1.5 NH male", "1.5 NH male").loss(10));
    // 300 gpm: 150 in each outlet, v = 0.4085 x 150/2.25 = 27.23 ft/s, head 5.002 psi; the inlet
    // runs slower, 19.6 ft/s. K = 0.9 + 0.5 x 0.64 = 1.22, so 6.10 psi.
    assertThat(loss(wye(narrow), 300)).isCloseTo(6.10, within(0.01));

    Item even =
        sold(part(ItemKind.WYE, "1.5 NH female swivel", "1.5 NH male", "1.5 NH male").loss(10));
    // 300 gpm: all of it in the inlet, v = 54.47 ft/s, head 20.01 psi. K = 0.9: 18.01 psi.
    assertThat(loss(wye(even), 300)).isCloseTo(18.01, within(0.03));
  }

  @Test
  void a_reducer_without_a_figure_of_its_own_takes_its_change_of_bore_and_a_unions_loss() {
    Item reducer = sold(part(ItemKind.ADAPTER, "2.5 NH female swivel", "1.5 NH male"));
    Placed placed =
        Placed.adapter(new Bridge.Link(reducer, reducer.ends().get(0), reducer.ends().get(1)), 1);

    // The Engineering ToolBox: 0.08 for a threaded union. K = 0.08 + 0.5 x 0.64 = 0.40 on the
    // 35.57 psi of 400 gpm in 1.5 in: 14.23 psi.
    assertThat(loss(placed, 400)).isCloseTo(14.23, within(0.02));
  }

  @Test
  void more_flow_never_loses_less() {
    Placed siamese = siamese(part(ItemKind.SIAMESE, SMALL_SIAMESE).loss(10));
    double before = 0;
    for (int gpm = 0; gpm <= 1_000; gpm += 5) {
      double psi = loss(siamese, gpm);
      assertThat(psi).as("%d gpm", gpm).isGreaterThanOrEqualTo(before);
      before = psi;
    }
    assertThat(before).isGreaterThan(10);
  }

  private static SmallShop.Part part(ItemKind kind, String... ends) {
    return new SmallShop().part("P", kind, ends);
  }

  private static Item sold(SmallShop.Part part) {
    return part.at(100).items().get(0);
  }

  private static Placed siamese(SmallShop.Part part) {
    return Placed.inLine(Split.asSiamese(sold(part), 2).orElseThrow(), 1);
  }

  private static Placed wye(Item item) {
    return Placed.inLine(Split.asWye(item, 2).orElseThrow(), 1);
  }

  private static double loss(Placed part, double gpm) {
    return FittingLoss.of(part).lossPsi(gpm);
  }
}
