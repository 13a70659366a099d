package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.law.Physical;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Laws that hold for every line, tried on seeded random ones; a failure names its seed. */
class HydraulicsPropertyTest {

  @Test
  void loss_grows_with_flow_and_length() {
    forSeeds(
        3_000,
        random -> {
          FrictionLaw law = law(random);
          double flow = between(random, 1, 3_000);
          double length = between(random, 1, 5_000);
          assertThat(law.lossPsi(flow * 1.01, length)).isGreaterThan(law.lossPsi(flow, length));
          assertThat(law.lossPsi(flow, length * 1.01)).isGreaterThan(law.lossPsi(flow, length));
          assertThat(law.lossPsi(0, length)).isZero();
        });
  }

  @Test
  void loss_never_falls_with_roughness() {
    forSeeds(
        3_000,
        random -> {
          double bore = between(random, 0.5, 8);
          double roughness = between(random, 0, bore / 50);
          double flow = between(random, 1, 3_000);
          assertThat(new DarcyWeisbach(roughness * 1.1, bore, 60.0).lossPsi(flow, 100))
              .isGreaterThanOrEqualTo(new DarcyWeisbach(roughness, bore, 60.0).lossPsi(flow, 100));
        });
  }

  @Test
  void a_law_and_its_inverse_undo_each_other() {
    forSeeds(
        3_000,
        random -> {
          FrictionLaw law = law(random);
          double flow = between(random, 1, 3_000);
          double length = between(random, 1, 5_000);
          assertThat(law.flowGpm(law.lossPsi(flow, length), length))
              .isCloseTo(flow, within(1e-9 * flow));
        });
  }

  // Hazen and Williams in their own closed form, V = 1.318 C R^0.63 S^0.54 (ft, s), written out
  // apart from the psi-per-foot form. Its exponents are rounded otherwise, hence 1 %.
  @Test
  void hazen_williams_agrees_with_its_velocity_form() {
    forSeeds(
        1_000,
        random -> {
          double c = between(random, 100, 150);
          double bore = between(random, 1, 8);
          double slope = between(random, 0.005, 0.3);
          double velocity = 1.318 * c * Math.pow(bore / 48, 0.63) * Math.pow(slope, 0.54);
          double flow = velocity / Physical.velocityFtPerS(1, bore);
          assertThat(new HazenWilliams(c, bore).lossPsi(flow, 1_000))
              .isCloseTo(slope * 1_000 * 62.4 / 144, within(0.01 * slope * 1_000 * 62.4 / 144));
        });
  }

  // Colebrook's equation itself, put to the test with the factor found.
  @Test
  void the_friction_factor_satisfies_colebrook() {
    forSeeds(
        3_000,
        random -> {
          double reynolds = Math.pow(10, between(random, Math.log10(2_041), 8));
          double roughness = between(random, 0, 0.05);
          double x = 1 / Math.sqrt(DarcyWeisbach.frictionFactor(reynolds, roughness));
          assertThat(-2 * Math.log10(roughness / 3.7 + 2.51 / reynolds * x))
              .isCloseTo(x, within(1e-10));
        });
  }

  @Test
  void two_equal_parallel_lines_carry_half_each() {
    forSeeds(
        1_000,
        random -> {
          HoseLeg line = new HoseLeg("line", law(random), between(random, 50, 2_000), 2.5);
          double flow = between(random, 10, 3_000);
          ParallelLegs pair = new ParallelLegs("pair", List.of(line, line));
          double[] flows = pair.flowsGpm(flow);
          assertThat(flows[0]).isCloseTo(flow / 2, within(1e-6 * flow));
          HoseLeg doubled =
              new HoseLeg("doubled", line.law(), line.lengthFt(), 0, line.boreIn(), 2, 1);
          assertThat(doubled.lossPsi(flow))
              .isCloseTo(pair.lossPsi(flow), within(1e-6 * pair.lossPsi(flow)));
        });
  }

