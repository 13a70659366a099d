package hosewright.line.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.job.Network;
import hosewright.job.question.Asked;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.Topology;
import hosewright.line.goods.Eligibility;
import hosewright.line.hose.HoseLines;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Every choice of hose, direction, wye, siamese and valves, taken the plain way. */
final class PlainTopologies {
  private final Job job;
  private final Catalogue catalogue;
  private final NetPrice prices;
  private final Eligibility eligibility;
  private final PlainPractice practice;

  PlainTopologies(Job job, Catalogue catalogue, NetPrice prices) {
    this.job = job;
    this.catalogue = catalogue;
    this.prices = prices;
    this.eligibility = new Eligibility(job, prices);
    this.practice = new PlainPractice(job);
  }

  List<Topology> all() {
    List<Topology> topologies = new ArrayList<>();
    for (HoseLine hose : new HoseLines(job, catalogue, prices).withEverySection()) {
      for (List<LegShape.Midway> midway : midway(hose)) {
        for (boolean reversed : new boolean[] {false, true}) {
          addTopologies(hose, reversed, midway, topologies);
        }
      }
    }
    return topologies;
  }

  /** Valves asked for by kind or number: each choice of them. */
  private List<List<Bridge.Link>> devices(Predicate<Asked> place) {
    List<List<Bridge.Link>> chosen = List.of(List.of());
    for (String asked : job.accessories()) {
      if (!place.test(Asked.of(asked))) {
        continue;
      }
      String wanted = Asked.of(asked).what();
      List<Item> valves =
          wanted.equals("valve")
              ? usable(ItemKind.VALVE)
              : catalogue.item(wanted).filter(i -> i.kind() == ItemKind.VALVE).stream().toList();
      if (!valves.isEmpty()) {
        List<List<Bridge.Link>> more = new ArrayList<>();
        for (List<Bridge.Link> before : chosen) {
          for (Item valve : valves) {
            more.add(and(before, new Bridge.Link(valve, valve.ends().get(0), valve.ends().get(1))));
          }
        }
        chosen = more;
      }
    }
    return chosen;
  }

  private List<List<Bridge.Link>> atSource(double downstreamIn) {
    return practice.ofFullSize(devices(Asked::atSource), job.from().sizeIn(), downstreamIn);
  }

  private List<List<Bridge.Link>> atAppliance(double upstreamIn) {
    return practice.ofFullSize(devices(Asked::atAppliance), upstreamIn, job.to().sizeIn());
  }

  /** Each choice of valves at the stations asked for. */
  private List<List<LegShape.Midway>> midway(HoseLine hose) {
    List<List<LegShape.Midway>> chosen = List.of(List.of());
    for (double stationFt : job.stationsFt()) {
      List<List<LegShape.Midway>> more = new ArrayList<>();
      for (List<LegShape.Midway> before : chosen) {
        double sizeIn = hose.inlet().sizeIn();
        for (List<Bridge.Link> parts :
            practice.ofFullSize(devices(asked -> asked.isAt(stationFt)), sizeIn, sizeIn)) {
          more.add(and(before, new LegShape.Midway(stationFt, parts)));
        }
      }
      chosen = more;
    }
    return chosen;
  }

  private static <T> List<T> and(List<T> before, T last) {
    return Stream.concat(before.stream(), Stream.of(last)).toList();
  }

  /** The small shops have wyes and siameses for two lines: their like ends are known by place. */
  private void addTopologies(
      HoseLine hose, boolean reversed, List<LegShape.Midway> midway, List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    double sizeIn = hose.inlet().sizeIn();
    if (job.attack().isPresent()) {
      for (Item wye : usable(ItemKind.WYE)) {
        LegShape supply = new LegShape(hose, reversed, 1, neededFt, midway, List.of(asWye(wye)), 1);
        addAttacks(supply, topologies);
      }
      return;
    }
    if (job.wishes().lines().orElse(1) == 1) {
      for (List<Bridge.Link> before : atSource(sizeIn)) {
        for (List<Bridge.Link> after : atAppliance(sizeIn)) {
          LegShape leg = new LegShape(hose, reversed, 1, neededFt, midway, after, 1);
          topologies.add(new Topology(1, before, List.of(leg)));
        }
      }
      return;
    }
    for (Item siamese : usable(ItemKind.SIAMESE)) {
      Bridge.Link joined = new Bridge.Link(siamese, siamese.ends().get(0), siamese.ends().get(2));
      for (List<Bridge.Link> behind : atAppliance(joined.downstream().sizeIn())) {
        List<Bridge.Link> after = new ArrayList<>(List.of(joined));
        after.addAll(behind);
        addLines(new LegShape(hose, reversed, 2, neededFt, midway, after, 1), topologies);
      }
    }
  }

  private void addAttacks(LegShape supply, List<Topology> topologies) {
    Network.Attack attack = job.attack().orElseThrow();
    Job ofAttack = job.withWishes(job.wishes().ofSizes(attack.hoseSizesIn()));
    double attackFt = attack.lengthFt() * (1 + job.run().slack());
    for (HoseLine other : new HoseLines(ofAttack, catalogue, prices).withEverySection()) {
      for (boolean turned : new boolean[] {false, true}) {
        for (List<Bridge.Link> after : atAppliance(other.inlet().sizeIn())) {
          LegShape branch = new LegShape(other, turned, 2, attackFt, List.of(), after, 2);
          for (List<Bridge.Link> before : atSource(supply.hose().inlet().sizeIn())) {
            topologies.add(new Topology(1, before, List.of(supply, branch)));
          }
        }
      }
    }
  }

  private void addLines(LegShape leg, List<Topology> topologies) {
    if (job.network().outlets() == 2) {
      atSource(leg.hose().inlet().sizeIn())
          .forEach(before -> topologies.add(new Topology(2, before, List.of(leg))));
      return;
    }
    for (Item wye : usable(ItemKind.WYE)) {
      atSource(wye.ends().get(0).sizeIn())
          .forEach(
              before -> topologies.add(new Topology(1, and(before, asWye(wye)), List.of(leg))));
    }
  }

  private static Bridge.Link asWye(Item wye) {
    return new Bridge.Link(wye, wye.ends().get(0), wye.ends().get(1));
  }

  private List<Item> usable(ItemKind kind) {
    return catalogue.ofKind(kind).stream().filter(eligibility::wetted).toList();
  }
}
