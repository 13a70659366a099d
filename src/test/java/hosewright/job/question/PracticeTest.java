package hosewright.job.question;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import org.junit.jupiter.api.Test;

final class PracticeTest {

  @Test
  void rules_are_lifted_by_name_and_each_once() {
    assertThat(JobField.ALLOW.read("Plain-Wye, narrow-fitting; plain-wye"))
        .extracting(Practice::id)
        .containsExactly("plain-wye", "narrow-fitting");
  }

  @Test
  void a_name_that_no_rule_has_is_refused_with_the_nearest() {
    Problem problem = refused("narow-fitting");
    assertThat(problem.value()).isEqualTo("narow-fitting");
    assertThat(problem.allowed()).contains("plain-wye");
    assertThat(problem.nearest()).isEqualTo("narrow-fitting");
  }

  @Test
  void a_rule_that_is_never_lifted_is_refused_as_such() {
    assertThat(refused("part-to-source").allowed())
        .startsWith("that rule is never lifted")
        .contains("narrow-fitting")
        .doesNotContain("part-to-source");
  }

  @Test
  void every_rule_says_what_it_is_about_and_whence_it_comes() {
    assertThat(Practice.all())
        .isNotEmpty()
        .allSatisfy(
            rule -> {
              assertThat(rule.id()).matches("[a-z]+(-[a-z]+)*");
              assertThat(rule.about()).isNotBlank();
              assertThat(rule.source()).isNotBlank();
              assertThat(rule.limit().isPresent()).isEqualTo(!rule.unit().isEmpty());
            });
  }

  private static Problem refused(String text) {
    List<Problem> problems = new java.util.ArrayList<>();
    assertThatThrownBy(() -> JobField.ALLOW.read(text))
        .isInstanceOfSatisfying(BadInputException.class, bad -> problems.addAll(bad.problems()));
    return problems.get(0);
  }
}
