package hosewright.catalogue;

import hosewright.thread.End;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * One thing the dealer sells, as its catalogue row states it.
 *
 * @param number the dealer's item number
 * @param description what a buyer reads
 * @param kind what it is
 * @param ends its ends; on gaskets, wrenches and couplings the ends it fits or carries
 * @param unit how it is counted
 * @param weightLb weight of one unit, lb
 * @param material what it is made of
 * @param fluids fluids it is marked for; "water" for most
 * @param rating pressures it may see
 * @param hose hose facts, present on hose, bulk hose, couplings and attachments
 * @param lossCoefficient K of a fitting on the velocity head in its smaller waterway
 * @param applianceLossPsi loss stated by the maker, psi, for appliances at 350 gpm and above
 * @param opening smallest nozzle opening or waterway, in
 * @param kFactor gpm per square root of psi, for nozzles and sprinklers
 * @param drinkingWater marked for drinking water (NSF/ANSI/CAN 61)
 * @param discontinued no longer sold once the stock is gone
 * @param markedTo standard it is marked to, for example NFPA 1961; empty for none
 * @param comesWithGaskets true when the gaskets of its female ends come fitted
 * @param stocking how it is bought and kept
 */
public record Item(
    String number,
    String description,
    ItemKind kind,
    List<End> ends,
    UnitOfSale unit,
    double weightLb,
    String material,
    Set<String> fluids,
    Rating rating,
    Optional<HoseFacts> hose,
    OptionalDouble lossCoefficient,
    OptionalDouble applianceLossPsi,
    OptionalDouble opening,
    OptionalDouble kFactor,
    boolean drinkingWater,
    boolean discontinued,
    String markedTo,
    boolean comesWithGaskets,
    Stocking stocking) {

  public Item {
    ends = List.copyOf(ends);
    fluids = Set.copyOf(fluids);
  }

  /** Whether so many can be had: what is discontinued is sold from stock only. */
  public boolean toBeHad(int quantity) {
    return !discontinued || stocking.onHand() >= quantity;
  }

  /** Of the number alone: a search looks items up by the thousand. */
  @Override
  public int hashCode() {
    return number.hashCode();
  }
}