  @Test
  void unequal_parallel_lines_lose_the_same_and_share_all_the_flow() {
    forSeeds(
        1_000,
        random -> {
          List<HoseLeg> lines = new ArrayList<>();
          int count = 2 + random.nextInt(3);
          for (int i = 0; i < count; i++) {
            lines.add(new HoseLeg("line " + i, law(random), between(random, 50, 2_000), 2.5));
          }
          double flow = between(random, 100, 3_000);
          ParallelLegs legs = new ParallelLegs("lines", lines);
          double[] flows = legs.flowsGpm(flow);
          double sum = 0;
          for (int i = 0; i < flows.length; i++) {
            sum += flows[i];
            assertThat(lines.get(i).lossPsi(flows[i]))
                .isCloseTo(legs.lossPsi(flow), within(1e-9 * legs.lossPsi(flow)));
          }
          assertThat(sum).isCloseTo(flow, within(1e-6 * flow));
        });
  }

  @Test
  void a_source_curve_passes_through_its_given_points() {
    forSeeds(
        1_000,
        random -> {
          double stat = between(random, 30, 200);
          double residual = between(random, 0, stat * 0.95);
          double flow = between(random, 100, 5_000);
          Hydrant hydrant = new Hydrant(stat, residual, flow);
          assertThat(hydrant.pressurePsi(0)).isEqualTo(stat);
          assertThat(hydrant.pressurePsi(flow)).isCloseTo(residual, within(1e-9));
          assertThat(hydrant.mainPsi(hydrant.flowGpmAt(stat / 2)))
              .isCloseTo(stat / 2, within(1e-9));
          PumpCurve pump = pump(random);
          for (PumpCurve.Point point : pump.points()) {
            assertThat(pump.pressurePsi(point.flowGpm())).isCloseTo(point.psi(), within(1e-9));
          }
        });
  }

  @Test
  void the_profile_closes_to_source_minus_losses() {
    forSeeds(
        2_000,
        random -> {
          List<LineElement> line = line(random);
          double flow = between(random, 1, 1_000);
          Solution solution = LineHydraulics.required(line, flow, between(random, 0, 200));
          List<Station> profile = solution.profile();
          Station last = profile.get(profile.size() - 1);
          double scale = Math.max(1, Math.abs(solution.sourcePsi()));
          assertThat(last.flowingPsi()).isCloseTo(solution.needPsi(), within(1e-9 * scale));
          assertThat(LineHydraulics.lossPsi(line, flow))
              .isCloseTo(solution.losses().totalPsi(), within(1e-9 * scale));
          for (Station station : profile) {
            assertThat(station.flowingPsi()).isFinite();
            assertThat(station.closedPsi()).isFinite();
          }
        });
  }

  @Test
  void negating_the_rise_moves_each_station_by_twice_its_elevation() {
    forSeeds(
        1_000,
        random -> {
          double rise = between(random, 1, 100);
          FrictionLaw law = law(random);
          HoseLeg up = new HoseLeg("hose", law, 400, rise, 2.5, 1, 8);
          HoseLeg down = new HoseLeg("hose", law, 400, -rise, 2.5, 1, 8);
          double flow = between(random, 1, 300);
          List<Station> climbing = LineHydraulics.profile(List.of(up), flow, 150, 150);
          List<Station> falling = LineHydraulics.profile(List.of(down), flow, 150, 150);
          for (int i = 0; i < climbing.size(); i++) {
            double twice = 2 * climbing.get(i).elevationFt() * Physical.PSI_PER_FT;
            double scale = Math.max(1, Math.abs(climbing.get(i).flowingPsi()));
            assertThat(falling.get(i).flowingPsi() - climbing.get(i).flowingPsi())
                .isCloseTo(twice, within(1e-12 * scale * 10));
            assertThat(falling.get(i).closedPsi() - climbing.get(i).closedPsi())
                .isCloseTo(twice, within(1e-9));
          }
        });
  }

  @Test
  void the_two_questions_are_inverse_on_ten_thousand_feasible_random_lines() {
    int[] feasible = {0};
    for (long seed = 1; feasible[0] < 10_000; seed++) {
      forSeed(
          seed,
          random -> {
            List<LineElement> line = line(random);
            double flow = between(random, 20, 1_000);
            Demand.FlowAndPressure demand =
                new Demand.FlowAndPressure(flow, between(random, 20, 150));
            double sourcePsi = LineHydraulics.required(line, flow, demand.psi()).sourcePsi();
            if (sourcePsi <= 0 || sourcePsi > 2_000) {
              return; // no job: a fall that needs no source, or a source that does not exist
            }
            Arrival arrival = LineHydraulics.arriving(line, new FixedPressure(sourcePsi), demand);
            assertThat(arrival.flowGpm()).isCloseTo(flow, within(0.01));
            feasible[0]++;
          });
    }
  }

