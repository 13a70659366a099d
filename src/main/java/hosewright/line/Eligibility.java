package hosewright.line;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.NetPrice;
import java.util.Set;

/** Which items a job may use at all: marked for its fluid, its use, and still to be had. */
final class Eligibility {
  /** NFPA 1961 is the standard on fire hose; it is carried on within NFPA 1960. */
  static final Set<String> FIRE_HOSE_STANDARDS = Set.of("NFPA 1961", "NFPA 1960");

  private final Job.Service service;
  private final NetPrice prices;

  Eligibility(Job job, NetPrice prices) {
    this.service = job.service();
    this.prices = prices;
  }

  /** Whether an item may stand in the water's way. */
  boolean wetted(Item item) {
    return item.fluids().contains(service.fluid())
        && (service.use() != Use.DRINKING || item.drinkingWater())
        && toBeHad(item, prices)
        && holdsAtTemperature(item);
  }

  /** Whether a hose may be laid. */
  boolean hose(Item item) {
    return wetted(item) && (service.use() != Use.FIRE || isMarkedForFire(item));
  }

  static boolean isMarkedForFire(Item item) {
    return FIRE_HOSE_STANDARDS.stream().anyMatch(item.markedTo()::startsWith);
  }

  /** A discontinued item is sold from stock only, and what has no price cannot be weighed. */
  boolean toBeHad(Item item) {
    return toBeHad(item, prices);
  }

  static boolean toBeHad(Item item, NetPrice prices) {
    return item.toBeHad(1) && prices.unitPrice(item, 1).isPresent();
  }

  private boolean holdsAtTemperature(Item item) {
    if (service.temperatureF().isEmpty() || item.kind() == ItemKind.GASKET) {
      return true;
    }
    var working = item.rating().workingPsiAt(service.temperatureF().getAsDouble());
    return working.isEmpty() || working.getAsDouble() > 0;
  }
}
