package hosewright.line.layout.search;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.PumpFacts;
import hosewright.catalogue.Stated;
import hosewright.hydraulics.law.Physical;
import hosewright.job.Job;
import hosewright.job.layout.LayoutBooster;
import hosewright.job.layout.LayoutPump;
import hosewright.job.layout.LegJob;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Placed;
import hosewright.line.assembly.Split;
import hosewright.line.goods.Eligibility;
import hosewright.line.model.CheckId;
import hosewright.line.water.OuterVelocity;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/** What the catalogue has to divide water among given legs. */
final class Dividing {
  private static final Practice PLAIN_WYE = Practice.named(CheckId.PLAIN_WYE.word());

  private final List<Item> items;
  private final List<Item> siameses;
  private final List<Item> pumps;

  Dividing(Catalogue catalogue, Eligibility eligibility) {
    this.items = catalogue.ofKind(ItemKind.WYE).stream().filter(eligibility::wetted).toList();
    this.siameses =
        catalogue.ofKind(ItemKind.SIAMESE).stream().filter(eligibility::wetted).toList();
    this.pumps =
        catalogue.ofKind(ItemKind.PUMP).stream()
            .filter(eligibility::wetted)
            .filter(item -> item.form().pump().isPresent())
            .toList();
  }

  /** Every siamese in which legs may meet. */
  List<Divider> joining(Job whole, LegJob legs) {
    List<Divider> all = new ArrayList<>();
    for (Item item : siameses) {
      Split.asSiamese(item, legs.outlets())
          .map(link -> Divider.joining(link, legs))
          .filter(divider -> !tooFast(whole, divider, legs))
          .ifPresent(all::add);
    }
    return all;
  }

  private static boolean tooFast(Job whole, Divider siamese, LegJob legs) {
    Placed part = siamese.towards(0);
    return isLimited(whole)
        && Math.max(
                Physical.velocityFtPerS(legs.eachGpm(), part.portIn(siamese.inlet())),
                Physical.velocityFtPerS(legs.flowGpm(), part.portIn(siamese.outlets().get(0))))
            > OuterVelocity.FITTINGS.limit().orElseThrow();
  }

  private static boolean isLimited(Job whole) {
    return whole.service().isWater() && !whole.lifts(OuterVelocity.FITTINGS);
  }

  /** Every way to hang legs on one item; none where nothing of the kind is sold. */
  List<Divider> among(Job whole, List<LegJob> legs) {
    int outlets = legs.stream().mapToInt(LegJob::outlets).sum();
    boolean gates = legs.stream().anyMatch(leg -> handLine(leg)) && !whole.lifts(PLAIN_WYE);
    List<Divider> all = new ArrayList<>();
    for (Item item : items) {
      int spare = item.ends().size() - 1 - outlets;
      if (spare < 0
          || spare > 0 && item.form().gated() != Stated.YES
          || gates && item.form().gated() == Stated.NO) {
        continue;
      }
      List<End> free = new ArrayList<>(item.ends().subList(1, item.ends().size()));
      hang(legs, free, new ArrayList<>(), on -> all.add(Divider.of(item, on, legs)));
    }
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    return all.stream().filter(divider -> !tooFast(whole, divider, legs, wholeGpm)).toList();
  }

  /** Every way to hang legs on a pump that is sold and whose curve reaches their flow. */
  List<Divider> among(LayoutBooster asked, List<LegJob> legs) {
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    List<Divider> all = new ArrayList<>();
    for (Item item : pumps) {
      List<PumpFacts.Point> curve = item.form().pump().orElseThrow().curve();
      boolean reaches = curve.get(curve.size() - 1).flowGpm() >= wholeGpm;
      if (asked.item().map(item.number()::equals).orElse(reaches)) {
        hang(
            legs,
            new ArrayList<>(item.ends().subList(1, item.ends().size())),
            new ArrayList<>(),
            outlets -> all.add(Divider.of(item, asked, wholeGpm, outlets)));
      }
    }
    return all;
  }

  /** Every way to hang legs on the discharges of a pump. */
  static List<Divider> among(LayoutPump pump, List<LegJob> legs) {
    double wholeGpm = legs.stream().mapToDouble(LegJob::flowGpm).sum();
    List<Divider> all = new ArrayList<>();
    hang(
        legs,
        new ArrayList<>(pump.discharges()),
        new ArrayList<>(),
        outlets -> all.add(Divider.of(pump, wholeGpm, outlets)));
    return all;
  }

  private static boolean handLine(LegJob leg) {
    return leg.last() && leg.job().appliance().handHeld() && leg.job().service().use().isFire();
  }

  private static void hang(
      List<LegJob> legs, List<End> free, List<End> chosen, Consumer<List<End>> taker) {
    if (chosen.size() == legs.size()) {
      taker.accept(chosen);
      return;
    }
    int copies = legs.get(chosen.size()).outlets();
    Set<End> kinds = new LinkedHashSet<>(free);
    for (End end : kinds) {
      if (free.stream().filter(end::equals).count() >= copies) {
        List<End> left = new ArrayList<>(free);
        for (int i = 0; i < copies; i++) {
          left.remove(end);
        }
        chosen.add(end);
        hang(legs, left, chosen, taker);
        chosen.remove(chosen.size() - 1);
      }
    }
  }

  private static boolean tooFast(Job whole, Divider divider, List<LegJob> legs, double wholeGpm) {
    if (!isLimited(whole)) {
      return false;
    }
    double most = OuterVelocity.FITTINGS.limit().orElseThrow();
    for (int i = 0; i < legs.size(); i++) {
      double portIn = divider.towards(i).portIn(divider.outlets().get(i));
      if (Physical.velocityFtPerS(legs.get(i).eachGpm(), portIn) > most) {
        return true;
      }
    }
    return Physical.velocityFtPerS(wholeGpm, divider.towards(0).portIn(divider.inlet())) > most;
  }
}
