package hosewright.line.plan;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.Item;
import hosewright.job.Job;
import hosewright.job.layout.LayoutJob;
import hosewright.job.layout.LegJob;
import hosewright.job.question.Practice;
import hosewright.line.check.DistrictCheck;
import hosewright.line.check.OneShutCheck;
import hosewright.line.goods.Billing;
import hosewright.line.layout.DraftPlanner;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.LayoutChecks;
import hosewright.line.layout.LayoutPlanner;
import hosewright.line.model.Accessory;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.PlanFacts.Planned;
import hosewright.line.search.Evaluated;
import hosewright.line.search.Shop;
import hosewright.thread.LocalThreads;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.joda.money.Money;

/** Writes a layout that was found down as the record that papers and scripts read. */
final class LayoutPlanWriter {

  private static final Set<CheckId> OF_WATER =
      EnumSet.of(
          CheckId.PUMP_INTAKE,
          CheckId.SUCTION_LIFT,
          CheckId.SUCTION_VACUUM,
          CheckId.DELIVERED_PRESSURE);

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
    List<LinePlan.OfLeg> appliances =
        new AppliancesFed(layout, fed, strainer.map(DraftPlanner::met)).all();
    List<Check> checks = new ArrayList<>(LayoutChecks.of(layout, fed));
    checks.addAll(othersShut(fed, appliances));
    Set<String> cautions = new LinkedHashSet<>();
    List<Accessory> accessories = new ArrayList<>();
    for (FedLeg leg : fed.legs()) {
      DistrictCheck.of(leg.job(), leg.line(), register).stream()
          .filter(check -> checks.stream().noneMatch(other -> other.note().equals(check.note())))
          .forEach(checks::add);
      accessories.addAll(AccessoryWriter.of(leg.job(), alone(fed, leg, checks)));
    }
    cautions.addAll(LayoutSettings.of(layout, fed));
    cautions.addAll(Caution.forLegs(planned(fed, checks)));
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
    Optional<Check> failed = binding(checks);
    return new LinePlan(
        asked(appliances),
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

  /** Each leg with what cautions go by. */
  private static Map<String, Planned> planned(FedLayout fed, List<Check> checks) {
    double waterGal =
        fed.legs().stream()
            .mapToDouble(
                leg ->
                    leg.laid().asked().copies()
                        * PlanFacts.waterGal(leg.job(), alone(fed, leg, checks)))
            .sum();
    Map<String, Planned> legs = new LinkedHashMap<>();
    for (FedLeg leg : fed.legs()) {
      List<Check> ofLeg =
          checks.stream().filter(check -> check.leg().equals(Optional.of(leg.name()))).toList();
      legs.put(
          leg.name(),
          new Planned(
              leg.job(),
              alone(fed, leg, checks),
              ofLeg,
              new PlanFacts.Whole(List.copyOf(checks), () -> waterGal)));
    }
    return legs;
  }

  /** What each hand nozzle does when all others are shut and nobody touches a pump or a gate. */
  private static List<Check> othersShut(FedLayout fed, List<LinePlan.OfLeg> appliances) {
    List<Check> checks = new ArrayList<>();
    if (appliances.size() > 1) {
      for (LinePlan.OfLeg one : appliances) {
        fed.legs().stream()
            .filter(leg -> leg.laid().asked().last() && leg.together().equals(one.leg()))
            .filter(leg -> leg.job().appliance().handHeld())
            .flatMap(
                leg ->
                    one.unthrottled().stream()
                        .map(
                            open ->
                                OneShutCheck.ofLeg(leg.job(), open.aloneGpm(), open.alonePsi())
                                    .in(leg.name())))
            .forEach(checks::add);
      }
    }
    return checks;
  }

  /** What fails; that water does not come at all before that a part bears less than it sees. */
  private static Optional<Check> binding(List<Check> checks) {
    return checks.stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .min(Comparator.comparing(check -> !OF_WATER.contains(check.id())));
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
