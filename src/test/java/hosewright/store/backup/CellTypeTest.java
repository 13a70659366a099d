package hosewright.store.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A cell comes back from its line as it went in, and what is no cell is not taken for one. */
final class CellTypeTest {
  private static final long SEED = 20261130;

  @Test
  void any_text_at_all_comes_back_and_keeps_to_one_line_and_one_cell() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 2_000; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(12); i > 0; i--) {
        // Half of them where the controls, the backslash and N are, half anywhere in 16 bits.
        text.append((char) random.nextInt(random.nextBoolean() ? 0xA0 : 0x10000));
      }
      String cell = CellType.TEXT.write(text.toString());
      assertThat(cell).doesNotContain("\t", "\n", "\r", "\0").isNotEqualTo(CellType.NOTHING);
      assertThat(CellType.TEXT.read(cell)).as("seed %d", SEED).isEqualTo(text.toString());
    }
  }

  @Test
  void nothing_is_told_from_empty_text_and_from_text_that_looks_like_nothing() {
    assertThat(CellType.TEXT.write(null)).isEqualTo("\\N");
    assertThat(CellType.TEXT.read("\\N")).isNull();
    assertThat(CellType.TEXT.read("")).isEqualTo("");
    assertThat(CellType.TEXT.write("\\N")).isEqualTo("\\\\N");
  }

  @Test
  void a_measure_comes_back_to_the_last_bit() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 2_000; round++) {
      double value = Double.longBitsToDouble(random.nextLong());
      assertThat(CellType.MEASURE.read(CellType.MEASURE.write(value))).isEqualTo(value);
    }
  }

  @Test
  void money_keeps_its_places_and_time_its_millionths() {
    assertThat(CellType.DECIMAL.write(new BigDecimal("12.5000"))).isEqualTo("12.5000");
    assertThat(CellType.DECIMAL.read("12.5000")).isEqualTo(new BigDecimal("12.5000"));
    OffsetDateTime noon = OffsetDateTime.parse("2026-11-30T12:00:00.123456Z");
    assertThat(CellType.MOMENT.write(noon)).isEqualTo("2026-11-30T12:00:00.123456Z");
    assertThat(CellType.MOMENT.read("2026-11-30T12:00:00.123456Z")).isEqualTo(noon);
    assertThat(CellType.DAY.read("2026-11-30")).isEqualTo(LocalDate.of(2026, 11, 30));
  }

  @ParameterizedTest
  @CsvSource({
    "WHOLE,1.5",
    "WHOLE,99999999999",
    "WHOLE,0x10",
    "MEASURE,0x1p3",
    "MEASURE,1d",
    "DECIMAL,1E999999999",
    "TRUTH,yes",
    "DAY,2026-02-30",
    "DAY,30.11.2026",
    "MOMENT,2026-11-30T12:00:00+01:00",
    "TEXT,\\x",
    "TEXT,\\u12",
    "TEXT,\\u12zz",
    "TEXT,\\"
  })
  void what_is_no_cell_of_its_type_is_refused(CellType type, String cell) {
    assertThatThrownBy(() -> type.read(cell)).isInstanceOf(IllegalArgumentException.class);
  }
}
