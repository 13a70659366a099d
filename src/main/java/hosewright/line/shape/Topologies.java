package hosewright.line.shape;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Topology;
import hosewright.line.check.PracticeChecks;
import hosewright.line.goods.Accessories;
import hosewright.line.goods.Eligibility;
import hosewright.line.goods.Standing;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Every topology for a number of lines side by side, over given hose lines. */
public final class Topologies {
  private final Dividers dividers;
  private final FullSize fullSize;
  private final List<List<Bridge.Link>> atSource;
  private final List<List<Bridge.Link>> atAppliance;
  private final Accessories accessories;
  private final Map<Double, List<List<LegShape.Midway>>> midway = new HashMap<>();
  private final List<HoseLine> attackHoses;
  private final Job job;

  /**
   * @param attackHoses what attack lines may be laid with; empty where none are asked for
   */
  public Topologies(
      Job job,
      Catalogue catalogue,
      Eligibility eligibility,
      Accessories accessories,
      List<HoseLine> attackHoses) {
    this.job = job;
    this.accessories = accessories;
    accessories.refuseMisfits();
    this.attackHoses = List.copyOf(attackHoses);
    this.dividers = new Dividers(job, catalogue, eligibility);
    this.fullSize = new FullSize(job);
    this.atSource = devices(Asked::atSource);
    this.atAppliance = devices(Asked::atAppliance);
  }

  /**
   * Every way to choose one item for each device asked for at a place, in the order the trade has
   * them stand, those alike in the order asked.
   */
  private List<List<Bridge.Link>> devices(Predicate<Asked> place) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String wanted : job.accessories()) {
      List<Item> items = accessories.inLine(wanted);
      if (!items.isEmpty() && place.test(accessories.asked(wanted))) {
        chosen =
            chosen.stream()
                .flatMap(before -> items.stream().map(item -> with(before, link(item))))
                .toList();
      }
    }
    return chosen.stream()
        .map(
            devices ->
                devices.stream()
                    .sorted(Comparator.comparingInt(one -> Standing.order(one.item().sort())))
                    .toList())
        .toList();
  }

  /** Water enters a device by its first end. */
  private static Bridge.Link link(Item item) {
    return new Bridge.Link(item, item.ends().get(0), item.ends().get(1));
  }

  /** Every choice of devices at stations along the hose; those of one station stand together. */
  private List<List<LegShape.Midway>> midway(double couplingSizeIn) {
    List<List<LegShape.Midway>> chosen = List.of(List.of());
    for (double stationFt : job.stationsFt()) {
      List<List<Bridge.Link>> here =
          fullSize
              .of(devices(asked -> asked.isAt(stationFt)), couplingSizeIn, couplingSizeIn)
              .stream()
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
  public List<Topology> of(List<HoseLine> hoses, int lines) {
    List<Topology> topologies = new ArrayList<>();
    for (HoseLine hose : hoses) {
      topologies.addAll(keepingTheRules(of(hose, lines)));
    }
    return topologies;
  }

  /** Those whose parts may stand where they do; where none are, all, so that it can be said why. */
  private List<Topology> keepingTheRules(List<Topology> ofOneHose) {
    List<Topology> kept =
        ofOneHose.stream().filter(topology -> PracticeChecks.keeps(job, topology)).toList();
    return kept.isEmpty() ? ofOneHose : kept;
  }

  private List<Topology> of(HoseLine hose, int lines) {
    List<Topology> topologies = new ArrayList<>();
    for (List<LegShape.Midway> stations :
        midway.computeIfAbsent(hose.couplingSizeIn(), this::midway)) {
      if (job.attack().isPresent()) {
        addWyes(hose, stations, topologies);
      } else if (lines == 1) {
        addOneLine(hose, stations, topologies);
      } else {
        addLines(hose, lines, stations, topologies);
      }
    }
    return topologies;
  }

  /** What stands at the source, before an end of a size. */
  private List<List<Bridge.Link>> atSource(double downstreamIn) {
    return fullSize.of(atSource, job.from().sizeIn(), downstreamIn);
  }

  /** What stands at each appliance, behind an end of a size. */
  private List<List<Bridge.Link>> atAppliance(double upstreamIn) {
    return fullSize.of(atAppliance, upstreamIn, job.to().sizeIn());
  }

  private void addOneLine(
      HoseLine hose, List<LegShape.Midway> stations, List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    for (List<Bridge.Link> before : atSource(hose.couplingSizeIn())) {
      for (List<Bridge.Link> after : atAppliance(hose.couplingSizeIn())) {
        add(1, before, new LegShape(hose, false, 1, neededFt, stations, after, 1), topologies);
      }
    }
  }

  /** Lines side by side, from outlets of their own or behind a wye. */
  private void addLines(
      HoseLine hose, int lines, List<LegShape.Midway> stations, List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    for (Bridge.Link siamese : dividers.siameses(lines)) {
      for (List<Bridge.Link> after : atAppliance(siamese.downstream().sizeIn())) {
        List<Bridge.Link> behind = Stream.concat(Stream.of(siamese), after.stream()).toList();
        LegShape leg = new LegShape(hose, false, lines, neededFt, stations, behind, 1);
        if (job.outlets() > 1) {
          atSource(hose.couplingSizeIn()).forEach(before -> add(lines, before, leg, topologies));
          continue;
        }
        for (Bridge.Link wye : dividers.wyes(lines)) {
          atSource(wye.upstream().sizeIn())
              .forEach(before -> add(1, with(before, wye), leg, topologies));
        }
      }
    }
  }

  private void addWyes(HoseLine hose, List<LegShape.Midway> stations, List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    int count = job.attack().orElseThrow().lines();
    for (List<Bridge.Link> before : atSource(hose.couplingSizeIn())) {
      for (Bridge.Link wye : dividers.wyes(count)) {
        LegShape supply = new LegShape(hose, false, 1, neededFt, stations, List.of(wye), 1);
        addAttacks(before, supply, count, topologies);
      }
    }
  }

  private void addAttacks(
      List<Bridge.Link> before, LegShape supply, int count, List<Topology> topologies) {
    double neededFt = job.attack().orElseThrow().neededFt(job.run().slack());
    for (HoseLine hose : attackHoses) {
      for (List<Bridge.Link> after : atAppliance(hose.couplingSizeIn())) {
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
