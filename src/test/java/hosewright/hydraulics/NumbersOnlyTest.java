package hosewright.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.suction.Suction;
import hosewright.problem.BadInputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

/** Whatever goes in, a number comes out or a refusal: never NaN, never infinity. */
class NumbersOnlyTest {
  private static final int TRIES = 20_000;

  private static final double[] ODD = {
    Double.NaN,
    Double.POSITIVE_INFINITY,
    Double.NEGATIVE_INFINITY,
    0,
    -0.0,
    -1,
    Double.MIN_VALUE,
    1e-300,
    1e-9,
    1e-3,
    0.05,
    1,
    2.5,
    20,
    60,
    100,
    212,
    400,
    1_999,
    20_000,
    1e6,
    1e300,
    Double.MAX_VALUE
  };

  private final List<String> refused = new ArrayList<>();
  private int numbers;

  private static double odd(Random random) {
    return random.nextInt(4) == 0 ? 500 * random.nextDouble() : ODD[random.nextInt(ODD.length)];
  }

  private void numberOrRefusal(String what, long seed, DoubleSupplier result) {
    double value;
    try {
      value = result.getAsDouble();
    } catch (BadInputException e) {
      assertThat(e.problems()).as(what).isNotEmpty();
      refused.add(what);
      return;
    }
    assertThat(value).as("seed %d, %s", seed, what).isFinite();
    numbers++;
  }

  @Test
  void every_figure_is_a_number_or_a_refusal_whatever_goes_in() {
    for (long seed = 1; seed <= TRIES; seed++) {
      Random r = new Random(seed);
      double a = odd(r);
      double b = odd(r);
      double c = odd(r);
      double d = odd(r);
      numberOrRefusal("coefficient", seed, () -> new CoefficientLaw(a).lossPsi(b, c));
      numberOrRefusal("coefficient flow", seed, () -> new CoefficientLaw(a).flowGpm(b, c));
      numberOrRefusal("hazen", seed, () -> new HazenWilliams(a, b).lossPsi(c, d));
      numberOrRefusal("hazen flow", seed, () -> new HazenWilliams(a, b).flowGpm(c, d));
      numberOrRefusal("darcy", seed, () -> new DarcyWeisbach(0, a, b).lossPsi(c, d));
      numberOrRefusal("darcy flow", seed, () -> new DarcyWeisbach(0, a, b).flowGpm(c, d));
      numberOrRefusal("friction factor", seed, () -> DarcyWeisbach.frictionFactor(a, b));
      numberOrRefusal("fitting", seed, () -> new Fitting("f", a, b).lossPsi(c));
      numberOrRefusal("bore", seed, () -> Fitting.changeOfBore("f", a, b).lossPsi(c));
      numberOrRefusal("appliance", seed, () -> new ApplianceLoss("a", a, b).lossPsi(c));
      numberOrRefusal("point", seed, () -> new Demand.FlowAndPressure(a, b).needPsi(c));
      numberOrRefusal("k", seed, () -> new Demand.KFactor(a).needPsi(b));
      numberOrRefusal("tip", seed, () -> new Demand.SmoothBore(a).needPsi(b));
      numberOrRefusal("tip flow", seed, () -> new Demand.SmoothBore(a).flowGpm(b));
      numberOrRefusal("fog", seed, () -> new Demand.FixedGallonage(a, b).needPsi(c));
      numberOrRefusal("automatic", seed, () -> new Demand.AutomaticFog(a, b, c).needPsi(d));
      numberOrRefusal("open end", seed, () -> new Demand.OpenEnd(a, b).needPsi(c));
      numberOrRefusal("fixed", seed, () -> new FixedPressure(a).pressurePsi(b));
      numberOrRefusal("hydrant", seed, () -> new Hydrant(a, b, c).pressurePsi(d));
      numberOrRefusal("hydrant flow", seed, () -> new Hydrant(a, b, c).flowGpmAt(d));
      numberOrRefusal("pitot", seed, () -> Hydrant.pitotFlowGpm(a, b, c));
      numberOrRefusal("velocity", seed, () -> Physical.velocityFtPerS(a, b));
      numberOrRefusal("volume", seed, () -> Physical.waterWeightLb(a, b));
      numberOrRefusal("fill", seed, () -> Physical.fillMinutes(a, b));
      numberOrRefusal("surge", seed, () -> Physical.surgePsi(a, b));
      numberOrRefusal("return", seed, () -> Physical.returnTimeS(a, b));
      numberOrRefusal("solid", seed, () -> Reaction.solidLbf(a, b));
      numberOrRefusal("fog reaction", seed, () -> Reaction.fogLbf(a, b));
      numberOrRefusal("air", seed, () -> Suction.atmosphericPsia(a));
      numberOrRefusal("lift", seed, () -> Suction.checkedLiftFt("lift", a, b, c));
      numberOrRefusal("spacing", seed, () -> RelayPump.spacingFt(a, new CoefficientLaw(b), c, d));
      numberOrRefusal("pump", seed, () -> pump(a, b, c).pressurePsi(d));
      numberOrRefusal(
          "required", seed, () -> LineHydraulics.required(line(a, b), c, d).sourcePsi());
      numberOrRefusal(
          "arriving",
          seed,
          () ->
              LineHydraulics.arriving(
                      line(a, b), new FixedPressure(c), new Demand.FlowAndPressure(d, 50))
                  .flowGpm());
      numberOrRefusal("profile", seed, () -> highest(LineHydraulics.profile(line(a, b), c, d, d)));
    }
    assertThat(numbers).as("answers").isGreaterThan(TRIES);
    assertThat(refused).as("refusals").hasSizeGreaterThan(TRIES);
  }

  private static PumpCurve pump(double a, double b, double c) {
    return new PumpCurve(List.of(new PumpCurve.Point(0, a), new PumpCurve.Point(b, c)));
  }

  private static List<LineElement> line(double lengthFt, double riseFt) {
    return List.of(new HoseLeg("hose", new CoefficientLaw(2), lengthFt, riseFt, 2.5, 1, 2));
  }

  private static double highest(List<Station> profile) {
    return profile.stream()
        .flatMapToDouble(at -> DoubleStream.of(at.flowingPsi(), at.closedPsi()))
        .reduce(0, (one, other) -> one + Math.abs(other));
  }
}
