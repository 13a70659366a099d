package hosewright.door.shell.fleet;

import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Bars;
import hosewright.door.shell.words.Prose;
import hosewright.fleet.budget.FleetStatus;
import hosewright.fleet.budget.FleetStatus.AgeCount;
import hosewright.fleet.budget.FleetStatus.Count;
import hosewright.fleet.budget.FleetStatus.Overdue;
import hosewright.fleet.budget.FleetStatus.RuleCount;
import hosewright.fleet.record.CouplingMap.Gap;
import hosewright.fleet.record.OddThreads.Odd;
import hosewright.thread.End;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A fleet's status in words, tables and charts. */
final class FleetStatusText {
  private static final int LISTED = 10;

  /** Ages from this on stand in one bar. */
  private static final int OLD = 25;

  private final FleetStatus status;
  private final Screen screen;
  private final Prose prose;

  private FleetStatusText(FleetStatus status, Screen screen) {
    this.status = status;
    this.screen = screen;
    this.prose = new Prose(screen);
  }

  static String of(FleetStatus status, Screen screen) {
    FleetStatusText text = new FleetStatusText(status, screen);
    text.counts();
    text.ages();
    text.tests();
    text.rules();
    text.threads();
    return text.prose.toString();
  }

  private void counts() {
    prose.line(
        number(status.inUse().usable())
            + " usable sections, "
            + number(status.inUse().lengthFt())
            + " ft, on "
            + status.day()
            + "; on record: "
            + status.onRecord().byStatus().stream()
                .map(count -> number(count.sections()) + " " + count.what())
                .collect(Collectors.joining(", "))
            + ". Lost to recoupling: "
            + number(status.onRecord().lostFt())
            + " ft.");
    prose.block(table("size", status.inUse().bySize()));
    prose.block(table("location", status.inUse().byLocation()));
    prose.block(table("couplings", status.inUse().byThread()));
  }

  private String table(String what, List<Count> counts) {
    Table table = Table.of(what, "sections", "ft").numbers(1, 2);
    counts.forEach(
        count -> table.row(count.what(), number(count.sections()), number(count.lengthFt())));
    return table.on(screen);
  }

  private void ages() {
    prose.line("Sections by age in full years");
    Bars bars = new Bars();
    int oldest = status.ages().agesYears().stream().mapToInt(AgeCount::years).max().orElse(0);
    for (int age = 0; age <= Math.min(oldest, OLD); age++) {
      int from = age;
      long sections =
          status.ages().agesYears().stream()
              .filter(count -> count.years() == from || (from == OLD && count.years() > OLD))
              .mapToLong(AgeCount::sections)
              .sum();
      bars.add(age == OLD ? OLD + "+" : "" + age, (double) sections);
    }
    prose.block(bars.drawn());
    if (status.ages().pastAdvisedLife() > 0) {
      prose.line(
          count(status.ages().pastAdvisedLife())
              + " of the age that is often advised for retiring, or older: "
              + status.ages().advice());
    }
    if (status.ages().withoutMadeDate() > 0) {
      prose.line(
          count(status.ages().withoutMadeDate())
              + " without a made date: age counts from when they were put in service.");
    }
  }

  private void tests() {
    if (status.tests().overdueTests() == 0) {
      prose.line("Every usable section was tested within the year.");
      return;
    }
    prose.line(
        number(status.tests().overdueTests())
            + " usable sections are overdue for their yearly service test; the longest overdue:");
    Table table = Table.of("section", "location", "test was due");
    for (Overdue overdue :
        status.tests().overdue().subList(0, Math.min(LISTED, status.tests().overdue().size()))) {
      table.row(overdue.section(), overdue.location(), overdue.due());
    }
    prose.block(table.on(screen));
  }

  private void rules() {
    for (RuleCount rule : status.mustGo()) {
      prose.line(
          count(rule.sections())
              + " in use under a rule that retires hose ("
              + rule.rule()
              + "): "
              + rule.sentence()
              + " Source: "
              + rule.source()
              + ". 'fleet retire --by-rules' retires them.");
    }
  }

  private void threads() {
    for (Odd odd : status.fit().odd()) {
      prose.line(
          "Odd threads: "
              + number(odd.sections())
              + " sections with "
              + odd.ends().get(0)
              + " x "
              + odd.ends().get(1)
              + " join only "
              + number(odd.joins())
              + " of the "
              + number(odd.ofSize())
              + " sections of that coupling size.");
    }
    if (status.fit().gaps().isEmpty()) {
      return;
    }
    prose.line("Apparatus that cannot be coupled to a hydrant without an adapter:");
    Table table =
        Table.of("apparatus", "intakes", "hydrant outlets", "hydrants", "such as", "why")
            .numbers(3);
    for (Gap gap : status.fit().gaps()) {
      table.row(
          gap.apparatus(),
          ends(gap.intakes()),
          ends(gap.hydrantEnds()),
          number(gap.hydrants()),
          gap.example(),
          gap.reason());
    }
    prose.block(table.on(screen));
    prose.line("'joint bridge --from END --to END' finds the adapter for two ends.");
  }

  private static String count(long sections) {
    return number(sections) + (sections == 1 ? " section" : " sections");
  }

  private static String ends(List<End> ends) {
    return ends.stream().map(End::toString).collect(Collectors.joining(", "));
  }

  private static String number(long value) {
    return String.format(Locale.ROOT, "%,d", value);
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%,.0f", value);
  }
}
