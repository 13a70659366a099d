package hosewright.hydraulics.working;

import static hosewright.hydraulics.law.Given.plain;
import static hosewright.hydraulics.working.Working.text;

import hosewright.hydraulics.Reaction;
import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.working.Working.Step;

/** The working of the figures that stand beside the pressures. */
public final class WorkedFigures {
  private WorkedFigures() {}

  /** Velocity in one hose, ft/s. */
  public static Step velocity(double flowGpm, double boreIn) {
    return new Step(
        "velocity in the hose",
        "Q x 231/(pi d^2/4 x 12 x 60)",
        text("%s x 231/(0.7854 x %s^2 x 720)", plain(flowGpm), plain(boreIn)),
        Physical.velocityFtPerS(flowGpm, boreIn),
        "ft/s",
        "flow over area; 231 in3 in a US gallon (NIST Handbook 44)");
  }

  /** Water that fills one line, US gal. */
  public static Step volume(double boreIn, double lengthFt) {
    return new Step(
        "water in one line",
        "pi d^2/4 x 12 L/231",
        text("0.7854 x %s^2 x 12 x %s/231", plain(boreIn), plain(lengthFt)),
        Physical.volumeGal(boreIn, lengthFt),
        "gal",
        "NWCG Fire Math 3.2");
  }

  /** Weight of all hose full of water, lb. */
  public static Step chargedWeight(double emptyLb, double waterGal) {
    return new Step(
        "hose full of water",
        "empty + 8.34 V",
        text("%s + 8.34 x %.2f", plain(emptyLb), waterGal),
        emptyLb + waterGal * Physical.WATER_LB_PER_GAL,
        "lb",
        "Lewis County Fire District 13, Introduction to Basic Hydraulics");
  }

  /** Minutes to fill all hose. */
  public static Step fill(double waterGal, double flowGpm) {
    return new Step(
        "time to fill",
        "V/Q",
        text("%.2f/%s", waterGal, plain(flowGpm)),
        Physical.fillMinutes(waterGal, flowGpm),
        "min",
        "volume over flow");
  }

  /** Pressure rise, psi, when the flow is stopped at once, with the fastest wave to expect. */
  public static Step surge(double velocityFtPerS, double waveSpeedFtPerS) {
    return new Step(
        "rise on sudden closure, at most",
        "w/g a v/144",
        text("62.4/32.174 x %.0f x %.2f/144", waveSpeedFtPerS, velocityFtPerS),
        Physical.surgePsi(velocityFtPerS, waveSpeedFtPerS),
        "psi",
        "Joukowsky's relation with the high estimate of the hose's wave speed");
  }

  /** Reaction of a solid stream, lbf. */
  public static Step solidReaction(double tipIn, double nozzlePsi) {
    return new Step(
        "nozzle reaction",
        "1.57 d^2 p",
        text("1.57 x %s^2 x %s", plain(tipIn), plain(nozzlePsi)),
        Reaction.solidLbf(tipIn, nozzlePsi),
        "lbf",
        Reaction.SOURCE);
  }

  /** Reaction of a fog stream, lbf. */
  public static Step fogReaction(double flowGpm, double nozzlePsi) {
    return new Step(
        "nozzle reaction",
        "0.0505 Q sqrt(p)",
        text("0.0505 x %s x sqrt(%s)", plain(flowGpm), plain(nozzlePsi)),
        Reaction.fogLbf(flowGpm, nozzlePsi),
        "lbf",
        Reaction.SOURCE);
  }
}
