package hosewright.line.plan;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.Item;
import hosewright.catalogue.Stated;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.job.question.Practice;
import hosewright.line.check.DistrictCheck;
import hosewright.line.goods.Billing;
import hosewright.line.layout.DraftPlanner;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.LayoutChecks;
import hosewright.line.layout.LayoutPlanner;
import hosewright.line.layout.search.Divider;
import hosewright.line.model.Accessory;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.LinePlan;
import hosewright.line.search.Evaluated;
import hosewright.line.search.Shop;
import hosewright.thread.LocalThreads;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/** Writes a layout that was found down as the record that papers and scripts read. */
final class LayoutPlanWriter {
  /** Less than a gauge shows. */
  private static final double LEAST_THROTTLED_PSI = 1;

  private final LayoutJob layout;
  private final Shop shop;
  private final LocalThreads register;
  private final Optional<Item> strainer;

  /**
   * @param strainer what the suction leg begins at, where one draws
   */
  LayoutPlanWriter(LayoutJob layout, Shop shop, LocalThreads register, Optional<Item> strainer) {
    this.strainer = strainer;
    this.layout = layout;
    this.shop = shop;
    this.register = register;
  }

  LinePlan write(LayoutPlanner.Found found) {
    return found.best().map(best -> write(best, found)).orElseGet(() -> nothing(found));
  }

