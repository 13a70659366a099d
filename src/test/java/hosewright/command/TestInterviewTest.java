package hosewright.command;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.shell.Asker;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class TestInterviewTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 2);

  private final List<String> said = new ArrayList<>();

  private Optional<List<List<String>>> answers(String... typed) {
    Deque<String> left = new ArrayDeque<>(List.of(typed));
    Asker person =
        new Asker() {
          @Override
          public Optional<String> ask(String prompt, List<String> candidates) {
            return Optional.ofNullable(left.poll());
          }

          @Override
          public void say(String text) {
            said.add(text);
          }
        };
    return new TestInterview(person, Set.of("H-1", "H-2"), TODAY, 3).rows();
  }

  @Test
  void a_day_is_entered_section_by_section() {
    assertThat(
            answers(
                "2026-10-30",
                "H-1",
                "",
                "300",
                "3",
                "H-2",
                "leak",
                "300",
                "H-2",
                "recoupled",
                "48.5",
                ""))
        .contains(
            List.of(
                List.of("H-1", "2026-10-30", "pass", "300", "3", "", ""),
                List.of("H-2", "2026-10-30", "leak", "300", "", "", ""),
                List.of("H-2", "2026-10-30", "recoupled", "", "", "48.5", "")));
  }

  @Test
  void what_cannot_be_is_said_and_asked_again() {
    assertThat(
            answers("2027-01-01", "", "H-9", "H-1", "passed", "pass", "many", "300", "2", "3", ""))
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
    assertThat(answers("", "H-1", "pass", "<", "H-2", "", "300", "3", ""))
        .contains(List.of(List.of("H-2", "2026-11-02", "pass", "300", "3", "", "")));
    assertThat(answers("", "H-1", "pass")).isEmpty();
  }

  @Test
  void a_question_mark_explains() {
    answers("?", "", "");
    assertThat(said).anyMatch(text -> text.contains("the day of the tests"));
  }
}
