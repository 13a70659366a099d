package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class FamiliesTest {

  @Test
  void a_family_is_found_by_code_or_trade_name_in_any_case() {
    assertThat(Families.find("nst").orElseThrow().code()).isEqualTo("NH");
    assertThat(Families.find(" NHT ").orElseThrow().code()).isEqualTo("NH");
    assertThat(Families.find("bspp").orElseThrow().code()).isEqualTo("G");
    assertThat(Families.find("STORZ").orElseThrow().code()).isEqualTo("Storz");
    assertThat(Families.find("XYZ")).isEmpty();
  }

  @Test
  void no_name_belongs_to_two_families() {
    Map<String, String> owners = new HashMap<>();
    for (Family family : Families.all()) {
      owners.put(family.code().toLowerCase(Locale.ROOT), family.code());
    }
    for (Family family : Families.all()) {
      for (String alias : family.halves().aliases().keySet()) {
        assertThat(owners.putIfAbsent(alias, family.code())).as(alias).isNull();
      }
    }
  }

  @Test
  void flank_angles_are_those_of_the_standards() {
    // ASME B1.20.1 and B1.20.7: 60 degrees. ISO 228-1 and ISO 7-1: 55 degrees.
    assertThat(Families.find("NPT").orElseThrow().figures().formAngleDeg()).hasValue(60);
    assertThat(Families.find("NPSH").orElseThrow().figures().formAngleDeg()).hasValue(60);
    assertThat(Families.find("G").orElseThrow().figures().formAngleDeg()).hasValue(55);
    assertThat(Families.find("R").orElseThrow().figures().formAngleDeg()).hasValue(55);
    assertThat(Families.find("Storz").orElseThrow().figures().formAngleDeg()).isEmpty();
  }

  @Test
  void a_family_without_any_figures_says_so() {
    for (Family family : Families.all()) {
      if (family.threaded()) {
        boolean held =
            ThreadTable.all().stream()
                .anyMatch(r -> r.family().equals(family.code()) && r.figuresHeld());
        assertThat(family.figures().figuresHeld()).as(family.code()).isEqualTo(held);
      }
    }
  }

  @Test
  void every_counterpart_exists() {
    for (Family family : Families.all()) {
      assertThat(Families.find(family.halves().counterpart())).as(family.code()).isPresent();
    }
  }
}
