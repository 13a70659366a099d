package hosewright.hydraulics.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hosewright.hydraulics.HoseLeg;
import hosewright.hydraulics.ParallelLegs;
import hosewright.hydraulics.law.CoefficientLaw;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Laws of lines side by side: what comes in goes out, and no line loses more than another. Common
 * teaching of pipes in parallel, for example Fundamentals of Hydraulic Engineering Systems
 * (Houghtalen, Akan, Hwang), chapter 4; the closed form is held to another of our own classes.
 */
class SharesTest {

  @Test
  void flows_add_up_and_lines_lose_alike() {
    Random random = new Random(7);
    for (int i = 0; i < 300; i++) {
      List<DoubleUnaryOperator> lines = new ArrayList<>();
      int count = 2 + random.nextInt(3);
      for (int line = 0; line < count; line++) {
        double k = 1e-5 * (1 + random.nextInt(200));
        double body = 1e-6 * random.nextInt(50);
        lines.add(gpm -> k * gpm * gpm + body * gpm * gpm);
      }
      double wholeGpm = 50 + random.nextInt(1500);

      double[] shares = Shares.gpm(lines, wholeGpm);

      assertThat(Arrays.stream(shares).sum()).isCloseTo(wholeGpm, within(1e-6));
      double lostPsi = lines.get(0).applyAsDouble(shares[0]);
      for (int line = 1; line < count; line++) {
        assertThat(lines.get(line).applyAsDouble(shares[line]))
            .as("case %d", i)
            .isCloseTo(lostPsi, within(1e-5 * Math.max(1, lostPsi)));
      }
    }
  }

  @Test
  void by_the_coefficient_law_they_divide_as_in_closed_form() {
    HoseLeg left = new HoseLeg("left", new CoefficientLaw(0.8), 250, 3);
    HoseLeg right = new HoseLeg("right", new CoefficientLaw(2), 350, 2.5);

    double[] closed = new ParallelLegs("both", List.of(left, right)).flowsGpm(500);

    assertThat(Shares.gpm(List.of(left::lossPsi, right::lossPsi), 500))
        .containsExactly(closed, within(1e-6));
  }

  @Test
  void a_line_that_loses_more_empty_than_the_others_full_carries_nothing() {
    assertThat(Shares.gpm(List.of(gpm -> 50 + gpm, gpm -> gpm / 100), 100)).containsExactly(0, 100);
    assertThat(Shares.gpm(List.of(gpm -> gpm / 100, gpm -> 50 + gpm), 100)).containsExactly(100, 0);
  }

  @Test
  void where_a_loss_sets_in_at_the_very_flow_all_of_it_still_goes_somewhere() {
    DoubleUnaryOperator stepped = gpm -> gpm / 100 + (gpm >= 40 ? 10 : 0);

    double[] shares = Shares.gpm(List.of(stepped, gpm -> gpm / 100), 100);

    assertThat(shares[0]).isCloseTo(40, within(1e-6));
    assertThat(shares[0] + shares[1]).isEqualTo(100);
  }
}