  private LinePlan write(FedLayout fed, LayoutPlanner.Found found) {
    List<Check> checks = new ArrayList<>(LayoutChecks.of(layout, fed));
    Set<String> cautions = new LinkedHashSet<>();
    List<Accessory> accessories = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      Evaluated alone = alone(fed, leg, checks);
      DistrictCheck.of(leg.job(), leg.line(), register).stream()
          .filter(check -> checks.stream().noneMatch(other -> other.note().equals(check.note())))
          .forEach(checks::add);
      List<Check> ofLeg =
          checks.stream().filter(check -> check.leg().equals(Optional.of(leg.name()))).toList();
      cautions.addAll(Caution.forPlan(leg.job(), alone, ofLeg));
      accessories.addAll(AccessoryWriter.of(leg.job(), alone));
    }
    throttles(fed).forEach(cautions::add);
    strainer
        .filter(item -> item.lossCoefficient().isEmpty())
        .ifPresent(
            item ->
                cautions.add(
                    "What "
                        + item.number()
                        + " takes of the lift is not stated and was taken as nothing: ask its"
                        + " maker."));
    accessories.forEach(one -> one.care().ifPresent(care -> cautions.add(care + ".")));
    Optional<Check> failed =
        checks.stream().filter(check -> check.outcome() == Check.Outcome.FAIL).findFirst();
    return new LinePlan(
        asked(new AppliancesFed(layout, fed, strainer.map(DraftPlanner::met)).all()),
        new LinePlan.Answer(
            failed.isEmpty(),
            failed.map(LayoutPlanWriter::limit),
            failed.isEmpty() ? List.of() : instead(fed),
            List.copyOf(cautions)),
        TreeWriter.of(fed, strainer),
        TreeWater.of(layout, fed),
        checks,
        bill(fed, accessories),
        new LinePlan.Weighed(List.of(), searched(found)));
  }

  private static String limit(Check failed) {
    return failed.leg().map(leg -> leg + ": ").orElse("") + failed.name() + ": " + failed.note();
  }

  private static Evaluated alone(FedLayout fed, FedLeg leg, List<Check> checks) {
    Billing.Priced whole = fed.bill();
    Billing.Priced ofLeg =
        new Billing.Priced(
            whole.purchases(),
            whole.unpriced(),
            whole.partsToSource(),
            leg.laid().way().goods().wanted().pieces(),
            whole.lacksOnlyAsked());
    return new Evaluated(
        leg.line(),
        leg.laid().way().goods().gaskets(),
        ofLeg,
        fed.total(),
        leg.hydraulics(),
        checks);
  }

  /** By how much a gate must be closed, so that an appliance passes no more than is planned. */
  private List<String> throttles(FedLayout fed) {
    List<String> sentences = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      setting(leg).ifPresent(sentences::add);
      double sparePsi = leg.sparePsi() - leg.before().map(FedLeg::pumpedOverPsi).orElse(0.0);
      if (leg.laid().asked().last()
          && leg.meeting().isEmpty()
          && leg.hydraulics().calculated()
          && leg.before().isPresent()
          && sparePsi >= LEAST_THROTTLED_PSI) {
        sentences.add(
            text(
                gated(leg)
                    ? "Throttle %s by %.0f psi at its gate: it needs %.1f psi for %.0f gpm and"
                        + " would get %.1f psi, and more water, with the gate open."
                    : "Nothing throttles %s, where %.0f psi are too much: it needs %.1f psi for"
                        + " %.0f gpm and would get %.1f psi, and more water; a gate valve before"
                        + " it would.",
                leg.name(),
                sparePsi,
                leg.laid().needPsi(),
                leg.job().flowGpm(),
                leg.laid().needPsi() + sparePsi));
      }
    }
    return sentences;
  }

  /** What a pump on the way is set to, where it could give more. */
  private static Optional<String> setting(FedLeg leg) {
    return leg.pumpedOverPsi() < LEAST_THROTTLED_PSI
        ? Optional.empty()
        : leg.laid()
            .divider()
            .flatMap(Divider::pump)
            .map(
                pump ->
                    text(
                        "Set %s to give %.0f psi: that feeds all behind it; at its most it would"
                            + " give %.0f psi, and more water.",
                        pump.name(),
                        Math.ceil(leg.neededBehindPsi()),
                        pump.boost().outletPsi(leg.outletPsi())));
  }

  /** Whether it begins at a gate; a pump's discharges have theirs. */
  private static boolean gated(FedLeg leg) {
    return leg.before()
        .flatMap(before -> before.laid().divider().orElseThrow().item())
        .map(item -> item.form().gated() == Stated.YES)
        .orElse(true);
  }

  private List<String> instead(FedLayout fed) {
    List<String> instead = new ArrayList<>();
    if (layout.drafting().isPresent()) {
      return instead;
    }
    if (fed.whole().needsPsi() > fed.source().flowingPsi()
        && fed.whole().needsPsi() <= fed.whole().bearsPsi()) {
      instead.add(
          text(
              "a source that gives %.1f psi at %.0f gpm would feed the layout shown",
              Math.ceil(fed.whole().needsPsi() * 10) / 10, layout.flowGpm()));
    }
    return instead;
  }

  private LinePlan.Asked asked(List<LinePlan.OfLeg> ofLegs) {
    Job whole = layout.whole();
    return new LinePlan.Asked(
        LayoutSentence.of(layout),
        layout.flowGpm(),
        layout.legs().stream()
            .filter(leg -> leg.last())
            .mapToDouble(leg -> leg.job().needPsi())
            .max()
            .orElse(0),
        whole.conditions().allowed().stream().map(Practice::id).toList(),
        ofLegs);
  }

  private Bill bill(FedLayout fed, List<Accessory> accessories) {
    return new BillWriter(
            fed.bill(), fed.total(), shop.date(), layout.whole().conditions().spareSections())
        .of(
            fed.legs().stream()
                .map(leg -> new BillWriter.Laid(leg.line(), leg.laid().asked().copies()))
                .toList(),
            fed.gaskets(),
            accessories);
  }

  private static LinePlan.Searched searched(LayoutPlanner.Found found) {
    return new LinePlan.Searched(found.looked(), 0, 0, found.looked());
  }

  private boolean draws(String leg) {
    return layout.drafting().isPresent() && layout.legs().get(0).name().equals(leg);
  }

  /** The answer where the catalogue cannot lay the layout at all. */
  private LinePlan nothing(LayoutPlanner.Found found) {
    if (layout.drafting().isPresent() && strainer.isEmpty()) {
      return PlanWriter.nothing(
          asked(List.of()),
          "leg " + layout.legs().get(0).name() + ": no strainer is sold that it could begin at",
          List.of(),
          Money.zero(shop.currency()),
          shop.date(),
          searched(found));
    }
    Optional<LegJob> pumped =
        found.undivided().filter(leg -> layout.boosterBehind(leg).isPresent());
    if (pumped.isPresent()) {
      return PlanWriter.nothing(
          asked(List.of()),
          text(
              "leg %s: no pump that is sold for this use passes %.0f gpm",
              pumped.get().name(), pumped.get().flowGpm()),
          List.of(),
          Money.zero(shop.currency()),
          shop.date(),
          searched(found));
    }
    String limit =
        found
            .undivided()
            .map(new Undivided(layout, shop)::behind)
            .orElseGet(
                () ->
                    found.withoutLine().isEmpty()
                        ? "the catalogue has no layout that joins these legs"
                        : "leg "
                            + found.withoutLine().get(0)
                            + (draws(found.withoutLine().get(0))
                                ? ": no suction hose joins a strainer as wide as it is, or the"
                                    + " foot valve asked for, to the pump's intake"
                                : ": the catalogue has no hose that may be laid so"));
    return PlanWriter.nothing(
        asked(List.of()),
        limit,
        List.of(),
        Money.zero(shop.currency()),
        shop.date(),
        searched(found));
  }
}
