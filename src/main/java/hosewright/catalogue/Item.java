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
 * @param form what it is
 * @param hose hose facts, present on hose, bulk hose, couplings and attachments
 * @param build how it is made, and for what
 * @param water what the water meets in it
 * @param selling how it is sold
 */
public record Item(
    String number,
    String description,
    Form form,
    Optional<HoseFacts> hose,
    Build build,
    WaterFacts water,
    Selling selling) {

  public ItemKind kind() {
    return form.kind();
  }

  public Sort sort() {
    return form.sort();
  }

  /** Its ends; on gaskets, wrenches and couplings the ends it fits or carries. */
  public List<End> ends() {
    return form.ends();
  }

  /** What a hose is made for; unknown on everything that is none. */
  public HoseType hoseType() {
    return hose.map(HoseFacts::type).orElse(HoseType.UNKNOWN);
  }

  public String material() {
    return build.material();
  }

  public double weightLb() {
    return build.weightLb();
  }

  public Set<String> fluids() {
    return build.fluids();
  }

  public Rating rating() {
    return build.rating();
  }

  public boolean drinkingWater() {
    return build.drinkingWater();
  }

  public String markedTo() {
    return build.markedTo();
  }

  public boolean comesWithGaskets() {
    return build.comesWithGaskets();
  }

  public OptionalDouble lossCoefficient() {
    return water.lossCoefficient();
  }

  public OptionalDouble applianceLossPsi() {
    return water.applianceLossPsi();
  }

  public OptionalDouble opening() {
    return water.opening();
  }

  public OptionalDouble kFactor() {
    return water.kFactor();
  }

  /** Its narrowest bore, marked as a guess where its row does not say; empty without ends. */
  public Optional<Waterway> waterway() {
    return water.waterwayIn().isPresent()
        ? Optional.of(Waterway.known(water.waterwayIn().getAsDouble()))
        : Waterway.guessed(form.ends());
  }

  public UnitOfSale unit() {
    return selling.unit();
  }

  public boolean discontinued() {
    return selling.discontinued();
  }

  public Stocking stocking() {
    return selling.stocking();
  }

  /** The same with so many on the shelf. */
  public Item withStock(int onHand) {
    Stocking now =
        new Stocking(stocking().supplier(), stocking().packSize(), stocking().leadDays(), onHand);
    return new Item(
        number,
        description,
        form,
        hose,
        build,
        water,
        new Selling(selling.unit(), selling.discontinued(), now));
  }

  /** Whether so many can be had: what is discontinued is sold from stock only. */
  public boolean toBeHad(int quantity) {
    return !discontinued() || stocking().onHand() >= quantity;
  }

  /** Of the number alone: a search looks items up by the thousand. */
  @Override
  public int hashCode() {
    return number.hashCode();
  }
}
