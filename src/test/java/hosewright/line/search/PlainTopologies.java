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

  PlainTopologies(Job job, Catalogue catalogue, NetPrice prices) {
    this.job = job;
    this.catalogue = catalogue;
    this.prices = prices;
    this.eligibility = new Eligibility(job, prices);
  }

  List<Topology> all() {
    List<Topology> topologies = new ArrayList<>();
    for (HoseLine hose : new HoseLines(job, catalogue, prices).withEverySection()) {
      for (List<Bridge.Link> atSource : devices(Asked::atSource, 0)) {
        for (List<LegShape.Midway> midway : midway(hose)) {
          for (List<Bridge.Link> atAppliance : devices(Asked::atAppliance, 0)) {
            for (boolean reversed : new boolean[] {false, true}) {
              addTopologies(hose, reversed, atSource, midway, atAppliance, topologies);
            }
          }
        }
      }
    }
    return topologies;
  }

  /**
   * Valves asked for by kind or number: each choice of them; where some are as wide as a hose's
   * couplings, those.
   */
  private List<List<Bridge.Link>> devices(Predicate<Asked> place, double couplingSizeIn) {
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
      Predicate<Item> wide =
          valve ->
              valve.ends().get(0).sizeIn() >= couplingSizeIn
                  && valve.ends().get(1).sizeIn() >= couplingSizeIn;
      if (valves.stream().anyMatch(wide)) {
        valves = valves.stream().filter(wide).toList();
      }
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

  /** Each choice of valves at the stations asked for. */
  private List<List<LegShape.Midway>> midway(HoseLine hose) {
    List<List<LegShape.Midway>> chosen = List.of(List.of());
    for (double stationFt : job.stationsFt()) {
      List<List<LegShape.Midway>> more = new ArrayList<>();
      for (List<LegShape.Midway> before : chosen) {
        for (List<Bridge.Link> parts :
            devices(asked -> asked.isAt(stationFt), hose.inlet().sizeIn())) {
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
      HoseLine hose,
      boolean reversed,
      List<Bridge.Link> atSource,
      List<LegShape.Midway> midway,
      List<Bridge.Link> atAppliance,
      List<Topology> topologies) {
    double neededFt = job.run().neededFt();
    if (job.attack().isPresent()) {
      Network.Attack attack = job.attack().get();
      Job ofAttack = job.withWishes(job.wishes().ofSizes(attack.hoseSizesIn()));
      double attackFt = attack.lengthFt() * (1 + job.run().slack());
      for (Item wye : usable(ItemKind.WYE)) {
        LegShape supply = new LegShape(hose, reversed, 1, neededFt, midway, List.of(asWye(wye)), 1);
        for (HoseLine other : new HoseLines(ofAttack, catalogue, prices).withEverySection()) {
          for (boolean turned : new boolean[] {false, true}) {
            LegShape branch = new LegShape(other, turned, 2, attackFt, List.of(), atAppliance, 2);
            topologies.add(new Topology(1, atSource, List.of(supply, branch)));
          }
        }
      }
      return;
    }
    if (job.wishes().lines().orElse(1) == 1) {
      LegShape leg = new LegShape(hose, reversed, 1, neededFt, midway, atAppliance, 1);
      topologies.add(new Topology(1, atSource, List.of(leg)));
      return;
    }
    for (Item siamese : usable(ItemKind.SIAMESE)) {
      List<Bridge.Link> after = new ArrayList<>();
      after.add(new Bridge.Link(siamese, siamese.ends().get(0), siamese.ends().get(2)));
      after.addAll(atAppliance);
      LegShape leg = new LegShape(hose, reversed, 2, neededFt, midway, after, 1);
      if (job.network().outlets() == 2) {
        topologies.add(new Topology(2, atSource, List.of(leg)));
        continue;
      }
      for (Item wye : usable(ItemKind.WYE)) {
        topologies.add(new Topology(1, and(atSource, asWye(wye)), List.of(leg)));
      }
    }
  }

  private static Bridge.Link asWye(Item wye) {
    return new Bridge.Link(wye, wye.ends().get(0), wye.ends().get(1));
  }

  private List<Item> usable(ItemKind kind) {
    return catalogue.ofKind(kind).stream().filter(eligibility::wetted).toList();
  }
}
