package hosewright.hydraulics;

import hosewright.hydraulics.law.Given;
import hosewright.hydraulics.law.Physical;
import java.util.OptionalDouble;

/** What stands at the end of the line and how much water it lets through at a pressure. */
public sealed interface Demand {

  /**
   * The pressure it needs at its inlet to pass a flow, psi; never falls as flow grows.
   *
   * @param flowGpm 0 or more
   */
  double needPsi(double flowGpm);

  /** Push-back on whoever holds it at a flow, lbf; empty where it is no nozzle. */
  default OptionalDouble reactionLbf(double flowGpm) {
    return OptionalDouble.empty();
  }

  /**
   * An appliance known by one flow and the pressure it needs there: {@code Q = k √p} through that
   * point.
   *
   * @param flowGpm over 0
   * @param psi over 0
   */
  record FlowAndPressure(double flowGpm, double psi) implements Demand {
    public FlowAndPressure {
      Given.positive("flow", flowGpm, 20_000, "gpm");
      Given.positive("pressure needed", psi, 2_000, "psi");
    }

    @Override
    public double needPsi(double flowGpm) {
      double share = Given.flow(flowGpm) / this.flowGpm;
      return psi * share * share;
    }
  }

  /**
   * An outlet of known k-factor: {@code Q = k √p}.
   *
   * @param k gpm per square root of psi, over 0 up to 10,000
   */
  record KFactor(double k) implements Demand {
    public KFactor {
      Given.positive("k-factor", k, 10_000, "gpm/psi^0.5");
    }

    @Override
    public double needPsi(double flowGpm) {
      double root = Given.flow(flowGpm) / k;
      return root * root;
    }
  }

  /**
   * A smooth-bore tip: {@code Q = 29.7 d² √p}.
   *
   * <p>Source: City of Rohnert Park training slides, Calculating Friction Loss.
   *
   * @param tipIn bore of the tip, in, over 0 up to 6
   */
  record SmoothBore(double tipIn) implements Demand {
    /** No tip is larger, in. */
    public static final double LARGEST_TIP_IN = 6;

    /** The law and its source, for whoever is told what a tip does. */
    public static final String LAW =
        "Q = 29.7 d^2 sqrt(p): City of Rohnert Park training slides, Calculating Friction Loss";

    public SmoothBore {
      Given.positive("tip", tipIn, LARGEST_TIP_IN, "in");
    }

    /** Flow, gpm, at a nozzle pressure. */
    public double flowGpm(double psi) {
      return 29.7 * tipIn * tipIn * Math.sqrt(Given.between("pressure", psi, 0, 1e6, "psi"));
    }

    @Override
    public double needPsi(double flowGpm) {
      double root = Given.flow(flowGpm) / (29.7 * tipIn * tipIn);
      return root * root;
    }

    @Override
    public OptionalDouble reactionLbf(double flowGpm) {
      return OptionalDouble.of(Reaction.solidLbf(tipIn, needPsi(flowGpm)));
    }
  }

  /**
   * A fog nozzle made for one flow at one pressure; off that pressure it follows {@code Q = k √p}.
   *
   * @param ratedGpm over 0
   * @param ratedPsi over 0, mostly 50, 75 or 100
   */
  record FixedGallonage(double ratedGpm, double ratedPsi) implements Demand {
    public FixedGallonage {
      Given.positive("rated flow", ratedGpm, 20_000, "gpm");
      Given.positive("rated pressure", ratedPsi, 2_000, "psi");
    }

    @Override
    public double needPsi(double flowGpm) {
      double share = Given.flow(flowGpm) / ratedGpm;
      return ratedPsi * share * share;
    }

    @Override
    public OptionalDouble reactionLbf(double flowGpm) {
      return OptionalDouble.of(Reaction.fogLbf(flowGpm, needPsi(flowGpm)));
    }
  }

  /**
   * An automatic fog nozzle: it holds its pressure between its least and greatest flow, and acts as
   * a fixed opening outside them.
   *
   * @param leastGpm over 0
   * @param mostGpm above the least
   * @param psi the pressure it holds
   */
  record AutomaticFog(double leastGpm, double mostGpm, double psi) implements Demand {
    public AutomaticFog {
      Given.positive("least flow", leastGpm, 20_000, "gpm");
      Given.between("greatest flow", mostGpm, leastGpm, 20_000, "gpm");
      Given.positive("nozzle pressure", psi, 2_000, "psi");
    }

    @Override
    public double needPsi(double flowGpm) {
      double share = Given.flow(flowGpm) / Math.min(Math.max(flowGpm, leastGpm), mostGpm);
      return psi * share * share;
    }

    @Override
    public OptionalDouble reactionLbf(double flowGpm) {
      return OptionalDouble.of(Reaction.fogLbf(flowGpm, needPsi(flowGpm)));
    }
  }

  /**
   * Like appliances that share a flow evenly.
   *
   * @param count 1 or more
   */
  record Alike(Demand one, int count) implements Demand {
    public Alike {
      Given.between("appliances", count, 1, 100, "");
    }

    @Override
    public double needPsi(double flowGpm) {
      return one.needPsi(flowGpm / count);
    }

    /** The push-back of each of them. */
    @Override
    public OptionalDouble reactionLbf(double flowGpm) {
      return one.reactionLbf(flowGpm / count);
    }
  }

  /**
   * An open hose end that fills a tank: the water above the end, and the velocity head the jet
   * takes with it (loss coefficient 1, normal exit).
   *
   * @param boreIn bore of the open end, in
   * @param waterAboveFt depth of water standing over the end, ft; 0 when it pours in from above
   */
  record OpenEnd(double boreIn, double waterAboveFt) implements Demand {
    public OpenEnd {
      Given.between("bore", boreIn, 0.05, 60, "in");
      Given.between("water above the end", waterAboveFt, 0, 1_000, "ft");
    }

    @Override
    public double needPsi(double flowGpm) {
      return waterAboveFt * Physical.PSI_PER_FT + Fitting.lossPsi(1, boreIn, flowGpm);
    }
  }
}
