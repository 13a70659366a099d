package hosewright.line.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class SentenceTest {
  private static final long SEED = 20261130;

  @Test
  void every_figure_is_rounded_as_the_library_rounds_it() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 20_000; i++) {
      double drawn = random.nextDouble(-1, 1) * Math.pow(10, random.nextInt(-6, 18));
      // Figures of few digits stand on the edge between two roundings.
      double few = Math.rint(drawn * 1_000) / 1_000;
      for (double value : new double[] {drawn, few, few / 2, random.nextInt(-9, 10)}) {
        for (String format : List.of("%.0f psi", "of %.1f", "%.2f%%", "%.3f")) {
          same(format, value);
        }
      }
    }
  }

  @Test
  void whatever_else_a_sentence_has_stands_as_the_library_writes_it() {
    same("%s of %d takes %.1f psi: 10 %% of %s.", "A line", 12, 3.25, "it");
    same("%d and %d", Integer.MIN_VALUE, Long.MAX_VALUE);
    same("%s, %s and %s", null, 4.5, List.of("x"));
    for (double odd : new double[] {0.0, -0.0, Double.NaN, Double.NEGATIVE_INFINITY, 1e300}) {
      same("%.1f psi", odd);
    }
    same("no figure");
    same("%5.1f|%-4s|%,d", 2.0, "a", 12_345);
  }

  private static void same(String format, Object... values) {
    assertThat(Sentence.of(format, values)).isEqualTo(String.format(Locale.ROOT, format, values));
  }
}
