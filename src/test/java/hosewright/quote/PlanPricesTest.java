package hosewright.quote;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.LinePlan;
import hosewright.line.LinePlan.SectionCount;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class PlanPricesTest {

  @Test
  void a_plan_priced_anew_still_says_which_sections_the_customer_has_and_which_are_spare() {
    List<SectionCount> own = List.of(new SectionCount(50, 3));
    List<SectionCount> spare = List.of(new SectionCount(50, 1));
    LinePlan plan = QuoteMakerTest.plan(List.of(), own, spare);
    LinePlan later =
        PlanPrices.on(LocalDate.of(2027, 1, 4), plan, (item, quantity) -> Optional.empty());
    assertThat(later.ownSections()).isEqualTo(own);
    assertThat(later.spareSections()).isEqualTo(spare);
  }
}
