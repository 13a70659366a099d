package hosewright.line.goods;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import java.util.ArrayList;
import java.util.List;

/** Says which plans may use an item, and as what. */
public final class PlanUse {
  private PlanUse() {}

  /** Sentences without a full stop; a discontinued item is used while its stock lasts. */
  public static List<String> of(Item item) {
    List<String> uses = new ArrayList<>();
    uses.add(role(item.kind()));
    if (!item.kind().isWork() && !item.fluids().isEmpty()) {
      uses.add("for " + String.join(", ", item.fluids().stream().sorted().toList()));
      uses.add(
          item.drinkingWater()
              ? "drinking water too: it is marked for it"
              : "not for drinking water: it is not marked for it");
    }
    if (item.kind() == ItemKind.HOSE || item.kind() == ItemKind.BULK_HOSE) {
      uses.add(
          Eligibility.isMarkedForFire(item)
              ? "fire use: it is marked to " + item.markedTo()
              : "not for fire use: it is not marked to a fire hose standard");
    }
    if (item.discontinued()) {
      uses.add("discontinued: only while " + item.stocking().onHand() + " on hand last");
    }
    return uses;
  }

  private static String role(ItemKind kind) {
    return switch (kind) {
      case HOSE -> "laid as a bought section";
      case BULK_HOSE, COUPLING, ATTACHMENT -> "part of a made-up section";
      case COUPLING_LABOUR, PRESSURE_TEST -> "work on a made-up section";
      case ADAPTER -> "adapter where two ends do not mate";
      case GASKET, SEALANT -> "seal of a joint, and spare";
      case WYE, SIAMESE, VALVE, CAP, PLUG, STRAINER, METER, BACKFLOW, GAUGE ->
          "device or accessory when it is asked for";
      case PUMP -> "pump on the way, where one is asked for";
      case NOZZLE, MONITOR -> "appliance, quoted when it is asked for";
      case WRENCH, RAMP, RESTRAINT, SERVICE -> "accessory or work when it is asked for";
    };
  }
}
