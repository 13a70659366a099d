package hosewright.door.shell.run;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Whoever types reads the options he can type; whoever refused knew fields only. */
final class TypedNamesTest {
  private static final TypedNames NAMES = new TypedNames(Set.of("customer", "valid-days"));

  @Test
  void a_field_that_is_an_option_of_the_command_is_named_as_it_is_typed() {
    assertThat(
            NAMES.in(
                new BadInputException(
                        List.of(
                            Problem.of("customer", "NOPE", "a customer on file"),
                            Problem.of("valid-days", "", "say how many")))
                    .getMessage()))
        .isEqualTo(
            "--customer cannot be 'NOPE': a customer on file.\n"
                + "--valid-days is missing: say how many.");
  }

  @Test
  void a_field_that_is_none_a_row_and_a_value_stay_as_they_are() {
    for (String sentence :
        List.of(
            "PAPER cannot be 'x': quote, order.",
            "line 3, customer cannot be 'x': a customer on file.",
            "note cannot be 'customer is missing: x': a note.",
            "--customer cannot be 'x': a customer on file.",
            "There is no customer NOPE.")) {
      assertThat(NAMES.in(sentence)).isEqualTo(sentence);
    }
  }

  @Test
  void what_else_may_be_given_is_named_as_it_is_typed_within_a_sentence() {
    assertThat(NAMES.in("say this or " + Given.as("valid-days") + ", not both"))
        .isEqualTo("say this or --valid-days, not both");
    assertThat(TypedNames.NONE.in("name it with " + Given.as("data")))
        .isEqualTo("name it with --data");
  }
}
