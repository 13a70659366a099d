package hosewright.fleet.budget;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.analysis.MultivariateFunction;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.PointValuePair;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * A Weibull law fitted to lives by maximum likelihood.
 *
 * <p>A failure lies somewhere between the last passed test and the test that found it; a life cut
 * off is known to outlive that age; both are taken given life at entry. Found equal ends stand for
 * an age known exactly.
 *
 * @param law the fitted law
 * @param logLikelihood its log-likelihood
 * @param logShapeError standard error of the logarithm of the shape
 * @param logScaleError standard error of the logarithm of the scale
 * @param correlation between the two
 */
public record WeibullFit(
    Weibull law,
    double logLikelihood,
    double logShapeError,
    double logScaleError,
    double correlation) {

  /** Fewest failures, and fewest different ages of them, that a fit is made from. */
  public static final int LEAST_FAILURES = 10;

  public static final int LEAST_AGES = 3;

  private static final int EVALUATIONS = 5_000;
  private static final double STEP = 1e-3;

  /** Steeper or flatter laws than these say that the data fix no law. */
  private static final double STEEPEST = 50;

  private static final double FLATTEST = 0.05;

  /**
   * Either a fit, or why there is none.
   *
   * @param fit null when there is none
   * @param reason empty when there is a fit
   */
  public record Attempt(WeibullFit fit, String reason) {
    public boolean suffices() {
      return fit != null;
    }
  }

  /** Fits, if the lives suffice. */
  public static Attempt of(List<Lifetime> lives) {
    long failures = lives.stream().filter(Lifetime::hasFailed).count();
    long ages =
        lives.stream().filter(Lifetime::hasFailed).mapToDouble(Lifetime::failed).distinct().count();
    if (failures < LEAST_FAILURES || ages < LEAST_AGES) {
      return new Attempt(
          null,
          "%d failures at %d different ages are on record; a fit needs %d at %d (common practice, no source)"
              .formatted(failures, ages, LEAST_FAILURES, LEAST_AGES));
    }
    return maximise(lives);
  }

  private static Attempt maximise(List<Lifetime> lives) {
    Likelihood likelihood = new Likelihood(lives);
    double middle = lives.stream().mapToDouble(Lifetime::exit).max().orElseThrow();
    try {
      double[] point = new double[] {Math.log(2), Math.log(middle)};
      // A second climb from the first one's top, since a simplex can stall.
      for (int climb = 0; climb < 2; climb++) {
        PointValuePair top =
            new SimplexOptimizer(new SimpleValueChecker(1e-13, 1e-11))
                .optimize(
                    new MaxEval(EVALUATIONS),
                    new ObjectiveFunction(likelihood),
                    GoalType.MAXIMIZE,
                    new InitialGuess(point),
                    new NelderMeadSimplex(2, 0.2));
        point = top.getPoint();
      }
      return checked(likelihood, point);
    } catch (MathRuntimeException e) {
      return new Attempt(null, "the likelihood has no top that could be found");
    }
  }

  private static Attempt checked(Likelihood likelihood, double[] point) {
    double shape = Math.exp(point[0]);
    double[][] information = likelihood.information(point);
    double determinant =
        information[0][0] * information[1][1] - information[0][1] * information[0][1];
    if (shape > STEEPEST || shape < FLATTEST || !(determinant > 0) || !(information[0][0] > 0)) {
      return new Attempt(null, "the failures on record fix no law: any of many fits as well");
    }
    double shapeVariance = information[1][1] / determinant;
    double scaleVariance = information[0][0] / determinant;
    double covariance = -information[0][1] / determinant;
    return new Attempt(
        new WeibullFit(
            new Weibull(shape, Math.exp(point[1])),
            likelihood.value(point),
            Math.sqrt(shapeVariance),
            Math.sqrt(scaleVariance),
            covariance / Math.sqrt(shapeVariance * scaleVariance)),
        "");
  }

  /** The law whose logarithms lie so many standard errors off, for simulation. */
  public Weibull drawn(double first, double second) {
    double scaleDeviate = correlation * first + Math.sqrt(1 - correlation * correlation) * second;
    return new Weibull(
        law.shape() * Math.exp(logShapeError * first),
        law.scaleYears() * Math.exp(logScaleError * scaleDeviate));
  }

  /** The log-likelihood of a law. */
  public static double logLikelihood(List<Lifetime> lives, Weibull law) {
    return new Likelihood(lives).of(law);
  }

  /**
   * Of the logarithms of shape and scale.
   *
   * <p>The hazard up to entry and up to the last sound age are sums over ages alone, so that a
   * million lives come down to as many terms as there are different days of age; only failures keep
   * their two ends together.
   */
  private static final class Likelihood implements MultivariateFunction {
    private final Map<Double, Long> hazards = new HashMap<>();
    private final Map<Failure, Long> failures = new HashMap<>();

    private record Failure(double sound, double failed) {}

    Likelihood(List<Lifetime> lives) {
      for (Lifetime life : lives) {
        hazards.merge(life.entry(), 1L, Long::sum);
        hazards.merge(life.sound(), -1L, Long::sum);
        if (life.hasFailed()) {
          failures.merge(new Failure(life.sound(), life.failed()), 1L, Long::sum);
        }
      }
    }

    @Override
    public double value(double[] logs) {
      return of(new Weibull(Math.exp(logs[0]), Math.exp(logs[1])));
    }

    double of(Weibull law) {
      double sum = 0;
      for (Map.Entry<Double, Long> age : hazards.entrySet()) {
        sum += age.getValue() * law.cumulativeHazard(age.getKey());
      }
      for (Map.Entry<Failure, Long> failure : failures.entrySet()) {
        sum += failure.getValue() * term(law, failure.getKey());
      }
      return Double.isNaN(sum) ? Double.NEGATIVE_INFINITY : sum;
    }

    private static double term(Weibull law, Failure failure) {
      double age = failure.failed();
      return age == failure.sound()
          ? Math.log(law.shape() / age) + law.shape() * Math.log(age / law.scaleYears())
          : Math.log(law.failureBetween(failure.sound(), age));
    }

    /** Minus the second derivatives, by central differences. */
    double[][] information(double[] at) {
      double middle = value(at);
      double shape = (2 * middle - moved(at, STEP, 0) - moved(at, -STEP, 0)) / (STEP * STEP);
      double scale = (2 * middle - moved(at, 0, STEP) - moved(at, 0, -STEP)) / (STEP * STEP);
      double mixed =
          -(moved(at, STEP, STEP)
                  - moved(at, STEP, -STEP)
                  - moved(at, -STEP, STEP)
                  + moved(at, -STEP, -STEP))
              / (4 * STEP * STEP);
      return new double[][] {{shape, mixed}, {mixed, scale}};
    }

    private double moved(double[] at, double first, double second) {
      return value(new double[] {at[0] + first, at[1] + second});
    }
  }
}
