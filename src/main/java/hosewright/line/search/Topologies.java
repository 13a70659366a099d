package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Topology;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Eligibility;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Every topology for a number of lines side by side, over given hose lines. */
final class Topologies {
  private final Dividers dividers;
  private final List<List<Bridge.Link>> atSource;
  private final List<List<Bridge.Link>> atAppliance;
  private final Accessories accessories;
  private final Map<Double, List<List<LegShape.Midway>>> midway = new HashMap<>();
  private final List<HoseLine> attackHoses;
  private final Job job;

  /**
   * @param attackHoses what attack lines may be laid with; empty where none are asked for
   */
  Topologies(
      Job job,
      Catalogue catalogue,
      Eligibility eligibility,
      Accessories accessories,
      List<HoseLine> attackHoses) {
    this.job = job;
    this.accessories = accessories;
    job.accessories().forEach(accessories::refuseLoose);
    this.attackHoses = List.copyOf(attackHoses);
    this.dividers = new Dividers(job, catalogue, eligibility);
    this.atSource = devices(Asked::atSource, 0);
    this.atAppliance = devices(Asked::atAppliance, 0);
  }

  /**
   * Every way to choose one item for each device asked for at a place, in the order asked.
   *
   * @param sizeIn no end of a device is smaller, where one such is sold, in
   */
  private List<List<Bridge.Link>> devices(Predicate<Asked> place, double sizeIn) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String wanted : job.accessories()) {
      List<Item> items = wideEnough(accessories.inLine(wanted), sizeIn);
      if (!items.isEmpty() && place.test(Asked.of(wanted))) {
        chosen =
            chosen.stream()
                .flatMap(before -> items.stream().map(item -> with(before, link(item))))
                .toList();
      }
    }
    return chosen;
  }

  private static List<Item> wideEnough(List<Item> items, double sizeIn) {
    List<Item> wide =
        items.stream()
            .filter(item -> item.ends().stream().allMatch(end -> end.sizeIn() >= sizeIn))
            .toList();
    return wide.isEmpty() ? items : wide;
  }

  /** Water enters a device by its first end. */
  private static Bridge.Link link(Item item) {
    return new Bridge.Link(item, item.ends().get(0), item.ends().get(1));
  }

  /**
   * Every choice of devices at stations along the hose; those of one station stand together. None
   * is narrower than the couplings it stands between, where one so wide is sold.
   */
  private List<List<LegShape.Midway>> midway(double couplingSizeIn) {
    List<List<LegShape.Midway>> chosen = List.of(List.of());
    for (double stationFt : job.stationsFt()) {
      List<List<Bridge.Link>> here =
          devices(asked -> asked.isAt(stationFt), couplingSizeIn).stream()
              .filter(parts -> !parts.isEmpty())
              .toList();
      if (!here.isEmpty()) {
        chosen =
            chosen.stream()
                .flatMap(
                    before ->
                        here.stream()
                            .map(parts -> with(before, new LegShape.Midway(stationFt, parts))))
                .toList();
      }
    }
    return chosen;
  }

  private static <T> List<T> with(List<T> before, T last) {
    return Stream.concat(before.stream(), Stream.of(last)).toList();
  }

  /**
   * Every topology.
   *
   * @param hoses what the line that starts at the source may be laid with
   * @param lines side by side from the source; as many as the job has outlets, if it has several
   */
  List<Topology> of(List<HoseLine> hoses, int lines) {
    List<Topology> topologies = new ArrayList<>();
    for (HoseLine hose : hoses) {
      for (List<Bridge.Link> before : atSource) {
        for (List<LegShape.Midway> stations :
            midway.computeIfAbsent(hose.couplingSizeIn(), this::midway)) {
          addTopologies(hose, lines, before, stations, topologies);
        }
      }
    }
    return topologies;
  }

  private void addTopologies(
      HoseLine hose,
      int lines,
      List<Bridge.Link> before,
      List<LegShape.Midway> stations,
      List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    if (job.attack().isPresent()) {
      int count = job.attack().get().lines();
      for (Bridge.Link wye : dividers.wyes(count)) {
        LegShape supply = new LegShape(hose, false, 1, neededFt, stations, List.of(wye), 1);
        addAttacks(before, supply, count, topologies);
      }
      return;
    }
    for (List<Bridge.Link> after : atAppliance) {
      if (lines == 1) {
        add(1, before, new LegShape(hose, false, 1, neededFt, stations, after, 1), topologies);
        continue;
      }
      for (Bridge.Link siamese : dividers.siameses(lines)) {
        List<Bridge.Link> behind = Stream.concat(Stream.of(siamese), after.stream()).toList();
        LegShape leg = new LegShape(hose, false, lines, neededFt, stations, behind, 1);
        if (job.outlets() > 1) {
          add(lines, before, leg, topologies);
        } else {
          dividers.wyes(lines).forEach(wye -> add(1, with(before, wye), leg, topologies));
        }
      }
    }
  }

  private void addAttacks(
      List<Bridge.Link> before, LegShape supply, int count, List<Topology> topologies) {
    double neededFt = job.attack().orElseThrow().neededFt(job.run().slack());
    for (HoseLine hose : attackHoses) {
      for (List<Bridge.Link> after : atAppliance) {
        LegShape attack = new LegShape(hose, false, count, neededFt, List.of(), after, count);
        for (LegShape from : bothWays(supply)) {
          for (LegShape to : bothWays(attack)) {
            topologies.add(new Topology(1, before, List.of(from, to)));
          }
        }
      }
    }
  }

  private static void add(
      int outlets, List<Bridge.Link> before, LegShape leg, List<Topology> topologies) {
    bothWays(leg).forEach(way -> topologies.add(new Topology(outlets, before, List.of(way))));
  }

  private static List<LegShape> bothWays(LegShape leg) {
    return leg.hose().isGendered() ? List.of(leg, leg.turned()) : List.of(leg);
  }
}
