package hosewright.line;

import hosewright.line.LinePlan.Gaskets;
import hosewright.line.LinePlan.ItemCount;
import hosewright.line.LinePlan.Joint;
import hosewright.line.LinePlan.PlanItem;
import hosewright.line.LinePlan.RunPart;
import hosewright.line.LinePlan.SectionCount;
import hosewright.thread.LocalThreads;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
    HoseLine hose = line.topology().hose();
    List<Check> checks =
        Stream.of(
                plan.checks().stream(),
                OneShutCheck.of(job, line, plan.hydraulics()).stream(),
                DistrictCheck.of(job, line, register).stream())
            .flatMap(found -> found)
            .toList();
    return new LinePlan(
        plan.passes(),
        limitedBy(plan),
        instead,
        Caution.forPlan(job, plan, checks),
        PlanSentence.of(job),
        hose.sizeIn(),
        hose.couplingSizeIn(),
        hose.series(),
        line.topology().lines(),
        job.run().neededFt(),
        line.lay().lengthFt(),
        sections(line, 0),
        line.parts().stream().map(PlanWriter::part).toList(),
        line.joints().stream().map(PlanWriter::joint).toList(),
        adapters(line),
        gaskets(plan),
        job.flowGpm(),
        job.needPsi(),
        PlanWorking.shown(job, line, plan.hydraulics()),
        checks,
        plan.purchases().stream().map(PlanWriter::item).toList(),
        date,
        plan.unpriced(),
        plan.total(),
        alternatives,
        searched,
        own(line),
        spare(line),
        LayoutWriter.of(job, line, plan.hydraulics()));
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
    return new LinePlan(
        false,
        Optional.of(
            lacking.orElseGet(
                () ->
                    "hose: the catalogue has none that fits the "
                        + EasedTerms.narrowing(job)
                        + " asked")),
        instead,
        List.of(),
        PlanSentence.of(job),
        job.wishes().hoseSizesIn().stream().findFirst().orElse(0.0),
        job.wishes().couplingSizeIn().orElse(0),
        "",
        0,
        job.run().neededFt(),
        0,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        new Gaskets(0, 0, 0),
        job.flowGpm(),
        job.needPsi(),
        LineHydraulicsResult.notCalculated("not calculated: there is no line"),
        List.of(),
        List.of(),
        date,
        List.of(),
        Money.zero(currency),
        List.of(),
        searched,
        List.of(),
        List.of(),
        Layout.ONE_LINE);
  }

  static Optional<String> limitedBy(Evaluated plan) {
    return plan.checks().stream()
        .filter(check -> check.outcome() == Check.Outcome.FAIL)
        .findFirst()
        .map(check -> check.name() + ": " + check.note());
  }

  /** The sections of all lines of a leg. */
  static List<SectionCount> sections(Assembly line, int leg) {
    LegShape of = line.topology().legs().get(leg);
    List<Integer> counts = line.lays().get(leg).counts();
    List<SectionCount> sections = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      if (counts.get(i) > 0) {
        double lengthFt = of.hose().options().get(i).lengthFt();
        sections.add(new SectionCount(lengthFt, counts.get(i) * of.lines()));
      }
    }
    return sections;
  }

  private static List<SectionCount> own(Assembly line) {
    return line.parts().stream()
        .filter(Placed::isOwnedHose)
        .map(part -> new SectionCount(part.lengthFt(), part.count() * part.lines()))
        .toList();
  }

  private List<SectionCount> spare(Assembly line) {
    List<SectionCount> spare = new ArrayList<>();
    for (int i = 0; i < line.lays().size(); i++) {
      LegShape leg = line.topology().legs().get(i);
      Lay lay = line.lays().get(i);
      int spares = leg.hose().sparesToBuy(lay, leg.lines(), job.conditions().spareSections());
      leg.hose().spare(lay).stream()
          .filter(option -> spares > 0)
          .forEach(option -> spare.add(new SectionCount(option.lengthFt(), spares)));
    }
    return spare;
  }

  static RunPart part(Placed part) {
    return new RunPart(
        part.itemNumber(), part.description(), part.upstream(), part.downstream(), part.count());
  }

  private static Joint joint(Assembly.MadeJoint joint) {
    return new Joint(
        joint.upstream(),
        joint.downstream(),
        joint.upstreamPart().description(),
        joint.downstreamPart().description(),
        joint.count(),
        joint.verdict().outcome(),
        joint.verdict().seal(),
        joint.verdict().removable(),
        joint.verdict().reason(),
        joint.verdict().source());
  }

  private static List<ItemCount> adapters(Assembly line) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Placed part : line.parts()) {
      if (part.item().isPresent() && part.role() != Placed.Role.HOSE) {
        counts.merge(part.itemNumber(), part.lines(), Integer::sum);
      }
    }
    return counts.entrySet().stream()
        .map(entry -> new ItemCount(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static Gaskets gaskets(Evaluated plan) {
    int fitted = 0;
    int bought = 0;
    int spare = 0;
    for (GasketCount gasket : plan.gaskets()) {
      fitted += gasket.fitted();
      bought += gasket.bought();
      spare += gasket.spare();
    }
    return new Gaskets(fitted, bought, spare);
  }

  private static PlanItem item(Basket.Purchase purchase) {
    return new PlanItem(
        purchase.item().number(),
        purchase.item().description(),
        purchase.bought(),
        purchase.bought() - purchase.needed(),
        purchase.item().unit().word(),
        purchase.unitPrice(),
        purchase.extended(),
        purchase.item().weightLb() * purchase.bought());
  }
}
