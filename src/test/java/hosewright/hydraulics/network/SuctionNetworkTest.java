package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Inlet;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.law.CoefficientLaw;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Laws of a pump that draws open water, over random lines; a failure prints its seed. */
class SuctionNetworkTest {
  private static final int SEEDS = 60;

  @Test
  void more_lift_never_brings_more_water() {
    for (int seed = 0; seed < SEEDS; seed++) {
      double before = Double.POSITIVE_INFINITY;
      for (int liftFt = 0; liftFt <= 24; liftFt += 4) {
        double gpm = drawnGpm(new Random(seed), liftFt, 0);
        assertThat(gpm).as("seed %d, lift %d ft", seed, liftFt).isLessThanOrEqualTo(before + 1e-3);
        before = gpm;
      }
    }
  }

  @Test
  void a_narrower_strainer_never_brings_more_water() {
    for (int seed = 0; seed < SEEDS; seed++) {
      double open = drawnGpm(new Random(seed), 10, 0);
      assertThat(drawnGpm(new Random(seed), 10, 8)).as("seed %d", seed).isLessThan(open);
    }
  }

  private static double drawnGpm(Random random, double liftFt, double strainerK) {
    double suctionFt = 25 + random.nextInt(30);
    double lineFt = 50 + random.nextInt(600);
    int churnPsi = 60 + random.nextInt(140);
    int givesPsi = random.nextInt(churnPsi);
    Demand nozzle = new Demand.FlowAndPressure(50 + random.nextInt(300), 40 + random.nextInt(60));
    PumpCurve curve =
        new PumpCurve(
            List.of(new PumpCurve.Point(0, churnPsi), new PumpCurve.Point(1_000, givesPsi)));
    Network network =
        new Network(
            List.of(
                new Node.Source("water", new Inlet(0, 0)),
                new Node.Pump("pump", curve, -10),
                new Node.End("nozzle", nozzle)),
            List.of(
                new Link(
                    "suction",
                    "water",
                    "pump",
                    List.of(
                        new Fitting("strainer", strainerK, 4),
                        hose("suction", suctionFt, liftFt, 0.23))),
                new Link("line", "pump", "nozzle", List.of(hose("line", lineFt, 0, 2)))));
    return NetworkHydraulics.arriving(network).end("nozzle").flowGpm();
  }

  private static HoseLeg hose(String name, double lengthFt, double riseFt, double coefficient) {
    return new HoseLeg(name, new CoefficientLaw(coefficient), lengthFt, riseFt, 2.5, 1, 1);
  }
}
