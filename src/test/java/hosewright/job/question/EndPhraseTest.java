package hosewright.job.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.thread.End;
import java.util.List;
import org.junit.jupiter.api.Test;

final class EndPhraseTest {

  @Test
  void with_the_carrier_said_the_usual_half_goes_unsaid() {
    assertThat(EndPhrase.source("2.5 NH hydrant").end()).isEqualTo(End.parse("2.5 NH male"));
    assertThat(EndPhrase.appliance("1.5 NH nozzle").end()).isEqualTo(End.parse("1.5 NH female"));
  }

  @Test
  void a_tap_is_a_pipe_and_what_feeds_other_lines_is_fed_like_any_appliance() {
    assertThat(EndPhrase.source("0.75 GHT tap"))
        .isEqualTo(new EndPhrase.Phrase<>(End.parse("0.75 GHT male"), SourceKind.PIPE));
    for (String carrier : List.of("siamese", "pump intake", "manifold", "wye inlet")) {
      assertThat(EndPhrase.appliance("2.5 NH " + carrier))
          .isEqualTo(new EndPhrase.Phrase<>(End.parse("2.5 NH female"), ApplianceKind.APPLIANCE));
    }
  }

  @Test
  void a_misspelt_carrier_is_one_mistake_with_the_word_that_was_meant() {
    assertThatThrownBy(() -> EndPhrase.appliance("1.5 NH nozle"))
        .hasMessageContaining("'nozle' is not understood")
        .hasMessageContaining("Did you mean '1.5 NH nozzle'?")
        .hasMessageNotContaining("which half");
    assertThatThrownBy(() -> EndPhrase.source("2.5 NH male hydrent"))
        .hasMessageContaining("Did you mean '2.5 NH male hydrant'?");
  }

  @Test
  void a_misspelt_thread_is_not_taken_for_a_carrier() {
    assertThatThrownBy(() -> EndPhrase.source("2.5 NHH male hydrant"))
        .hasMessageContaining("Did you mean '2.5 NH male'?");
  }
}
