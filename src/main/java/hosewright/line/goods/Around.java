package hosewright.line.goods;

import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Topology;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * What decides how many of a thing are needed beside a line: its hose, and how often it is coupled.
 */
record Around(List<Stretch> stretches) {

  Around {
    stretches = List.copyOf(stretches);
  }

  /**
   * One stretch of hose.
   *
   * @param lines how many such lie side by side
   * @param joints between two sections, of one of them
   * @param ends of hose at anything but hose, of one of them
   */
  record Stretch(double sizeIn, End inlet, End outlet, int lines, int joints, int ends) {

    static Stretch of(LegShape leg, int sections) {
      HoseLine hose = leg.hose();
      int breaks = leg.midway().size();
      return new Stretch(
          hose.sizeIn(),
          hose.inlet(),
          hose.outlet(),
          leg.lines(),
          sections - 1 - breaks,
          2 * (breaks + 1));
    }

    int allJoints() {
      return joints * lines;
    }

    int allEnds() {
      return ends * lines;
    }

    List<End> couplings() {
      return Stream.of(inlet, outlet).distinct().toList();
    }
  }

  static Around of(Topology topology, List<Lay> lays) {
    List<Stretch> stretches = new ArrayList<>();
    for (int i = 0; i < lays.size(); i++) {
      stretches.add(Stretch.of(topology.legs().get(i), lays.get(i).sections()));
    }
    return new Around(stretches);
  }

  /** With as few sections as length and devices allow: no lay needs fewer of anything. */
  static Around fewest(Topology topology) {
    return new Around(
        topology.legs().stream().map(leg -> Stretch.of(leg, fewestSections(leg))).toList());
  }

  private static int fewestSections(LegShape leg) {
    double longestFt = leg.hose().options().get(0).lengthFt();
    // A hair less, so that no rounding asks for one more.
    int toCover = (int) Math.ceil(leg.neededFt() / longestFt - 1e-6);
    return Math.max(leg.fewestSections(), toCover);
  }

  /** The stretch that begins at the source. */
  Stretch first() {
    return stretches.get(0);
  }
}
