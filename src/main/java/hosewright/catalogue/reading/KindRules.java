package hosewright.catalogue.reading;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.catalogue.UnitOfSale;
import hosewright.csv.CsvRow;
import java.util.List;

/** What a row must say because of the kind of its item: without it no plan could use the item. */
record KindRules(CsvRow row, Item item) {

  void hold() {
    switch (item.kind()) {
      case HOSE -> {
        ends(2, 2);
        filled("hose_size_in", "a section of hose has a hose size in inches");
        filled("length_ft", "a section of hose has a length in feet");
        filled("series", "a section of hose names its series");
      }
      case BULK_HOSE -> {
        ends(0, 0);
        filled("hose_size_in", "bulk hose has a hose size in inches");
        filled("series", "bulk hose names its series");
        if (item.unit() != UnitOfSale.FOOT) {
          row.refuse("unit", "bulk hose is sold by the foot", UnitOfSale.FOOT.word());
        }
        if (!row.empty("length_ft")) {
          row.refuse("length_ft", "bulk hose has no length of its own: leave it empty");
        }
      }
      case COUPLING -> {
        ends(1, 2);
        filled("hose_size_in", "a coupling names the hose size it fits, in inches");
      }
      case ADAPTER -> ends(2, 2);
      case WYE, SIAMESE -> ends(3, 9);
      case CAP, PLUG -> ends(1, 1);
      case PUMP -> ends(2, 9);
      case GASKET -> ends(1, 9);
      default -> {}
    }
    of("gated", "a wye or siamese", ItemKind.WYE, ItemKind.SIAMESE);
    of("shutoff", "a nozzle", ItemKind.NOZZLE);
    of("channels", "a ramp", ItemKind.RAMP);
    of("pump_curve", "a pump", ItemKind.PUMP);
    of("fuel", "a pump", ItemKind.PUMP);
    of("hose_type", "hose", ItemKind.HOSE, ItemKind.BULK_HOSE);
    if (item.water().ratedPressurePsi().isPresent() && item.water().ratedFlowGpm().isEmpty()) {
      row.refuse("rated_flow_gpm", "the flow in gpm that the rated pressure gives");
    }
  }

  /** A fact of some kinds, said of another, would never be looked at. */
  private void of(String column, String what, ItemKind... kinds) {
    if (!row.empty(column) && !List.of(kinds).contains(item.kind())) {
      row.refuse(column, "said of %s only: leave it empty".formatted(what));
    }
  }

  private void ends(int fewest, int most) {
    int count = item.ends().size();
    if (count < fewest || count > most) {
      row.refuse("ends", "%s has %s".formatted(item.kind().word(), allowed(fewest, most)));
    }
  }

  private static String allowed(int fewest, int most) {
    if (most == 0) {
      return "no ends: leave it empty";
    }
    return most == 1
        ? "1 end"
        : (fewest == most ? "" + fewest : fewest + " to " + most) + " ends with ' x ' between them";
  }

  private void filled(String column, String allowed) {
    if (row.empty(column)) {
      row.refuse(column, allowed);
    }
  }
}
