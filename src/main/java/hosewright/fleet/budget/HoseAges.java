package hosewright.fleet.budget;

import hosewright.fleet.record.HoseKind;
import hosewright.fleet.record.HoseRecord;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How many usable sections of each kind a location has at each age, counted in full months on one
 * day. A fleet of any size comes down to this much.
 */
public final class HoseAges {
  /** Older hose is counted at this age, months. */
  static final int OLDEST_MONTHS = 60 * 12;

  /**
   * What is counted together.
   *
   * @param location station or store
   */
  public record Place(String location, HoseKind kind) {}

  private final LocalDate day;
  private final Map<Place, int[]> counts = new LinkedHashMap<>();
  private final Map<Place, Integer> mustGo = new LinkedHashMap<>();

  /**
   * @param day the day ages are counted on
   */
  public HoseAges(LocalDate day) {
    this.day = day;
  }

  /**
   * Counts a usable section.
   *
   * @param mustGo whether a rule other than the age limit takes it out at once
   */
  public void add(HoseRecord section, boolean mustGo) {
    Place place = new Place(section.place().location(), section.kind());
    if (mustGo) {
      this.mustGo.merge(place, 1, Integer::sum);
      return;
    }
    int months = (int) Math.max(0, Period.between(section.born(), day).toTotalMonths());
    counts
        .computeIfAbsent(place, key -> new int[OLDEST_MONTHS + 1])[
        Math.min(months, OLDEST_MONTHS)]++;
  }

  /** Sections at each age in months, by place. */
  Map<Place, int[]> counts() {
    return counts;
  }

  /** Sections that are replaced in the first year whatever their age, by place. */
  Map<Place, Integer> mustGo() {
    return mustGo;
  }

  /**
   * Sections of one kind within one year of age.
   *
   * @param meanAge their mean age, years
   */
  record Group(double meanAge, int sections) {}

  /** Sections of each kind, those within a year of age together. */
  Map<HoseKind, List<Group>> byYears() {
    Map<HoseKind, long[]> months = new LinkedHashMap<>();
    counts.forEach(
        (place, ages) -> {
          long[] sum = months.computeIfAbsent(place.kind(), kind -> new long[OLDEST_MONTHS + 1]);
          for (int month = 0; month < ages.length; month++) {
            sum[month] += ages[month];
          }
        });
    Map<HoseKind, List<Group>> groups = new LinkedHashMap<>();
    months.forEach((kind, ages) -> groups.put(kind, groups(ages)));
    return groups;
  }

  private static List<Group> groups(long[] months) {
    List<Group> groups = new ArrayList<>();
    for (int year = 0; year * 12 < months.length; year++) {
      long sections = 0;
      double ages = 0;
      for (int month = year * 12; month < Math.min(months.length, year * 12 + 12); month++) {
        sections += months[month];
        ages += months[month] * middleYears(month);
      }
      if (sections > 0) {
        groups.add(new Group(ages / sections, (int) sections));
      }
    }
    return groups;
  }

  /** Hose of so many full months is on average half a month older. */
  static double middleYears(int months) {
    return (months + 0.5) / 12;
  }

  /** All usable sections. */
  public long sections() {
    long all = mustGo.values().stream().mapToLong(Integer::longValue).sum();
    for (int[] months : counts.values()) {
      for (int count : months) {
        all += count;
      }
    }
    return all;
  }
}
