package hosewright.desk.purchase;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.thread.End;
import hosewright.thread.Mating;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells which parts of a list couple to no other part of it. Somebody may buy them for hose they
 * have, so it is said and not refused.
 */
final class PartsEnds {
  private final List<Item> parts;

  PartsEnds(List<Item> parts) {
    this.parts = parts.stream().filter(PartsEnds::couples).distinct().toList();
  }

  /** A sentence for each part that none beside it couples to; none where no hose is bought. */
  List<String> told() {
    List<String> told = new ArrayList<>();
    List<Item> hoses = parts.stream().filter(part -> part.kind() == ItemKind.HOSE).toList();
    for (Item part : parts) {
      if (!hoses.isEmpty() && part.kind() != ItemKind.HOSE && !meetsAny(part)) {
        told.add(sentence(part, hoses));
      }
    }
    return told;
  }

  /** Gaskets and spanners fit ends and carry none; bulk hose has its ends put on. */
  private static boolean couples(Item item) {
    return switch (item.kind()) {
      case GASKET, WRENCH, SEALANT, COUPLING, ATTACHMENT, BULK_HOSE -> false;
      default -> !item.kind().isWork() && !item.ends().isEmpty();
    };
  }

  private boolean meetsAny(Item part) {
    return parts.stream().filter(other -> !other.equals(part)).anyMatch(other -> meet(part, other));
  }

  private static boolean meet(Item one, Item other) {
    return one.ends().stream()
        .anyMatch(end -> other.ends().stream().anyMatch(end2 -> Mating.of(end, end2).mates()));
  }

  private static String sentence(Item part, List<Item> hoses) {
    End inlet = part.ends().get(0);
    Item hose = hoses.get(0);
    End outlet = hose.ends().get(hose.ends().size() - 1);
    return "%s does not couple to any part beside it: %s against %s of %s: %s"
        .formatted(part.number(), inlet, outlet, hose.number(), Mating.of(inlet, outlet).reason());
  }
}
