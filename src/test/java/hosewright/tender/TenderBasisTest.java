package hosewright.tender;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.paper.json.Json;
import org.junit.jupiter.api.Test;

/** What a run of a tender rests on, as its journal keeps it. */
final class TenderBasisTest {
  @Test
  void a_run_begun_before_there_was_one_quote_for_all_goes_on() {
    TenderBasis basis =
        Json.read(
            """
            {"file":"jobs.csv","sha256":"00","rows":3,"catalogueLoad":1,
             "date":"2026-11-02","customer":"COUNTER","quotes":true,
             "begun":"2026-11-02T12:00:00Z"}
            """,
            TenderBasis.class);
    assertThat(basis.together()).isFalse();
    assertThat(basis.quoted()).isTrue();
  }
}