  @Test
  void what_arrives_is_finite_and_covered_by_the_source() {
    forSeeds(
        3_000,
        random -> {
          List<LineElement> line = line(random);
          Supply supply =
              random.nextBoolean()
                  ? pump(random)
                  : new Hydrant(
                      between(random, 41, 150),
                      between(random, 0, 40),
                      between(random, 100, 2_000),
                      between(random, 0, 10));
          Demand demand = demand(random);
          Arrival arrival = LineHydraulics.arriving(line, supply, demand);
          assertThat(arrival.flowGpm()).isFinite().isNotNegative();
          assertThat(arrival.pressures().deliveredPsi()).isFinite();
          assertThat(arrival.limitedBy()).isNotBlank().doesNotContain("NaN");
          if (arrival.flows()) {
            assertThat(arrival.pressures().deliveredPsi())
                .isGreaterThanOrEqualTo(arrival.pressures().needPsi() - 1e-6);
          }
        });
  }

  private static void forSeeds(int count, Consumer<Random> property) {
    for (long seed = 1; seed <= count; seed++) {
      forSeed(seed, property);
    }
  }

  private static void forSeed(long seed, Consumer<Random> property) {
    try {
      property.accept(new Random(seed));
    } catch (AssertionError | RuntimeException e) {
      throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
    }
  }

  private static List<LineElement> line(Random random) {
    List<LineElement> line = new ArrayList<>();
    int parts = 1 + random.nextInt(4);
    for (int i = 0; i < parts; i++) {
      double length = between(random, 25, 1_000);
      line.add(
          new HoseLeg(
              "hose " + i,
              law(random),
              length,
              length * between(random, -0.1, 0.1),
              2.5,
              1 + random.nextInt(3),
              1 + random.nextInt(20)));
      if (random.nextBoolean()) {
        line.add(new Fitting("adapter", between(random, 0, 5), between(random, 1, 5)));
      }
      if (random.nextInt(4) == 0) {
        ApplianceLoss wye = new ApplianceLoss("wye", 350, between(random, 0, 25));
        Fitting waterway = new Fitting("wye", between(random, 0, 2), between(random, 1.5, 5));
        line.add(random.nextBoolean() ? wye : new TaughtLoss(waterway, wye));
      }
    }
    return line;
  }

  private static FrictionLaw law(Random random) {
    double bore = between(random, 2, 6);
    return switch (random.nextInt(3)) {
      case 0 -> new CoefficientLaw(between(random, 0.05, 3));
      case 1 -> new HazenWilliams(between(random, 100, 160), bore);
      default -> new DarcyWeisbach(between(random, 0, 0.01), bore, between(random, 32, 100));
    };
  }

  private static Demand demand(Random random) {
    return switch (random.nextInt(6)) {
      case 0 -> new Demand.SmoothBore(between(random, 0.5, 2));
      case 1 -> new Demand.KFactor(between(random, 1, 100));
      case 2 -> new Demand.FixedGallonage(between(random, 30, 500), 100);
      case 3 -> new Demand.AutomaticFog(60, 350, 100);
      case 4 -> new Demand.OpenEnd(2.5, between(random, 0, 30));
      default -> new Demand.FlowAndPressure(between(random, 20, 1_000), 80);
    };
  }

  private static PumpCurve pump(Random random) {
    List<PumpCurve.Point> points = new ArrayList<>();
    double flow = 0;
    double psi = between(random, 100, 250);
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      points.add(new PumpCurve.Point(flow, psi));
      flow += between(random, 50, 500);
      psi -= between(random, 0, psi / 3);
    }
    return new PumpCurve(points);
  }

  private static double between(Random random, double least, double most) {
    return least + (most - least) * random.nextDouble();
  }
}
