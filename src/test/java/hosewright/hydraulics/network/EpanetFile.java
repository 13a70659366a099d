package hosewright.hydraulics.network;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.Hydrant;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.Supply;
import hosewright.hydraulics.law.DarcyWeisbach;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.hydraulics.law.Physical;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A layout as EPANET reads it. It knows heads in feet, so pressures become feet of water; like
 * lines and copies are written out one by one, so that their sharing is judged too.
 *
 * <p>A coefficient and a fitting are a pipe next to no length with the minor loss that takes as
 * much; a source by its curve is a reservoir at its level with a pump; an end by Q = k sqrt(p) is
 * an emitter; every link begins with a check valve. Nodes are N0, N1 ... in the network's order, a
 * pump's discharge N1d, the first pipe of each line of a link L0.1, L0.2 ...
 */
final class EpanetFile {
  private static final double NEXT_TO_NOTHING_FT = 0.001;
  private static final double WIDE_IN = 12;

  /** EPANET's own weight of water, in which it reads emitters, psi per ft. */
  private static final double EPANETS_PSI_PER_FT = 0.4333;

  /** Its rounded 8/(g π²), and its gpm in a cubic foot a second. */
  private static final double EPANETS_MINOR_LOSS = 0.02517;

  private static final double EPANETS_GPM_PER_CUBIC_FT = 448.831;

  private final Network network;
  private final RandomNetworks.Drawn drawn;
  private final Map<String, Double> heightsFt;
  private final List<String> junctions = new ArrayList<>();
  private final List<String> reservoirs = new ArrayList<>();
  private final List<String> pipes = new ArrayList<>();
  private final List<String> pumps = new ArrayList<>();
  private final List<String> emitters = new ArrayList<>();
  private final List<String> curves = new ArrayList<>();

  private EpanetFile(Network network, RandomNetworks.Drawn drawn) {
    this.network = network;
    this.drawn = drawn;
    this.heightsFt = network.heightsFt();
  }

  /** With sources by their curves and so many copies of each end open. */
  static String sought(Network network, RandomNetworks.Drawn drawn, Map<String, Integer> open) {
    EpanetFile file = new EpanetFile(network, drawn);
    for (Node.Source source : network.nodes(Node.Source.class)) {
      file.source(source, source.supply().orElseThrow());
    }
    file.pumps();
    for (Node.End end : network.nodes(Node.End.class)) {
      file.end(end, open.getOrDefault(end.name(), 0), 0);
    }
    return file.text();
  }

  /** With sources at the pressures that the flows need, and those flows taken at the ends. */
  static String given(
      Network network, RandomNetworks.Drawn drawn, Required required, Map<String, Double> gpm) {
    EpanetFile file = new EpanetFile(network, drawn);
    for (Node.Source source : network.nodes(Node.Source.class)) {
      file.reservoir(source, required.sourcePsi(source.name()));
    }
    file.pumps();
    for (Node.End end : network.nodes(Node.End.class)) {
      file.end(end, network.copies(end.name()), gpm.get(end.name()));
    }
    return file.text();
  }

  private String id(String node) {
    for (int i = 0; i < network.nodes().size(); i++) {
      if (network.nodes().get(i).name().equals(node)) {
        return "N" + i;
      }
    }
    throw new IllegalArgumentException(node);
  }

  private static void line(List<String> lines, String format, Object... values) {
    lines.add(String.format(Locale.ROOT, format, values));
  }

  private void reservoir(Node.Source source, double psi) {
    line(reservoirs, "%s %.5f", id(source.name()), source.heightFt() + psi / Physical.PSI_PER_FT);
  }

  private void source(Node.Source source, Supply supply) {
    if (supply instanceof FixedPressure fixed) {
      reservoir(source, fixed.psi());
      return;
    }
    String id = id(source.name());
    line(reservoirs, "%sw %.5f", id, source.heightFt());
    line(junctions, "%s %.5f 0", id, source.heightFt());
    pump(id + "w", id, supply);
  }

  private void pumps() {
    for (Node node : network.nodes()) {
      String id = id(node.name());
      if (node instanceof Node.Pump pump) {
        line(junctions, "%s %.5f 0", id, heightsFt.get(node.name()));
        line(junctions, "%sd %.5f 0", id, heightsFt.get(node.name()));
        pump(id, id + "d", pump.boost());
      } else if (node instanceof Node.Junction) {
        line(junctions, "%s %.5f 0", id, heightsFt.get(node.name()));
      }
    }
    for (int i = 0; i < network.links().size(); i++) {
      Link link = network.links().get(i);
      if (link.copies() == 1) {
        link(i, 1, id(link.ends()));
      }
    }
  }

  private void pump(String from, String to, Supply supply) {
    line(pumps, "P%s %s %s HEAD C%s", to, from, to, to);
    for (double gpm : flowsOf(supply)) {
      line(curves, "C%s %.5f %.5f", to, gpm, supply.pressurePsi(gpm) / Physical.PSI_PER_FT);
    }
  }

