package hosewright.fleet.budget;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;

/**
 * How many sections are to be replaced in each year, by place and kind. Under an age limit they are
 * whole numbers, under a law of survival expected ones.
 */
public final class Replacements {
  private final int years;
  private final Map<HoseAges.Place, double[]> byPlace = new LinkedHashMap<>();

  Replacements(int years) {
    this.years = years;
  }

  public int years() {
    return years;
  }

  void add(HoseAges.Place place, int year, double sections) {
    byPlace.computeIfAbsent(place, key -> new double[years + 1])[year] += sections;
  }

  Set<HoseAges.Place> places() {
    return byPlace.keySet();
  }

  double of(HoseAges.Place place, int year) {
    return byPlace.get(place)[year];
  }

  /** All sections of a year. */
  public double in(int year) {
    return byPlace.values().stream().mapToDouble(counts -> counts[year]).sum();
  }
}
