package hosewright.desk.line;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.csv.PlainNumber;
import hosewright.job.Job;
import hosewright.line.model.Layout;
import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.line.model.SectionCount;
import hosewright.line.plan.Planner;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * Lines of which each is better in something than every other.
 *
 * @param found how many such lines there are
 * @param sourceStated whether pressure is told as what arrives, else as what the source must hold
 * @param rows those shown, cheapest first
 */
public record TradeOffs(int found, boolean sourceStated, List<Row> rows) {
  static final int MOST_ROWS = 7;

  /**
   * One line.
   *
   * @param bestIn what it is best in among rows that differ in it; empty for one between
   */
  public record Row(
      @JsonUnwrapped CompareSizes.Size.Hose hose,
      String laid,
      Money total,
      @JsonUnwrapped Pressures pressures,
      double chargedWeightLb,
      int sections,
      List<String> bestIn) {

    /** Pressure at its ends. */
    public record Pressures(double requiredSourcePsi, double deliveredPsi) {}
  }

  static TradeOffs of(Job job, Planner.TradeOffs front) {
    List<LinePlan> plans = front.plans();
    return new TradeOffs(
        front.found(),
        job.supply().isPresent(),
        plans.stream().map(plan -> row(plan, plans)).toList());
  }

  private static Row row(LinePlan plan, List<LinePlan> all) {
    List<String> bestIn = new ArrayList<>();
    least(plan, all, p -> p.total().getAmountMinorLong(), "price", bestIn);
    least(plan, all, p -> p.hydraulics().requiredSourcePsi(), "pressure", bestIn);
    least(plan, all, p -> p.hydraulics().chargedWeightLb(), "weight", bestIn);
    least(plan, all, TradeOffs::sections, "coupling", bestIn);
    LinePlan.HoseChoice hose = plan.hose().orElseThrow();
    return new Row(
        new CompareSizes.Size.Hose(
            hose.sizeIn(), hose.couplingSizeIn(), hose.series(), hose.lines()),
        laid(plan.layout()),
        plan.total(),
        new Row.Pressures(plan.hydraulics().requiredSourcePsi(), plan.hydraulics().deliveredPsi()),
        plan.hydraulics().chargedWeightLb(),
        sections(plan),
        List.copyOf(bestIn));
  }

  private static void least(
      LinePlan plan,
      List<LinePlan> all,
      ToDoubleFunction<LinePlan> measure,
      String word,
      List<String> bestIn) {
    DoubleSummaryStatistics range = all.stream().collect(Collectors.summarizingDouble(measure));
    boolean tellsThemApart = range.getMax() > range.getMin() || all.size() == 1;
    if (tellsThemApart && measure.applyAsDouble(plan) == range.getMin()) {
      bestIn.add(word);
    }
  }

  /** Sections of each leg; the first leg's size has a column of its own. */
  private static String laid(Layout layout) {
    List<String> legs = new ArrayList<>();
    for (Leg leg : layout.hoseLegs()) {
      String size =
          legs.isEmpty() ? "" : PlainNumber.of(leg.hose().orElseThrow().sizeIn()) + " in: ";
      legs.add(size + laid(leg.sectionCounts()));
    }
    return String.join("; ", legs);
  }

  private static String laid(List<SectionCount> sections) {
    return sections.stream()
        .map(s -> s.count() + " x " + PlainNumber.of(s.lengthFt()) + " ft")
        .collect(Collectors.joining(" + "));
  }

  private static int sections(LinePlan plan) {
    return plan.layout().sectionsInAll();
  }
}
