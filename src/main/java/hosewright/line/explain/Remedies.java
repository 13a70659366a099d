package hosewright.line.explain;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.MoneyWords;
import hosewright.csv.PlainNumber;
import hosewright.hydraulics.Arrival;
import hosewright.hydraulics.FixedPressure;
import hosewright.hydraulics.LineHydraulics;
import hosewright.job.Job;
import hosewright.job.Network;
import hosewright.job.Wishes;
import hosewright.job.question.Practice;
import hosewright.line.hose.HoseLines;
import hosewright.line.model.Check;
import hosewright.line.model.CheckId;
import hosewright.line.search.Evaluated;
import hosewright.line.search.Shop;
import hosewright.line.water.OuterVelocity;
import hosewright.line.water.Outflow;
import hosewright.line.water.PlanHydraulics;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * Finds what would do where a plan fails: another hose, more lines, a stronger source, less flow.
 */
public final class Remedies {
  private static final int MOST_OTHER_SIZES = 3;

  /** Far below a tenth of a psi. */
  private static final double ROUNDING = 1e-6;

  /** Above what any line is rated for. */
  private static final double MOST_PSI = 1_000;

  private final Shop shop;
  private final Job job;

  public Remedies(Shop shop, Job job) {
    this.shop = shop;
    this.job = job;
  }

  public List<String> insteadOf(Evaluated failed) {
    List<String> instead = new ArrayList<>();
    if (failed.overBudget() && failed.bestThatCanBe() && !failed.bill().lacksOnlyAsked()) {
      instead.add("a budget of " + MoneyWords.of(failed.total()) + ", for the line shown");
    }
    otherSizes(failed, instead);
    if (!failed.bestThatCanBe() && job.network().equals(Network.ONE_LINE)) {
      moreLines(failed, instead);
    }
    instead.addAll(new EasedTerms(shop, job).sentences());
    liftedRule(failed).ifPresent(instead::add);
    strongerSource(failed, instead);
    flowThatArrives(failed, instead);
    largerEnds(failed).ifPresent(instead::add);
    failed.checks().stream()
        .filter(check -> check.fails(CheckId.BACKFLOW_PROTECTION))
        .forEach(check -> instead.add("accessories: backflow, which puts a preventer in the line"));
    return instead;
  }

  private void otherSizes(Evaluated failed, List<String> instead) {
    if (job.wishes().hoseSizesIn().isEmpty() && job.wishes().couplingSizeIn().isEmpty()) {
      return;
    }
    shop.allWith(job.withWishes(job.wishes().withAnySize()), job.outlets()).stream()
        .filter(plan -> !size(plan).equals(size(failed)))
        .limit(MOST_OTHER_SIZES)
        .forEach(
            plan ->
                instead.add(
                    text(
                        "%s in hose (%s): delivers %.1f psi for %s",
                        size(plan),
                        plan.assembly().topology().hose().series(),
                        plan.hydraulics().deliveredPsi(),
                        MoneyWords.of(plan.total()))));
  }

  private void moreLines(Evaluated failed, List<String> instead) {
    int now = failed.assembly().topology().lines();
    for (int lines = now + 1; lines <= Wishes.MOST_LINES; lines++) {
      int count = lines;
      var plan = shop.bestWith(job.withWishes(job.wishes().withLines(count)), count);
      if (plan.isPresent()) {
        instead.add(
            text(
                "%d lines of %s in hose side by side: deliver %.1f psi for %s",
                count,
                size(plan.get()),
                plan.get().hydraulics().deliveredPsi(),
                MoneyWords.of(plan.get().total())));
        return;
      }
    }
  }

  /**
   * The pressure that the line shown takes, where some line does then; else what the cheapest line
   * takes of a source that gives what is wanted.
   */
  private void strongerSource(Evaluated failed, List<String> instead) {
    boolean lacks =
        fails(failed, CheckId.DELIVERED_PRESSURE) || fails(failed, CheckId.SUMMIT_PRESSURE);
    if (job.supply().isEmpty() || !lacks) {
      return;
    }
    double requiredPsi = failed.hydraulics().requiredSourcePsi();
    OptionalDouble shownPsi =
        DoubleStream.of(Math.round(requiredPsi * 10) / 10.0, tenthUp(requiredPsi))
            .filter(this::doesFrom)
            .findFirst();
    OptionalDouble enoughPsi =
        shownPsi.isPresent()
            ? shownPsi
            : shop.passing(job.withSupply(Optional.empty())).stream()
                .mapToDouble(plan -> tenthUp(plan.hydraulics().requiredSourcePsi()))
                .filter(this::doesFrom)
                .findFirst();
    enoughPsi.ifPresentOrElse(
        psi -> instead.add(text("a source that holds %.1f psi at %.0f gpm", psi, job.flowGpm())),
        () -> instead.add(notStronger(failed)));
  }

