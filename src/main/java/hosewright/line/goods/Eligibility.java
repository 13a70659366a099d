package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import hosewright.job.Job;
import hosewright.job.Service;
import hosewright.job.question.SourceKind;
import hosewright.job.question.Use;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Which items a job may use at all: marked for its fluid, its use, and still to be had. */
public final class Eligibility {
  /** NFPA 1961 is the standard on fire hose; it is carried on within NFPA 1960. */
  static final Set<String> FIRE_HOSE_STANDARDS = Set.of("NFPA 1961", "NFPA 1960");

  private final Service service;
  private final boolean draws;
  private final NetPrice prices;
  private final Availability availability;

  public Eligibility(Job job, NetPrice prices) {
    this.availability = Availability.of(job);
    this.service = job.service();
    this.draws = job.source() == SourceKind.OPEN_WATER;
    this.prices = prices;
  }

  /** Whether an item may stand in the water's way. */
  public boolean wetted(Item item) {
    return whyNotWetted(item).isEmpty();
  }

  /** Whether a hose may be laid. */
  public boolean hose(Item item) {
    return whyNotHose(item).isEmpty();
  }

  /** Why a hose may not be laid, in words that follow its name; empty when it may. */
  public Optional<String> whyNotHose(Item item) {
    return whyNotWetted(item)
        .or(
            () ->
                service.use().isFire() && !draws && !isMarkedForFire(item)
                    ? Optional.of("not marked to a fire hose standard")
                    : Optional.empty());
  }

  private Optional<String> whyNotWetted(Item item) {
    if (!item.fluids().contains(service.fluid())) {
      return Optional.of("not marked for " + service.fluid());
    }
    if (service.use() == Use.DRINKING && !item.drinkingWater()) {
      return Optional.of("not marked for drinking water");
    }
    if (!toBeHad(item, prices)) {
      return Optional.of("without a price in force, or discontinued and sold out");
    }
    if (!availability.toBeHad(item, 1)) {
      return Optional.of(
          availability.stockOnly() ? "not in stock" : "not to be had by the day asked for");
    }
    return holdsAtTemperature(item)
        ? Optional.empty()
        : Optional.of("without a pressure rating at the temperature");
  }

  static boolean isMarkedForFire(Item item) {
    return FIRE_HOSE_STANDARDS.stream().anyMatch(item.markedTo()::startsWith);
  }

  /** A discontinued item is sold from stock only, and what has no price cannot be weighed. */
  public boolean toBeHad(Item item) {
    return toBeHad(item, prices) && availability.toBeHad(item, 1);
  }

  boolean priced(Item item) {
    return prices.unitPrice(item, 1).isPresent();
  }

  /** Whether so many can be had, and as the job wants them. */
  boolean toBeHad(Item item, int quantity) {
    return availability.toBeHad(item, quantity);
  }

  public static boolean toBeHad(Item item, NetPrice prices) {
    return item.toBeHad(1) && prices.unitPrice(item, 1).isPresent();
  }

  /** Those gaskets that are not known to be too weak for the water; all where every one is. */
  List<Item> bearing(List<Item> gaskets) {
    if (service.temperatureF().isEmpty()) {
      return gaskets;
    }
    double waterF = service.temperatureF().getAsDouble();
    List<Item> bearing =
        gaskets.stream().filter(item -> !GasketMaterial.tooHotFor(item, waterF)).toList();
    return bearing.isEmpty() ? gaskets : bearing;
  }

  private boolean holdsAtTemperature(Item item) {
    if (service.temperatureF().isEmpty() || item.kind() == ItemKind.GASKET) {
      return true;
    }
    var working = item.rating().workingPsiAt(service.temperatureF().getAsDouble());
    return working.isEmpty() || working.getAsDouble() > 0;
  }
}
