package hosewright.hydraulics.network;

import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.HazenWilliams;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * Layouts drawn at random from a seed: trees of any shape, with pumps, lines that part and meet
 * again, a second source, take-offs along a header, heights, and every sort of end.
 */
final class RandomNetworks {
  private final Random random;
  private final List<Node> nodes = new ArrayList<>();
  private final List<Link> links = new ArrayList<>();
  private final Map<String, Double> heightsFt = new HashMap<>();

  private RandomNetworks(long seed) {
    random = new Random(seed);
  }

  /** The layout of a seed. */
  static Network of(long seed) {
    RandomNetworks drawn = new RandomNetworks(seed);
    String first = drawn.source("source");
    if (drawn.chance(0.2)) {
      String meeting = drawn.junction("siamese");
      drawn.link(first, meeting);
      drawn.link(drawn.source("other source"), meeting);
      first = meeting;
    }
    drawn.grow(first, 0);
    return new Network(drawn.nodes, drawn.links);
  }

  /** Everything behind a node. */
  private void grow(String from, int depth) {
    int ways = depth > 3 ? 1 : 1 + random.nextInt(3);
    for (int i = 0; i < ways; i++) {
      double what = random.nextDouble();
      if (depth > 3 || what < 0.35) {
        end(from);
      } else if (what < 0.5) {
        String pump = "pump " + nodes.size();
        nodes.add(new Node.Pump(pump, pump(60, 200)));
        link(from, pump);
        grow(pump, depth + 1);
      } else if (what < 0.75) {
        String meeting = junction("join " + nodes.size());
        int lines = 2 + random.nextInt(2);
        for (int line = 0; line < lines; line++) {
          if (chance(0.3)) {
            String between = junction("between " + nodes.size());
            link(from, between);
            link(between, meeting);
            if (chance(0.3)) {
              end(between);
            }
          } else {
            link(from, meeting);
          }
        }
        grow(meeting, depth + 1);
      } else {
        String split = junction("split " + nodes.size());
        link(from, split);
        grow(split, depth + 1);
      }
    }
  }

  private String source(String name) {
    double heightFt = chance(0.3) ? between(-20, 20) : 0;
    Supply supply =
        switch (random.nextInt(3)) {
          case 0 -> new FixedPressure(between(60, 250));
          case 1 -> pump(100, 250);
          default ->
              new Hydrant(between(50, 150), between(5, 45), between(500, 2_000), between(0, 10));
        };
    nodes.add(new Node.Source(name, heightFt, java.util.Optional.of(supply)));
    heightsFt.put(name, heightFt);
    return name;
  }

  private String junction(String name) {
    nodes.add(new Node.Junction(name));
    return name;
  }

  private void end(String from) {
    String name = "end " + nodes.size();
    nodes.add(new Node.End(name, demand()));
    link(from, name, chance(0.2) ? 2 + random.nextInt(2) : 1);
  }

  private void link(String begins, String ends) {
    link(begins, ends, 1);
  }

  private void link(String begins, String ends, int copies) {
    List<LineElement> elements = new ArrayList<>();
    double lengthFt = 25 * (1 + random.nextInt(24));
    double riseFt =
        heightsFt.containsKey(ends)
            ? heightsFt.get(ends) - heightsFt.get(begins)
            : lengthFt * between(-0.08, 0.08);
    lengthFt = Math.max(lengthFt, Math.abs(riseFt));
    heightsFt.put(ends, heightsFt.get(begins) + riseFt);
    double boreIn = between(2.5, 5);
    elements.add(new HoseLeg("hose", law(boreIn), lengthFt, riseFt, boreIn, 1, 4));
    if (chance(0.5)) {
      elements.add(new Fitting("adapter", between(0, 4), between(1.5, 4)));
    }
    if (chance(0.15)) {
      elements.add(new ApplianceLoss("appliance", 350, between(2, 25)));
    }
    links.add(
        new Link("leg " + links.size(), begins, ends, elements, chance(0.15) ? 2 : 1, copies));
  }

  private FrictionLaw law(double boreIn) {
    return switch (random.nextInt(4)) {
      case 0 -> new HazenWilliams(between(100, 150), boreIn);
      case 1 -> new DarcyWeisbach(between(0, 0.01), boreIn, 60.0);
      default -> new CoefficientLaw(between(0.08, 6));
    };
  }

  private Demand demand() {
    return switch (random.nextInt(6)) {
      case 0 -> new Demand.SmoothBore(between(0.5, 1.5));
      case 1 -> new Demand.KFactor(between(5, 60));
      case 2 -> new Demand.FixedGallonage(between(60, 500), 100);
      case 3 -> new Demand.AutomaticFog(60, 350, 100);
      case 4 -> new Demand.OpenEnd(between(1.5, 3), chance(0.5) ? between(0, 30) : 0);
      default -> new Demand.FlowAndPressure(between(50, 500), between(30, 120));
    };
  }

  private PumpCurve pump(double leastPsi, double mostPsi) {
    List<PumpCurve.Point> points = new ArrayList<>();
    double flowGpm = 0;
    double psi = between(leastPsi, mostPsi);
    int count = 2 + random.nextInt(4);
    for (int i = 0; i < count; i++) {
      points.add(new PumpCurve.Point(flowGpm, psi));
      flowGpm += between(100, 600);
      psi -= between(0, psi / 3);
    }
    return new PumpCurve(points);
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private double between(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }
}
