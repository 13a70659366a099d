package hosewright.desk.interview;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.ReferenceTable;
import hosewright.intake.JobFile;
import hosewright.job.question.Glossary;
import hosewright.job.question.JobField;
import hosewright.job.question.Questions;
import hosewright.line.plan.DemoCatalogue;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A person at the counter, played by what they say to each question, in whatever order it comes.
 */
final class InterviewTest {
  private static final String CTRL_C = "\u0003";

  /** The questions that are no field of the job. */
  private static final String DRAFT = "Go on with it?";

  private static final String FILE = "file";

  @TempDir private Path folder;
  private final StringBuilder screen = new StringBuilder();
  private int plans;

  /** Says to each question what is set down for it, one after the other, and then only Enter. */
  private final class Person implements Asker {
    private final Map<String, Deque<String>> says = new HashMap<>();

    /** A question and what is said to it, which answers it in the end. */
    Person to(String question, String... answers) {
      says.put(question, new ArrayDeque<>(List.of(answers)));
      return this;
    }

    Person to(JobField question, String... answers) {
      return to(question.word(), answers);
    }

    /** A plain line from a hydrant to a nozzle, with all that must be answered. */
    Person ofAPlainJob() {
      return to(JobField.FROM, "2.5 NH male hydrant")
          .to(JobField.TO, "1.5 NH nozzle")
          .to(JobField.LENGTH, "100 ft")
          .to(JobField.FLOW, "95 gpm")
          .to(JobField.NEED, "75 psi");
    }

    @Override
    public Optional<String> ask(String prompt, List<String> candidates) {
      Deque<String> left = says.getOrDefault(question(prompt), new ArrayDeque<>());
      String said = left.isEmpty() ? "" : left.remove();
      assertThat(screen.toString() + prompt)
          .as("asked again and again: " + prompt)
          .hasSizeLessThan(20_000);
      screen.append(prompt).append(said).append('\n');
      return said.equals(CTRL_C) ? Optional.empty() : Optional.of(said);
    }

    private static String question(String prompt) {
      return Stream.of(DRAFT)
          .filter(prompt::startsWith)
          .findFirst()
          .orElseGet(() -> prompt.split("[ :]")[0]);
    }

    @Override
    public void say(String text) {
      screen.append(text).append('\n');
    }
  }

  private Optional<Map<JobField, String>> interview(boolean forQuote, Person person) {
    Desk desk =
        new Desk(
            DemoCatalogue.get(),
            new TreeMap<>(
                Map.of("COUNTER", "Counter sale", "HARLOW-FD", "Port Harlow Fire Department")),
            List.of("Port Harlow"),
            job -> {
              plans++;
              return DemoCatalogue.plan(job);
            },
            folder.resolve("job-in-progress.yaml"));
    return new Interview(person, desk, forQuote).answers();
  }

