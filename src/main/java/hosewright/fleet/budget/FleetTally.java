package hosewright.fleet.budget;

import hosewright.csv.PlainNumber;
import hosewright.fleet.budget.FleetStatus.AgeCount;
import hosewright.fleet.budget.FleetStatus.Count;
import hosewright.fleet.budget.FleetStatus.Overdue;
import hosewright.fleet.budget.FleetStatus.RuleCount;
import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.CouplingMap;
import hosewright.fleet.record.CouplingMap.Pair;
import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.OddThreads;
import hosewright.fleet.record.Outlet;
import hosewright.fleet.record.Retirement;
import hosewright.fleet.record.RetirementRule;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.SectionStatus;
import hosewright.fleet.record.Standing;
import hosewright.fleet.record.TestRule;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Counts a fleet section by section, keeping sums only: one pass serves status and budget alike,
 * whatever the fleet's size.
 */
public final class FleetTally {
  private static final int LONGEST_OVERDUE = 20;

  private final LocalDate day;
  private final AgencyLimits limits;
  private final HoseAges ages;
  private final List<Lifetime> lives = new ArrayList<>();
  private final Map<SectionStatus, Sum> byStatus = new TreeMap<>();
  private final Map<Double, Sum> bySize = new TreeMap<>();
  private final Map<String, Sum> byLocation = new TreeMap<>();
  private final Map<Pair, Integer> pairs = new LinkedHashMap<>();
  private final Map<String, Sum> byThread = new TreeMap<>();
  private final Map<Integer, Integer> agesYears = new TreeMap<>();
  private final Map<String, Long> mustGo = new TreeMap<>();
  private final Map<String, Set<Pair>> carried = new HashMap<>();
  private final PriorityQueue<Overdue> overdue =
      new PriorityQueue<>(Comparator.comparing(Overdue::due).reversed());
  private long overdueTests;
  private long pastAdvisedLife;
  private long withoutMadeDate;
  private double lostFt;

  /** Sections and feet. */
  private static final class Sum {
    long sections;
    double lengthFt;

    void add(double more) {
      sections++;
      lengthFt += more;
    }
  }

  public FleetTally(AgencyLimits limits, LocalDate day) {
    this.limits = limits;
    this.day = day;
    this.ages = new HoseAges(day);
  }

  /** Counts a section. */
  public void add(SectionLife life) {
    Standing standing = life.standing(limits);
    HoseRecord section = life.section();
    sum(byStatus, standing.status()).add(standing.lengthFt());
    lostFt += standing.lengthLostFt(section);
    Lifetime.of(life, limits).ifPresent(lives::add);
    if (standing.status().usable()) {
      addUsable(section, standing);
    }
  }

  private void addUsable(HoseRecord section, Standing standing) {
    sum(bySize, section.make().sizeIn()).add(standing.lengthFt());
    sum(byLocation, section.place().location()).add(standing.lengthFt());
    sum(byThread, section.make().endA() + " x " + section.make().endB()).add(standing.lengthFt());
    Pair pair = new Pair(section.make().endA(), section.make().endB());
    pairs.merge(pair, 1, Integer::sum);
    if (!section.place().assignment().isEmpty()) {
      carried.computeIfAbsent(section.place().assignment(), key -> new HashSet<>()).add(pair);
    }
    int years = Math.max(0, section.born().until(day).getYears());
    agesYears.merge(years, 1, Integer::sum);
    pastAdvisedLife += years >= TestRule.advisedLife().value() ? 1 : 0;
    withoutMadeDate += section.days().made().isEmpty() ? 1 : 0;
    Optional<Retirement> due = SectionLife.due(section, limits, day);
    due.ifPresent(retirement -> mustGo.merge(retirement.rule(), 1L, Long::sum));
    // The age limit is the budget's own question; other rules hold whatever limit it is asked for.
    ages.add(section, due.filter(r -> !r.rule().equals(RetirementRule.AGE_LIMIT)).isPresent());
    checkTest(section, standing);
  }

  private void checkTest(HoseRecord section, Standing standing) {
    LocalDate testDue = standing.testDue(section);
    if (testDue.isBefore(day)) {
      overdueTests++;
      overdue.add(new Overdue(section.id(), section.place().location(), testDue));
      if (overdue.size() > LONGEST_OVERDUE) {
        overdue.remove();
      }
    }
  }

  /** The ages of the usable sections. */
  public HoseAges ages() {
    return ages;
  }

  /** What the sections tell about how long hose lasts. */
  public List<Lifetime> lives() {
    return lives;
  }

  /** Length of the usable sections, ft. */
  public double usableFt() {
    return bySize.values().stream().mapToDouble(sum -> sum.lengthFt).sum();
  }

  public FleetStatus status(Collection<Outlet> outlets) {
    TestRule advice = TestRule.advisedLife();
    return new FleetStatus(
        day,
        new FleetStatus.OnRecord(
            byStatus.values().stream().mapToLong(sum -> sum.sections).sum(),
            counts(byStatus, SectionStatus::word),
            lostFt),
        new FleetStatus.InUse(
            bySize.values().stream().mapToLong(sum -> sum.sections).sum(),
            usableFt(),
            counts(bySize, size -> PlainNumber.of(size) + " in"),
            counts(byLocation, location -> location),
            counts(byThread, thread -> thread)),
        new FleetStatus.Ages(
            agesYears.entrySet().stream().map(e -> new AgeCount(e.getKey(), e.getValue())).toList(),
            pastAdvisedLife,
            "%.0f years are often advised; that is advice and no rule. Source: %s."
                .formatted(advice.value(), advice.source()),
            withoutMadeDate),
        new FleetStatus.Tests(
            overdueTests, overdue.stream().sorted(Comparator.comparing(Overdue::due)).toList()),
        mustGo.entrySet().stream().map(FleetTally::ruleCount).toList(),
        new FleetStatus.Fit(OddThreads.among(pairs), CouplingMap.gaps(outlets, carried)));
  }

  private static RuleCount ruleCount(Map.Entry<String, Long> count) {
    RetirementRule rule = RetirementRule.of(count.getKey());
    return new RuleCount(rule.code(), rule.sentence(), count.getValue(), rule.source());
  }

  private static <K> Sum sum(Map<K, Sum> sums, K key) {
    return sums.computeIfAbsent(key, any -> new Sum());
  }

  private static <K> List<Count> counts(Map<K, Sum> sums, Function<K, String> word) {
    return sums.entrySet().stream()
        .map(
            sum ->
                new Count(
                    word.apply(sum.getKey()), sum.getValue().sections, sum.getValue().lengthFt))
        .toList();
  }
}
