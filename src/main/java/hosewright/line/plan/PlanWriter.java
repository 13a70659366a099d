package hosewright.line.plan;

import hosewright.job.Job;
import hosewright.job.question.Practice;
import hosewright.line.assembly.Assembly;
import hosewright.line.check.DistrictCheck;
import hosewright.line.check.OneShutCheck;
import hosewright.line.check.TaughtChecks;
import hosewright.line.explain.EasedTerms;
import hosewright.line.model.Accessory;
import hosewright.line.model.Bill;
import hosewright.line.model.Check;
import hosewright.line.model.Hydraulics;
import hosewright.line.model.Layout;
import hosewright.line.model.LinePlan;
import hosewright.line.search.Evaluated;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/** Writes a finished plan down as the record that papers and scripts read. */
final class PlanWriter {
  private final Job job;
  private final LocalDate date;
  private final LocalThreads register;

  PlanWriter(Job job, LocalDate date, LocalThreads register) {
    this.job = job;
    this.date = date;
    this.register = register;
  }

  /**
   * @param instead what would do, for a plan that fails
   */
  LinePlan write(
      Evaluated plan,
      List<String> instead,
      List<LinePlan.Alternative> alternatives,
      LinePlan.Searched searched) {
    Assembly line = plan.assembly();
    List<Check> checks =
        Stream.of(
                plan.checks().stream(),
                OneShutCheck.of(job, line, plan.hydraulics()).stream(),
                TaughtChecks.of(job, line, plan.hydraulics()).stream(),
                DistrictCheck.of(job, line, register).stream())
            .flatMap(found -> found)
            .toList();
    List<Accessory> accessories = AccessoryWriter.of(job, plan);
    List<String> cautions = new ArrayList<>(Caution.forPlan(job, plan, checks));
    accessories.forEach(one -> one.care().ifPresent(care -> cautions.add(care + ".")));
    return new LinePlan(
        asked(),
        new LinePlan.Answer(plan.passes(), limitedBy(plan), instead, cautions),
        BoughtEnd.of(LayoutWriter.of(job, line, plan.hydraulics()), plan.bill().pieces()),
        PlanWorking.shown(job, line, plan.hydraulics()),
        checks,
        bill(plan, accessories),
        new LinePlan.Weighed(alternatives, searched));
  }

  private LinePlan.Asked asked() {
    return new LinePlan.Asked(
        PlanSentence.of(job),
        job.flowGpm(),
        job.needPsi(),
        job.conditions().allowed().stream().map(Practice::id).toList());
  }

  /**
   * The answer when no hose of the catalogue may be laid as the job wishes.
   *
   * @param lacking what besides hose the catalogue lacks, if that is the reason
   */
  LinePlan nothingToLay(
      Optional<String> lacking,
      List<String> instead,
      CurrencyUnit currency,
      LinePlan.Searched searched) {
    String limit =
        lacking.orElseGet(
            () ->
                "hose: the catalogue has none that fits the "
                    + EasedTerms.narrowing(job)
                    + " asked");
    return nothing(asked(), limit, instead, Money.zero(currency), date, searched);
  }

  /**
   * A plan of nothing, and why.
   *
   * @param nothing no money
   */
  static LinePlan nothing(
      LinePlan.Asked asked,
      String limit,
      List<String> instead,
      Money nothing,
      LocalDate date,
      LinePlan.Searched searched) {
    return new LinePlan(
        asked,
        new LinePlan.Answer(false, Optional.of(limit), instead, List.of()),
        Layout.NONE,
        Hydraulics.notCalculated("not calculated: there is no line"),
        List.of(),
        new Bill(List.of(), List.of(), nothing, date, Bill.Gaskets.NONE, List.of(), List.of()),
        new LinePlan.Weighed(List.of(), searched));
  }

  static Optional<String> limitedBy(Evaluated plan) {
    return plan.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .findFirst()
        .map(check -> check.name() + ": " + check.note());
  }

  private Bill bill(Evaluated plan, List<Accessory> accessories) {
    int spareSections = job.conditions().spareSections();
    return new BillWriter(plan.bill(), plan.total(), date, spareSections)
        .of(List.of(new BillWriter.Laid(plan.assembly(), 1)), plan.gaskets(), accessories);
  }
}