  @Test
  void a_job_is_asked_for_step_by_step_and_its_plan_grows() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.LENGTH, "200 ft")
                    .to(JobField.SOURCE_PRESSURE, "150 psi")
                    .to(JobField.USE, "fire")
                    .to(JobField.DISTRICT, "Port Harlow")
                    .to(JobField.SIZE, "1.75 in"))
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
    assertThat(plans).as("once all that is needed is known, with each answer").isEqualTo(5);
  }

  @Test
  void a_letter_picks_a_choice_of_the_catalogue_or_the_books() {
    Map<JobField, String> answers =
        interview(
                true,
                new Person()
                    .to(JobField.FROM, "a")
                    .to(JobField.TO, "b")
                    .to(JobField.LENGTH, "50 ft")
                    .to(JobField.FLOW, "30 gpm")
                    .to(JobField.NEED, "20 psi")
                    .to(JobField.USE, "b")
                    .to(JobField.DISTRICT, "a")
                    .to(JobField.SIZE, "a")
                    .to(JobField.ACCESSORIES, "a, b")
                    .to(JobField.CUSTOMER, "b"))
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
                new Person()
                    .ofAPlainJob()
                    .to(JobField.STATIC, "80 psi")
                    .to(JobField.RESIDUAL, "", "60 psi")
                    .to(JobField.AT, "900 gpm")
                    .to(JobField.SIZE, "2.5 in"))
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
  void a_customer_is_needed_for_a_quote_and_must_be_on_the_books() {
    interview(true, new Person().ofAPlainJob().to(JobField.CUSTOMER, "", "HARLOW", "COUNTER"));

    assertThat(screen)
        .contains("customer: \n")
        .contains("This one is needed, such as COUNTER")
        .contains("one of COUNTER, HARLOW-FD");
  }

  @Test
  void a_wrong_answer_is_explained_and_asked_again() {
    Optional<Map<JobField, String>> answers =
        interview(
            false,
            new Person()
                .to(JobField.FROM, "2.5 NHH male hydrant", "2.5 NH male hydrant")
                .to(JobField.TO, CTRL_C));

    assertThat(answers).isEmpty();
    assertThat(screen).contains("Did you mean");
  }

  @Test
  void a_question_mark_explains_the_question_and_any_word() {
    interview(
        false,
        new Person()
            .to(
                JobField.FROM,
                "?",
                "? swivel",
                "? NPSH",
                "? slack",
                "? swivvel",
                "? xylophone",
                CTRL_C));

    assertThat(screen)
        .contains("from: end of the source")
        .contains("swivel: A female that turns on its own")
        .contains("NPSH: straight iron pipe hose thread")
        .contains("because a line lies in curves. 5 % unless you say otherwise.")
        .contains("'swivel' is: ? swivel")
        .contains("'xylophone' is not explained here");
  }

  @Test
  void less_than_goes_back_and_enter_keeps_what_was_said() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.TO, "2.5 NH nozzle", "1.5 NH nozzle")
                    .to(JobField.LENGTH, "<", "100 ft")
                    .to(JobField.RISE, "", "10 ft")
                    .to(JobField.FLOW, "<", "95 gpm", "")
                    .to(JobField.NEED, "<", "75 psi")
                    .to(JobField.SOURCE_PRESSURE, "150 psi")
                    .to(JobField.SIZE, "2.5 in"))
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.TO, "1.5 NH nozzle")
        .containsEntry(JobField.RISE, "10 ft")
        .containsEntry(JobField.FLOW, "95 gpm");
    assertThat(screen).contains("to [2.5 NH nozzle]: ").contains("flow [95 gpm]: ");
  }

  @Test
  void whoever_breaks_off_goes_on_later_with_what_was_said() {
    Person leaves = new Person().ofAPlainJob().to(JobField.LENGTH, CTRL_C);
    assertThat(interview(false, leaves)).isEmpty();
    assertThat(screen).contains("Your answers are kept");

    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .to(DRAFT, "yes")
                    .to(JobField.LENGTH, "100 ft")
                    .to(JobField.FLOW, "95 gpm")
                    .to(JobField.NEED, "75 psi"))
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.FROM, "2.5 NH male hydrant")
        .containsEntry(JobField.LENGTH, "100 ft");
  }

  @Test
  void the_job_is_kept_as_a_file_that_says_the_same_and_never_over_another() throws Exception {
    Path there = Files.writeString(folder.resolve("there.yaml"), "mine");

    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.TITLE, "Barn fill")
                    .to(FILE, there.toString(), folder.resolve("barn").toString()))
            .orElseThrow();

    assertThat(there).hasContent("mine");
    assertThat(JobFile.read(folder.resolve("barn.yaml")).answers()).isEqualTo(answers);
    assertThat(screen).contains("a) quotes/barn-fill.yaml");
  }

  @Test
  void every_question_that_can_be_asked_is_asked_once_it_matters_and_the_name_comes_last() {
    Set<JobField> open = new LinkedHashSet<>();
    Questions questions = new Questions(false);
    Map<JobField, String> answers =
        new TreeMap<>(
            Map.of(
                JobField.FROM, "2.5 NH male pump of a hydrant",
                JobField.TO, "1.5 NH nozzle",
                JobField.USE, "fire"));
    for (Optional<JobField> next = questions.next(answers, open);
        next.isPresent();
        next = questions.next(answers, open)) {
      open.add(next.get());
      if (!next.get().equals(JobField.SOURCE_PRESSURE)) {
        answers.put(next.get(), next.get().example());
      }
    }
    Set<JobField> askedOf =
        JobField.values().stream()
            .filter(field -> field.asking().ever())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    askedOf.removeAll(answers.keySet());

    // A hydrant that was tested is not asked for one pressure.
    assertThat(askedOf).containsExactly(JobField.SOURCE_PRESSURE);
    assertThat(open).last().isEqualTo(JobField.TITLE);
  }

  @Test
  void an_answer_that_cannot_be_used_is_asked_again_at_once_and_never_kept() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.STATIC, "garden", "80 psi")
                    .to(JobField.RESIDUAL, "use: fire", "60 psi")
                    .to(JobField.AT, "fire", "900 gpm")
                    .to(JobField.ACCESSORIES, "150 psi", "wrench"))
            .orElseThrow();

    assertThat(answers)
        .containsEntry(JobField.STATIC, "80 psi")
        .containsEntry(JobField.RESIDUAL, "60 psi")
        .containsEntry(JobField.USE, "fire")
        .containsEntry(JobField.AT, "900 gpm")
        .containsEntry(JobField.ACCESSORIES, "wrench");
    assertThat(screen).contains("accessories cannot be '150 psi'");
  }

  @Test
  void a_hydrant_test_is_asked_for_whole_before_anything_is_said_of_it() {
    interview(
        false,
        new Person()
            .ofAPlainJob()
            .to(JobField.STATIC, "80 psi")
            .to(JobField.RESIDUAL, "60 psi")
            .to(JobField.AT, "900 gpm"));

    assertThat(screen).doesNotContain("is missing");
  }

  @Test
  void what_contradicts_an_earlier_answer_leads_back_to_its_question_with_the_rest_kept() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.RISE, "300 ft", "30 ft")
                    .to(JobField.SOURCE_PRESSURE, "200 psi"))
            .orElseThrow();

    assertThat(screen).contains("rise cannot be '300 ft'").contains("rise [300 ft]: 30 ft");
    assertThat(answers)
        .containsEntry(JobField.RISE, "30 ft")
        .containsEntry(JobField.NEED, "75 psi");
  }

  @Test
  void the_prompt_shows_the_unit_that_a_number_alone_is_in() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person().ofAPlainJob().to(JobField.LENGTH, "100").to(JobField.FLOW, "360 lpm"))
            .orElseThrow();

    assertThat(screen).contains("length (ft): 100").contains("rise (ft, may stay open): ");
    assertThat(answers)
        .containsEntry(JobField.LENGTH, "100 ft")
        .containsEntry(JobField.FLOW, "360 lpm");
  }

  @Test
  void what_was_filled_is_emptied_by_a_dash_but_never_what_is_needed() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.RISE, "10 ft", "-")
                    .to(JobField.FLOW, "<", "-", "95 gpm"))
            .orElseThrow();

    assertThat(answers).doesNotContainKey(JobField.RISE).containsEntry(JobField.FLOW, "95 gpm");
    assertThat(screen).contains("This one is needed");
  }

  @Test
  void going_back_twice_leads_through_the_questions_in_the_order_given() {
    interview(
        false,
        new Person()
            .ofAPlainJob()
            .to(JobField.NEED, "<", "<", "75 psi")
            .to(JobField.FLOW, "95 gpm", "<", "")
            .to(JobField.RISE, "", "<", "")
            .to(JobField.LENGTH, "100 ft", "120 ft"));

    List<String> asked =
        screen.toString().lines().filter(line -> line.matches("[a-z]+[ :].*: ?.*")).toList();
    assertThat(asked.stream().map(line -> line.split("[ :]")[0]).toList())
        .containsSubsequence("flow", "need", "flow", "rise", "length", "need", "flow", "need");
  }

  @Test
  void a_question_mark_says_of_the_question_what_it_says_of_its_word() {
    interview(false, new Person().to(JobField.FROM, "? from", "?", CTRL_C));
    List<String> told =
        screen.toString().lines().filter(line -> line.startsWith("  from: ")).toList();
    assertThat(told).hasSize(2);
    assertThat(told.get(0)).isEqualTo(told.get(1));
  }

  @Test
  void a_customer_is_picked_by_name_and_kept_by_identifier() {
    Map<JobField, String> answers =
        interview(true, new Person().ofAPlainJob().to(JobField.CUSTOMER, "port harlow"))
            .orElseThrow();

    assertThat(screen).contains("b) HARLOW-FD  Port Harlow Fire Department");
    assertThat(answers).containsEntry(JobField.CUSTOMER, "HARLOW-FD");
  }

  @Test
  void at_the_end_keys_mean_what_they_meant_before() {
    Map<JobField, String> answers =
        interview(
                false,
                new Person()
                    .ofAPlainJob()
                    .to(JobField.TITLE, "Barn fill", "Mill fill")
                    .to(FILE, "?", "<", ""))
            .orElseThrow();

    assertThat(answers).containsEntry(JobField.TITLE, "Mill fill");
    assertThat(screen).contains("file: a small text file");
  }

  @Test
  void answers_are_kept_until_what_they_were_given_for_is_done() {
    interview(false, new Person().ofAPlainJob());

    assertThat(folder.resolve("job-in-progress.yaml")).exists();
  }

  @Test
  void every_explained_word_has_a_meaning_and_a_source_once() {
    List<Map<String, String>> entries =
        ReferenceTable.rows(
            "words.csv",
            row ->
                Map.of(
                    "word",
                    row.get("word"),
                    "meaning",
                    row.get("meaning"),
                    "source",
                    row.get("source")));
    assertThat(entries).extracting(entry -> entry.get("word")).doesNotHaveDuplicates();
    assertThat(entries)
        .allSatisfy(
            entry -> {
              assertThat(Glossary.explain(entry.get("word"))).endsWith(".");
              assertThat(entry.get("source")).isNotBlank();
            });
  }
}
