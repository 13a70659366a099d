package hosewright.command;

import hosewright.catalogue.MoneyWords;
import hosewright.line.Job;
import hosewright.line.Layout;
import hosewright.line.Leg;
import hosewright.line.LinePlan;
import hosewright.line.Planner;
import hosewright.line.SectionCount;
import hosewright.measure.UnitSystem;
import hosewright.shell.Screen;
import hosewright.shell.Table;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
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
record TradeOffTable(int found, boolean sourceStated, List<Row> rows) {
  static final int MOST_ROWS = 7;

  /**
   * One line.
   *
   * @param bestIn what it is best in among rows that differ in it; empty for one between
   */
  record Row(
      double sizeIn,
      double couplingSizeIn,
      String hoseSeries,
      int lines,
      String laid,
      Money total,
      double requiredSourcePsi,
      double deliveredPsi,
      double chargedWeightLb,
      int sections,
      List<String> bestIn) {}

  static TradeOffTable of(Job job, Planner.TradeOffs front) {
    List<LinePlan> plans = front.plans();
    return new TradeOffTable(
        front.found(),
        job.supply().isPresent(),
        plans.stream().map(plan -> row(plan, plans)).toList());
  }

  private static Row row(LinePlan plan, List<LinePlan> all) {
    List<String> bestIn = new ArrayList<>();
    least(plan, all, p -> p.total().getAmountMinorLong(), "price", bestIn);
    least(plan, all, p -> p.hydraulics().requiredSourcePsi(), "pressure", bestIn);
    least(plan, all, p -> p.hydraulics().chargedWeightLb(), "weight", bestIn);
    least(plan, all, TradeOffTable::sections, "coupling", bestIn);
    LinePlan.HoseChoice hose = plan.hose().orElseThrow();
    return new Row(
        hose.sizeIn(),
        hose.couplingSizeIn(),
        hose.series(),
        hose.lines(),
        laid(plan.layout()),
        plan.total(),
        plan.hydraulics().requiredSourcePsi(),
        plan.hydraulics().deliveredPsi(),
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
      String size = legs.isEmpty() ? "" : Prose.plain(leg.hose().orElseThrow().sizeIn()) + " in: ";
      legs.add(size + laid(leg.sectionCounts()));
    }
    return String.join("; ", legs);
  }

  private static String laid(List<SectionCount> sections) {
    return sections.stream()
        .map(s -> s.count() + " x " + Prose.plain(s.lengthFt()) + " ft")
        .collect(Collectors.joining(" + "));
  }

  private static int sections(LinePlan plan) {
    return plan.layout().sectionsInAll();
  }

  String text(Screen screen, UnitSystem units) {
    Table table =
        Table.of(
                "total",
                "hose, in",
                "series",
                "laid",
                (sourceStated ? "arrives, " : "source must, ") + units.pressure().unit(),
                "full, " + units.weight().unit(),
                "sections",
                "best in")
            .numbers(0, 1, 4, 5, 6);
    for (Row row : rows) {
      table.row(
          MoneyWords.of(row.total()),
          Prose.plain(row.sizeIn()),
          row.hoseSeries(),
          row.laid() + (row.lines() > 1 ? ", " + row.lines() + " lines in all" : ""),
          units.pressure().figure(sourceStated ? row.deliveredPsi() : row.requiredSourcePsi()),
          units.weight().figure(row.chargedWeightLb()),
          row.sections(),
          String.join(", ", row.bestIn()));
    }
    Prose prose = new Prose(screen).block(table.on(screen));
    prose.line("Each of these passes every check and is better in something than every other.");
    if (found > rows.size()) {
      prose.line(
          String.format(
              Locale.ROOT,
              "There are %d such lines; shown are the best in each of price, pressure, weight full"
                  + " of water and sections to couple, then those that differ most from them.",
              found));
    }
    return prose.toString().stripLeading();
  }
}
