package hosewright.problem;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.RefusalException.Kind;
import hosewright.problem.TroubleException.Kept;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RefusalExceptionTest {
  private static final NoSuchThingException NO_ORDER =
      new NoSuchThingException("order", "O-00002", List.of("O-000021"), "'order list' shows all");

  @Test
  void what_is_not_there_is_named_with_the_nearest_that_is() {
    assertThat(NO_ORDER.kind()).isEqualTo(Kind.NO_SUCH_THING);
    assertThat(NO_ORDER)
        .hasMessage("There is no order O-00002: 'order list' shows all. Did you mean 'O-000021'?");
    assertThat(NO_ORDER.problems())
        .containsExactly(new Problem("order", "O-00002", "'order list' shows all", "O-000021"));
  }

  @Test
  void a_conflict_says_whether_to_look_again_or_what_to_do_first() {
    ConflictException first =
        ConflictException.somebodyWasFirst("quote", "Q-000001", "is no longer issued");
    ConflictException state =
        ConflictException.stateForbids("catalogue", "", "has no prices", "load one that has");

    assertThat(first).hasMessage("Quote Q-000001 is no longer issued: look at it again first.");
    assertThat(first.why()).isEqualTo(ConflictException.Why.SOMEBODY_WAS_FIRST);
    assertThat(state).hasMessage("Catalogue has no prices: load one that has.");
    assertThat(state.why()).isEqualTo(ConflictException.Why.STATE_FORBIDS);
  }

  @Test
  void trouble_says_whether_something_may_have_been_kept() {
    assertThat(new TroubleException("store", "data folder books", "its disk is full", Kept.NOTHING))
        .hasMessage(
            "The store cannot be used: its disk is full (data folder books). Nothing was kept.");
    assertThat(new TroubleException("store", "database books", "the server is gone", Kept.MAYBE))
        .hasMessageContaining("look before you repeat it");
  }

  @Test
  void what_is_wrong_with_one_input_is_said_at_once_each_in_its_own_words() {
    BadInputException all =
        BadInputException.ofAll(
            List.of(new BadInputException("length", "x", "give feet"), NO_ORDER));

    assertThat(all.getMessage().lines())
        .containsExactly("length cannot be 'x': give feet.", NO_ORDER.getMessage());
    assertThat(all.problems()).extracting(Problem::field).containsExactly("length", "order");
  }
}
