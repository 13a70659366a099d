package hosewright.job.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds of every question, so that a new one need only be written down. */
final class JobFieldTest {

  static List<JobField> fields() {
    return JobField.values();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void its_word_is_its_own(JobField field) {
    assertThat(JobField.of(field.word())).contains(field);
    assertThat(field.word()).matches("[a-z]+(-[a-z]+)*");
    assertThat(field.meaning()).isNotBlank();
  }

  @ParameterizedTest
  @MethodSource("fields")
  void what_is_shown_as_an_example_and_what_is_usual_can_be_typed(JobField field) {
    assertThatCode(() -> field.read(field.example())).doesNotThrowAnyException();
    field
        .whenOpen()
        .usual()
        .ifPresent(usual -> assertThatCode(() -> field.read(usual)).doesNotThrowAnyException());
    assertThat(field.choices())
        .allSatisfy(word -> assertThatCode(() -> field.read(word)).doesNotThrowAnyException());
  }

  @ParameterizedTest
  @MethodSource("fields")
  void whoever_must_answer_is_asked(JobField field) {
    if (field.required(Map.of())) {
      assertThat(field.asking().question()).endsWith("?");
      assertThat(field.asking().matters().test(Map.of())).isTrue();
      assertThat(field.whenOpen().usual()).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("fields")
  void a_measure_is_refused_without_a_number_and_by_its_own_name(JobField field) {
    if (field.isMeasured()) {
      assertThatThrownBy(() -> field.read("plenty"))
          .isInstanceOfSatisfying(
              BadInputException.class,
              bad ->
                  assertThat(bad.problems())
                      .allMatch(problem -> problem.field().equals(field.word())));
    }
  }
}