  /** Points between which a curve may be drawn straight; fewer than four EPANET would bend. */
  private static List<Double> flowsOf(Supply supply) {
    List<Double> flows = new ArrayList<>();
    if (supply instanceof Hydrant hydrant) {
      for (int i = 0; i <= 60; i++) {
        flows.add(hydrant.mostFlowGpm() * i / 60);
      }
      return flows;
    }
    List<PumpCurve.Point> points = ((PumpCurve) supply).points();
    for (int i = 0; i < points.size() - 1; i++) {
      double gpm = points.get(i).flowGpm();
      double step = (points.get(i + 1).flowGpm() - gpm) / 3;
      flows.addAll(List.of(gpm, gpm + step, gpm + 2 * step));
    }
    flows.add(points.get(points.size() - 1).flowGpm());
    return flows;
  }

  private void end(Node.End end, int open, double wantedGpm) {
    String id = id(end.name());
    double waterFt = end.demand() instanceof Demand.OpenEnd tank ? tank.waterAboveFt() : 0;
    int copies = network.copies(end.name());
    for (int copy = 1; copy <= copies; copy++) {
      String one = copy == 1 ? id : id + "." + copy;
      boolean water = copy <= open && wantedGpm == 0;
      line(
          junctions,
          "%s %.5f %.5f",
          one,
          heightsFt.get(end.name()) + (water ? waterFt : 0),
          copy <= open ? wantedGpm : 0);
      if (water) {
        // Of water above the end nothing is lost, so k is what flows at a psi more than that.
        double standingPsi = end.demand().needPsi(0);
        double k = 100 / Math.sqrt(end.demand().needPsi(100) - standingPsi);
        line(emitters, "%s %.6f", one, k * Math.sqrt(Physical.PSI_PER_FT / EPANETS_PSI_PER_FT));
      }
      for (int i = 0; copies > 1 && i < network.links().size(); i++) {
        if (network.links().get(i).ends().equals(end.name())) {
          link(i, copy, one);
        }
      }
    }
  }

  private void link(int number, int copy, String end) {
    Link link = network.links().get(number);
    Node beginning = network.node(link.begins());
    String begin = id(link.begins()) + (beginning instanceof Node.Pump ? "d" : "");
    for (int i = 1; i <= link.lines(); i++) {
      String name = "L" + number + "." + ((copy - 1) * link.lines() + i);
      String from = begin;
      double heightFt = heightsFt.get(link.begins());
      for (int at = 0; at < link.elements().size(); at++) {
        LineElement element = link.elements().get(at);
        boolean last = at == link.elements().size() - 1;
        String to = last ? end : name + "-" + at;
        heightFt += element.riseFt();
        if (!last) {
          line(junctions, "%s %.5f 0", to, heightFt);
        }
        pipe(at == 0 ? name : name + "p" + at, from, to, element, at == 0 ? "CV" : "Open");
        from = to;
      }
    }
  }

  private void pipe(String name, String from, String to, LineElement element, String status) {
    if (element instanceof HoseLeg hose && hose.law() instanceof HazenWilliams law) {
      line(
          pipes,
          "%s %s %s %.5f %.6f %.5f 0 %s",
          name,
          from,
          to,
          hose.lengthFt(),
          law.boreIn(),
          law.c(),
          status);
    } else if (element instanceof HoseLeg hose && hose.law() instanceof DarcyWeisbach law) {
      line(
          pipes,
          "%s %s %s %.5f %.6f %.6f 0 %s",
          name,
          from,
          to,
          hose.lengthFt(),
          law.boreIn(),
          law.roughnessIn() / 12 * 1_000,
          status);
    } else if (element instanceof HoseLeg || element instanceof Fitting) {
      double headFt = element.lossPsi(100) / Physical.PSI_PER_FT;
      double cubicFtPerS = 100 / EPANETS_GPM_PER_CUBIC_FT;
      double wideFt = WIDE_IN / 12;
      double k = headFt * Math.pow(wideFt, 4) / EPANETS_MINOR_LOSS / cubicFtPerS / cubicFtPerS;
      double smooth = drawn == RandomNetworks.Drawn.WITH_HAZEN_WILLIAMS ? 150 : 0.001;
      line(
          pipes,
          "%s %s %s %.5f %.6f %.5f %.5f %s",
          name,
          from,
          to,
          NEXT_TO_NOTHING_FT,
          WIDE_IN,
          smooth,
          k,
          status);
    } else {
      throw new IllegalArgumentException(element.toString());
    }
  }

  private String text() {
    boolean hazen = drawn == RandomNetworks.Drawn.WITH_HAZEN_WILLIAMS;
    return section("JUNCTIONS", junctions)
        + section("RESERVOIRS", reservoirs)
        + section("PIPES", pipes)
        + section("PUMPS", pumps)
        + section("EMITTERS", emitters)
        + section("CURVES", curves)
        + section(
            "OPTIONS",
            List.of(
                "UNITS GPM",
                "HEADLOSS " + (hazen ? "H-W" : "D-W"),
                // Water at 60 °F, ft²/s, as Water has it.
                "VISCOSITY 0.0000120896",
                "TRIALS 1000",
                "ACCURACY 0.0000001",
                "EMITTER EXPONENT 0.5"))
        + "[END]\n";
  }

  private static String section(String name, List<String> lines) {
    return "[" + name + "]\n" + String.join("\n", lines) + "\n";
  }
}
