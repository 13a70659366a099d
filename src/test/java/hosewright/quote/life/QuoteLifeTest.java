package hosewright.quote.life;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.quote.Quote.Status;
import hosewright.quote.life.QuoteLife.Step;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class QuoteLifeTest {

  /**
   * What may be done, row by row: the state, the step, the state after, whether a draft is made.
   */
  private static final String ALLOWED =
      """
      draft revise draft new
      draft update-prices draft new
      draft issue issued same
      issued revise issued new
      issued update-prices issued new
      issued accept accepted same
      draft discard discarded same
      issued decline declined same
      issued expire expired same
      accepted reopen accepted new
      accepted order accepted same
      declined reopen declined new
      expired reopen expired new
      expired update-prices expired new
      """;

  @Test
  void every_pair_of_state_and_step_leads_where_the_table_says_or_nowhere() {
    Map<String, String> allowed = new HashMap<>();
    ALLOWED
        .lines()
        .map(row -> row.split(" "))
        .forEach(row -> allowed.put(row[0] + " " + row[1], row[2] + " " + row[3]));
    int seen = 0;
    for (Status status : Status.values()) {
      for (Step step : Step.values()) {
        String pair = QuoteLife.word(status) + " " + step.word();
        Optional<String> leads =
            QuoteLife.after(status, step)
                .map(
                    result ->
                        QuoteLife.word(result.status())
                            + (result.newRevision() ? " new" : " same"));
        assertThat(leads).as(pair).isEqualTo(Optional.ofNullable(allowed.get(pair)));
        seen += leads.isPresent() ? 1 : 0;
      }
    }
    assertThat(seen).isEqualTo(allowed.size());
  }

  @Test
  void what_the_buyer_holds_never_goes_back_to_a_draft() {
    for (Status status : Status.values()) {
      for (Step step : Step.values()) {
        if (status != Status.DRAFT) {
          assertThat(QuoteLife.after(status, step).map(QuoteLife.Result::status))
              .isNotEqualTo(Optional.of(Status.DRAFT));
        }
      }
    }
  }
}
