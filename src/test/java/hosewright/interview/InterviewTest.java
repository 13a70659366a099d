package hosewright.interview;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.jobfile.JobFile;
import hosewright.line.DemoCatalogue;
import hosewright.line.JobField;
import hosewright.shell.Asker;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person at the counter, played by the answers they give in turn. */
final class InterviewTest {
  private static final String CTRL_C = "\u0003";

  @TempDir private Path folder;
  private final StringBuilder screen = new StringBuilder();
  private int plans;

  private final class Person implements Asker {
    private final Deque<String> says;

    Person(String... says) {
      this.says = new ArrayDeque<>(List.of(says));
    }

    @Override
    public Optional<String> ask(String prompt, List<String> candidates) {
      assertThat(says).as("asked too much, last: " + prompt).isNotEmpty();
      String said = says.remove();
      screen.append(prompt).append(said).append('\n');
      return said.equals(CTRL_C) ? Optional.empty() : Optional.of(said);
    }

    @Override
    public void say(String text) {
      screen.append(text).append('\n');
    }

    @Override
    public String readInput(String prompt) {
      return ask(prompt, List.of()).orElse("");
    }
  }

  private Optional<Map<JobField, String>> interview(boolean forQuote, String... says) {
    Desk desk =
        new Desk(
            DemoCatalogue.get(),
            List.of("COUNTER", "HARLOW-FD"),
            List.of("Port Harlow"),
            job -> {
              plans++;
              return DemoCatalogue.plan(job);
            },
            folder.resolve("job-in-progress.yaml"));
    return new Interview(new Person(says), desk, forQuote).answers();
  }

  @Test
  void a_job_is_asked_for_step_by_step_and_its_plan_grows() {
    Map<JobField, String> answers =
        interview(
                false,
                "2.5 NH male hydrant",
                "1.5 NH nozzle",
                "200 ft",
                "",
                "95 gpm",
                "75 psi",
                "",
                "150 psi",
                "fire",
                "Port Harlow",
                "1.75 in",
                "",
                "",
                "",
                "")
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.FROM, "2.5 NH male hydrant")
        .containsEntry(JobField.SOURCE_PRESSURE, "150 psi")
        .containsEntry(JobField.DISTRICT, "Port Harlow")
        .doesNotContainKey(JobField.RISE)
        .doesNotContainKey(JobField.CUSTOMER);
    assertThat(screen)
        .contains("So far: 2.5 NH male hydrant >> 200 ft >> 1.5 NH nozzle")
        .containsPattern("So far: \\d+ x \\d+ ft .* in hose and an adapter, [0-9.]+ USD")
        .contains("Taken for granted: 5 % more hose than the distance; level ground");
    assertThat(plans).isEqualTo(5);
  }

  @Test
  void a_letter_picks_a_choice_of_the_catalogue_or_the_books() {
    Map<JobField, String> answers =
        interview(
                true,
                "a",
                "b",
                "50 ft",
                "",
                "30 gpm",
                "20 psi",
                "",
                "",
                "b",
                "a",
                "a",
                "a, b",
                "b",
                "Lantern Street",
                "")
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.USE, "fire")
        .containsEntry(JobField.DISTRICT, "Port Harlow")
        .containsEntry(JobField.CUSTOMER, "HARLOW-FD")
        .containsEntry(JobField.ACCESSORIES, "wrench, valve");
    assertThat(answers.get(JobField.FROM)).contains(" male hydrant");
    assertThat(answers.get(JobField.SIZE)).endsWith(" in");
  }

  @Test
  void a_tested_hydrant_is_asked_for_all_three_figures_and_not_for_one_pressure() {
    Map<JobField, String> answers =
        interview(
                false,
                "2.5 NH male hydrant",
                "1.5 NH nozzle",
                "100 ft",
                "",
                "95 gpm",
                "75 psi",
                "80 psi",
                "",
                "60 psi",
                "900 gpm",
                "",
                "2.5 in",
                "",
                "",
                "",
                "")
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.STATIC, "80 psi")
        .containsEntry(JobField.RESIDUAL, "60 psi")
        .containsEntry(JobField.AT, "900 gpm");
    assertThat(screen)
        .contains("This one is needed")
        .doesNotContain("What pressure does the source");
  }

  @Test
  void a_wrong_answer_is_explained_and_asked_again() {
    Optional<Map<JobField, String>> answers =
        interview(false, "2.5 NHH male hydrant", "2.5 NH male hydrant", CTRL_C);

    assertThat(answers).isEmpty();
    assertThat(screen).contains("Did you mean");
  }

  @Test
  void a_question_mark_explains_the_question_and_any_word() {
    interview(false, "?", "? swivel", "? NPSH", "? swivvel", "? xylophone", CTRL_C);

    assertThat(screen)
        .contains("from: end of the source")
        .contains("swivel: A female that turns on its own")
        .contains("NPSH: straight iron pipe hose thread")
        .contains("'swivel' is: ? swivel")
        .contains("'xylophone' is not explained here");
  }

  @Test
  void less_than_goes_back_and_enter_keeps_what_was_said() {
    Map<JobField, String> answers =
        interview(
                false,
                "2.5 NH male hydrant",
                "2.5 NH nozzle",
                "<",
                "1.5 NH nozzle",
                "100 ft",
                "",
                "<",
                "10 ft",
                "95 gpm",
                "<",
                "",
                "75 psi",
                "",
                "150 psi",
                "",
                "2.5 in",
                "",
                "",
                "",
                "")
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.TO, "1.5 NH nozzle")
        .containsEntry(JobField.RISE, "10 ft")
        .containsEntry(JobField.FLOW, "95 gpm");
  }

  @Test
  void whoever_breaks_off_goes_on_later_with_what_was_said() {
    assertThat(interview(false, "2.5 NH male hydrant", "1.5 NH nozzle", CTRL_C)).isEmpty();
    assertThat(screen).contains("Your answers are kept");

    Map<JobField, String> answers =
        interview(
                false, "yes", "100 ft", "", "95 gpm", "75 psi", "", "150 psi", "", "2.5 in", "", "",
                "", "")
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.FROM, "2.5 NH male hydrant")
        .containsEntry(JobField.LENGTH, "100 ft");
    assertThat(folder.resolve("job-in-progress.yaml")).doesNotExist();
  }

  @Test
  void the_job_is_kept_as_a_file_that_says_the_same_and_never_over_another() throws Exception {
    Path there = Files.writeString(folder.resolve("there.yaml"), "mine");

    Map<JobField, String> answers =
        interview(
                false,
                "2.5 NH male hydrant",
                "1.5 NH nozzle",
                "100 ft",
                "",
                "95 gpm",
                "75 psi",
                "",
                "150 psi",
                "",
                "2.5 in",
                "",
                "",
                "Barn fill",
                there.toString(),
                folder.resolve("barn").toString())
            .orElseThrow();

    assertThat(there).hasContent("mine");
    assertThat(JobFile.read(folder.resolve("barn.yaml")).answers()).isEqualTo(answers);
    assertThat(screen).contains("barn-fill.yaml, or Enter");
  }

  @Test
  void every_explained_word_has_a_meaning_and_a_source_once() {
    assertThat(Glossary.entries()).extracting(Glossary.Entry::word).doesNotHaveDuplicates();
    assertThat(Glossary.entries())
        .allSatisfy(
            entry -> {
              assertThat(entry.meaning()).endsWith(".");
              assertThat(entry.source()).isNotBlank();
            });
  }
}
