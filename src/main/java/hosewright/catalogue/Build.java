package hosewright.catalogue;

import java.util.Set;

/**
 * How an item is made, and for what.
 *
 * @param material what it is made of
 * @param weightLb weight of one unit, lb
 * @param fluids fluids it is marked for; "water" for most
 * @param rating pressures it may see
 * @param drinkingWater marked for drinking water (NSF/ANSI/CAN 61)
 * @param markedTo standard it is marked to, for example NFPA 1961; empty for none
 * @param comesWithGaskets true when the gaskets of its female ends come fitted
 */
public record Build(
    String material,
    double weightLb,
    Set<String> fluids,
    Rating rating,
    boolean drinkingWater,
    String markedTo,
    boolean comesWithGaskets) {

  public Build {
    fluids = Set.copyOf(fluids);
  }
}
