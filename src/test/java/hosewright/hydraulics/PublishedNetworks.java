package hosewright.hydraulics;

import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.Physical;
import hosewright.hydraulics.law.Water;
import hosewright.hydraulics.network.Link;
import hosewright.hydraulics.network.Network;
import hosewright.hydraulics.network.NetworkHydraulics;
import hosewright.hydraulics.network.NetworkState;
import hosewright.hydraulics.network.Node;
import hosewright.hydraulics.network.Required;
import hosewright.hydraulics.network.Shares;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** Published examples that a network answers, in the units of their source. */
final class PublishedNetworks {
  private static final double GPM_IN_M3_PER_S = 15850.323;
  private static final double FT_IN_M = 1 / 0.3048;
  private static final double IN_IN_M = 1 / 0.0254;

  private PublishedNetworks() {}

  /**
   * A shower and a toilet on one pipe of 15 mm at 200 kPa: the flow in all (0), of the shower (1)
   * and of the toilet (2).
   */
  static double branchFlowM3PerS(int end, double metersToSplit) {
    Network network =
        new Network(
            List.of(
                new Node.Source("main", new FixedPressure(200_000 / 6894.757)),
                new Node.Junction("tee"),
                new Node.End("shower", new Demand.OpenEnd(0.015 * IN_IN_M, 0)),
                new Node.End("toilet", new Demand.OpenEnd(0.015 * IN_IN_M, 0))),
            List.of(
                new Link("pipe", "main", "tee", List.of(pipe(metersToSplit, 0))),
                new Link("up", "tee", "shower", List.of(pipe(6, 2), losses(24.7))),
                new Link("across", "tee", "toilet", List.of(pipe(1, 1), losses(26.9)))));
    NetworkState state = NetworkHydraulics.arriving(network);
    double gpm =
        switch (end) {
          case 0 -> state.source("main").flowGpm();
          case 1 -> state.end("shower").oneGpm();
          default -> state.end("toilet").oneGpm();
        };
    return gpm / GPM_IN_M3_PER_S;
  }

  private static HoseLeg pipe(double meters, double riseM) {
    Water water = new Water(998 * 0.06242796, 1.004e-6 * FT_IN_M * FT_IN_M);
    return new HoseLeg(
        "pipe",
        new DarcyWeisbach(1.5e-6 * IN_IN_M, 0.015 * IN_IN_M, water),
        meters * FT_IN_M,
        riseM * FT_IN_M,
        0.015 * IN_IN_M,
        1,
        1);
  }

  /**
   * All that is lost besides the pipe, less the one velocity head that an open end takes itself.
   */
  private static Fitting losses(double k) {
    return new Fitting("fixtures", k - 1, 0.015 * IN_IN_M);
  }

  /**
   * The level to which water stands where a pipe from one reservoir divides to two, each pipe
   * losing k Q², m.
   */
  static double junctionLevelM(double fromM, double k, List<Double> toM, List<Double> toK) {
    // Levels are pressures at one height: a metre of water is a psi here, a gpm m³/s times 1,000.
    Network network =
        new Network(
            List.of(
                new Node.Source("high", new FixedPressure(fromM)),
                new Node.Junction("junction"),
                reservoir("middle", toM.get(0)),
                reservoir("low", toM.get(1))),
            List.of(
                link("first", "high", "junction", k),
                link("second", "junction", "middle", toK.get(0)),
                link("third", "junction", "low", toK.get(1))));
    return NetworkHydraulics.arriving(network).psi("junction");
  }

  /** A wide open end with so much water over it that it stands under this pressure. */
  private static Node.End reservoir(String name, double psi) {
    return new Node.End(name, new Demand.OpenEnd(60, psi / Physical.PSI_PER_FT));
  }

  private static Link link(String name, String begins, String ends, double k) {
    return new Link(
        name,
        begins,
        ends,
        List.of(new HoseLeg("pipe", new CoefficientLaw(k * 1e-6 * 1e4), 100, 20)));
  }

  /** What a pump below a standpipe gives more than stands at its top, nothing flowing. */
  static double standpipePsi(double riseFt) {
    HoseLeg riser = new HoseLeg("riser", new CoefficientLaw(1), riseFt, riseFt, 4, 1, 1);
    Network network =
        new Network(
            List.of(
                new Node.Source("pump", new FixedPressure(150)),
                new Node.End("outlet", new Demand.KFactor(10))),
            List.of(new Link("standpipe", "pump", "outlet", List.of(riser))));
    return 150 - NetworkHydraulics.allShut(network).psi("outlet");
  }

  /** What a line takes, by a loss stated for 100 ft at the flow. */
  static double longLinePsi(double psiPer100Ft, double lengthFt) {
    HoseLeg hose = new HoseLeg("hose", new CoefficientLaw(psiPer100Ft), lengthFt, 2.5);
    Network network =
        new Network(
            List.of(
                Node.Source.unknown("engine"),
                new Node.End("nozzle", new Demand.FlowAndPressure(100, 45))),
            List.of(new Link("line", "engine", "nozzle", List.of(hose))));
    Required required = NetworkHydraulics.required(network, Map.of("nozzle", 100.0));
    return required.sourcePsi("engine") - 45;
  }

  /**
   * What the hose takes where 200 ft of 2-1/2 in feed two 150 ft lines of 1-3/4 in with 150 gpm
   * each: before the wye (0), behind it (1), and both (2).
   */
  static double wyedLinePsi(int part) {
    HoseLeg supply = new HoseLeg("2-1/2 in", new CoefficientLaw(2), 200, 2.5);
    HoseLeg attack = new HoseLeg("1-3/4 in", new CoefficientLaw(10), 150, 1.75);
    Network network =
        new Network(
            List.of(
                Node.Source.unknown("pump"),
                new Node.Junction("wye"),
                new Node.End("left", new Demand.FlowAndPressure(150, 100)),
                new Node.End("right", new Demand.FlowAndPressure(150, 100))),
            List.of(
                new Link("supply", "pump", "wye", List.of(supply)),
                new Link("first", "wye", "left", List.of(attack)),
                new Link("second", "wye", "right", List.of(attack))));
    Required required = NetworkHydraulics.required(network, Map.of("left", 150.0, "right", 150.0));
    double atWyePsi = required.needPsi("wye");
    return switch (part) {
      case 0 -> required.sourcePsi("pump") - atWyePsi;
      case 1 -> atWyePsi - 100;
      default -> required.sourcePsi("pump") - 100;
    };
  }

  /** The flow in the first of two pipes over that in the second, each losing k Q². */
  static double shareOfTwo(double k1, double k2) {
    double[] shares = Shares.gpm(List.of(q -> k1 * q * q, q -> k2 * q * q), 1);
    return shares[0] / shares[1];
  }

  /**
   * Three pipes with one friction factor of 0.018 that share 2 m³/s: the flow in one (1 to 3),
   * m³/s, or the head lost (0), m.
   */
  static double shareOfThree(int line) {
    List<DoubleUnaryOperator> pipes =
        List.of(headLost(500, 0.5), headLost(200, 0.3), headLost(300, 0.15));
    double[] shares = Shares.gpm(pipes, 2);
    return line == 0 ? pipes.get(0).applyAsDouble(shares[0]) : shares[line - 1];
  }

  private static DoubleUnaryOperator headLost(double lengthM, double acrossM) {
    double area = Math.PI * acrossM * acrossM / 4;
    double k = 0.018 * lengthM / acrossM / area / area / 2 / 9.81;
    return q -> k * q * q;
  }
}
