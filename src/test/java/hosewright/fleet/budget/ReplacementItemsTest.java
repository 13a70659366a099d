package hosewright.fleet.budget;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Catalogue;
import hosewright.catalogue.HoseType;
import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.fleet.record.HoseKind;
import hosewright.line.search.SmallShop;
import hosewright.thread.End;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** All hose is invented: 2.5 in, 50 ft, of one thread, dearer the better. */
final class ReplacementItemsTest {
  private final SmallShop shop = new SmallShop();

  @Test
  void worn_hose_is_replaced_by_fire_hose_however_cheap_other_hose_is() {
    hose("DISCHARGE", HoseType.INDUSTRIAL, false, 4_000);
    hose("DRAWS", HoseType.SUCTION, true, 6_000);
    hose("ATTACK", HoseType.ATTACK, true, 20_000);

    assertThat(replacement("")).contains("ATTACK");
  }

  @Test
  void hose_that_says_no_type_is_fire_hose_where_it_is_tested_in_service() {
    hose("PLAIN", HoseType.UNKNOWN, false, 4_000);
    hose("TESTED", HoseType.UNKNOWN, true, 9_000);

    assertThat(replacement("")).contains("TESTED");
  }

  @Test
  void other_hose_is_taken_for_its_jacket_only() {
    // The small shop makes everything of brass.
    hose("DISCHARGE", HoseType.INDUSTRIAL, false, 4_000);
    assertThat(replacement("")).isEmpty();
    assertThat(replacement("brass")).contains("DISCHARGE");
  }

  @Test
  void suction_hose_is_never_taken() {
    hose("DRAWS", HoseType.SUCTION, true, 4_000);

    assertThat(replacement("brass")).isEmpty();
  }

  private void hose(String number, HoseType type, boolean tested, int cents) {
    SmallShop.Part part =
        shop.part(number, ItemKind.HOSE, "2.5 NH female swivel", "2.5 NH male")
            .hose(2.5, 50, number)
            .type(type);
    (tested ? part.serviceTest(300) : part).at(cents);
  }

  private Optional<String> replacement(String jacket) {
    Catalogue catalogue = shop.catalogue();
    HoseKind worn =
        new HoseKind(2.5, 50, End.parse("2.5 NH female swivel"), End.parse("2.5 NH male"), jacket);
    return new ReplacementItems(catalogue, catalogue.listPricesOn(LocalDate.of(2026, 11, 2)))
        .of(worn)
        .map(Item::number);
  }
}