  private String notStronger(Evaluated failed) {
    double requiredPsi = failed.hydraulics().requiredSourcePsi();
    OptionalDouble working = failed.assembly().hoseWorkingPsi(job.service().temperatureOrUsualF());
    return working.isPresent() && requiredPsi > working.getAsDouble()
        ? text(
            "not a stronger source: the %.1f psi it takes is more than the hose may carry (%.0f"
                + " psi)",
            requiredPsi, working.getAsDouble())
        : text("not a stronger source alone: no line does it with %.1f psi either", requiredPsi);
  }

  private boolean doesFrom(double psi) {
    return psi <= MOST_PSI
        && shop.passing(job.withSupply(Optional.of(new FixedPressure(psi)))).isPresent();
  }

  /** Figures of advice are printed to a tenth, and must do as they are printed. */
  private static double tenthUp(double psi) {
    return Math.ceil(psi * 10 - ROUNDING) / 10;
  }

  /** What this line brings, where a line for that much water does. */
  private void flowThatArrives(Evaluated failed, List<String> instead) {
    if (job.supply().isEmpty()
        || !fails(failed, CheckId.DELIVERED_PRESSURE)
        || job.needPsi() <= 0) {
      return;
    }
    Arrival arrival =
        LineHydraulics.arriving(
            PlanHydraulics.elements(job, failed.assembly()),
            job.supply().get(),
            Outflow.ofAll(job));
    if (!arrival.flows()) {
      return;
    }
    double flowGpm = Math.floor(arrival.flowGpm());
    double share = flowGpm / arrival.flowGpm();
    double psi = Math.floor(arrival.pressures().deliveredPsi() * share * share * 10) / 10;
    if (flowGpm > 0 && shop.passing(job.flowing(flowGpm, psi)).isPresent()) {
      instead.add(
          text(
              "less water: this line brings %.0f gpm at %.1f psi through the same appliance",
              flowGpm, psi));
    }
  }

  /** Where an end of the job's own is too narrow, no line mends it. */
  private Optional<String> largerEnds(Evaluated failed) {
    if (!fails(failed, CheckId.END_VELOCITY)) {
      return Optional.empty();
    }
    double mostFtPerS = OuterVelocity.ENDS.limit().getAsDouble();
    double outletsGpm = job.outlets() * OuterVelocity.gpm(mostFtPerS, job.from().sizeIn());
    double appliancesGpm = job.appliances() * OuterVelocity.gpm(mostFtPerS, job.to().sizeIn());
    return Optional.of(
        outletsGpm < appliancesGpm
            ? text("a larger outlet, or no more than %.0f gpm", Math.floor(outletsGpm))
            : text(
                "an appliance of a larger end, or no more than %.0f gpm",
                Math.floor(appliancesGpm)));
  }

  /** What would do if the buyer lifted the rule of the trade that is broken. */
  private Optional<String> liftedRule(Evaluated failed) {
    return failed.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .flatMap(check -> Practice.find(check.id().word()).stream())
        .filter(rule -> rule.lifting() == Practice.Lifting.YES)
        .findFirst()
        .flatMap(
            rule ->
                shop.passing(job.withConditions(job.conditions().lifting(rule)))
                    .map(
                        plan ->
                            text(
                                "leave the rule aside, which every paper then says (allow: %s):"
                                    + " %s in hose (%s) for %s",
                                rule.id(),
                                size(plan),
                                plan.assembly().topology().hose().series(),
                                MoneyWords.of(plan.total()))));
  }

  private static boolean fails(Evaluated plan, CheckId check) {
    return plan.checks().stream().anyMatch(c -> c.fails(check));
  }

  private static String size(Evaluated plan) {
    return PlainNumber.of(plan.assembly().topology().hose().sizeIn());
  }

  /** What the catalogue has, when no hose in it may be laid as the job wishes. */
  public List<String> whenNothingFits() {
    List<String> instead = new ArrayList<>(new EasedTerms(shop, job).sentences());
    List<Evaluated> freed = shop.allWith(job.withWishes(Wishes.NONE), job.outlets());
    freed.stream()
        .limit(MOST_OTHER_SIZES)
        .forEach(
            plan ->
                instead.add(
                    text(
                        "%s in hose with %s couplings (%s) for %s",
                        size(plan),
                        plan.assembly().topology().hose().inlet(),
                        plan.assembly().topology().hose().series(),
                        MoneyWords.of(plan.total()))));
    if (instead.isEmpty()) {
      noHose().ifPresent(instead::add);
    }
    return instead;
  }

  /** Why every hose of the catalogue is left out, if every one is. */
  private Optional<String> noHose() {
    HoseLines any = new HoseLines(job.withWishes(Wishes.NONE), shop.catalogue(), shop.prices());
    if (!any.all().isEmpty()) {
      return Optional.empty();
    }
    String reasons =
        any.leftOut().entrySet().stream()
            .map(reason -> reason.getValue() + " " + reason.getKey())
            .collect(Collectors.joining(", "));
    return Optional.of("no hose of the catalogue may be laid: " + reasons);
  }
}
