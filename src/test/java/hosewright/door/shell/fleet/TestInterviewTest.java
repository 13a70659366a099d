package hosewright.door.shell.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.desk.interview.Asker;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class TestInterviewTest {
  private static final String CTRL_C = "\u0003";
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

  private final List<String> said = new ArrayList<>();

  /** What is said to the questions, by the word each begins with; to any other, only Enter. */
  private static final class Person {
    private final Map<String, Deque<String>> says = new HashMap<>();

    Person to(String question, String... answers) {
      says.put(question, new ArrayDeque<>(List.of(answers)));
      return this;
    }

    String says(String prompt) {
      Deque<String> left = says.getOrDefault(prompt.split("[ ,:]")[0], new ArrayDeque<>());
      return left.isEmpty() ? "" : left.remove();
    }
  }

  private Optional<List<List<String>>> answers(Person person) {
    Asker asker =
        new Asker() {
          @Override
          public Optional<String> ask(String prompt, List<String> candidates) {
            return Optional.of(person.says(prompt)).filter(text -> !text.equals(CTRL_C));
          }

          @Override
          public void say(String text) {
            said.add(text);
          }
        };
    return new TestInterview(asker, Set.of("H-1", "H-2"), TODAY, 3).rows();
  }

  @Test
  void a_day_is_entered_section_by_section() {
    assertThat(
            answers(
                new Person()
                    .to("date", "2026-10-30")
                    .to("section", "H-1", "H-2", "H-2")
                    .to("outcome", "", "leak", "recoupled")
                    .to("test", "300", "300")
                    .to("held", "3")
                    .to("length", "48.5")))
        .contains(
            List.of(
                List.of("H-1", "2026-10-30", "pass", "300", "3", "", ""),
                List.of("H-2", "2026-10-30", "leak", "300", "", "", ""),
                List.of("H-2", "2026-10-30", "recoupled", "", "", "48.5", "")));
  }

  @Test
  void what_cannot_be_is_said_and_asked_again() {
    assertThat(
            answers(
                new Person()
                    .to("date", "2027-01-01", "")
                    .to("section", "H-9", "H-1")
                    .to("outcome", "passed", "pass")
                    .to("test", "many", "300")
                    .to("held", "2", "3")))
        .contains(List.of(List.of("H-1", "2026-11-02", "pass", "300", "3", "", "")));
    assertThat(said)
        .anyMatch(text -> text.contains("not after today"))
        .anyMatch(text -> text.contains("no section 'H-9'"))
        .anyMatch(text -> text.contains("one of pass, leak"))
        .anyMatch(text -> text.contains("a number such as 300"))
        .anyMatch(text -> text.contains("at least 3 minutes"));
  }

  @Test
  void a_section_can_be_dropped_and_breaking_off_keeps_nothing() {
    assertThat(
            answers(
                new Person()
                    .to("section", "H-1", "H-2")
                    .to("outcome", "pass", "")
                    .to("test", "<", "300")
                    .to("held", "3")))
        .contains(List.of(List.of("H-2", "2026-11-02", "pass", "300", "3", "", "")));
    assertThat(answers(new Person().to("section", "H-1").to("outcome", "pass").to("test", CTRL_C)))
        .isEmpty();
  }

  @Test
  void a_question_mark_explains() {
    answers(new Person().to("date", "?", ""));
    assertThat(said).anyMatch(text -> text.contains("the day of the tests"));
  }
}
