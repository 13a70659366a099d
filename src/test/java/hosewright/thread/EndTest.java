package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class EndTest {

  @Test
  void every_end_reads_back_as_it_is_written() {
    for (End end : Families.ends()) {
      assertThat(End.parse(end.toString())).as(end.toString()).isEqualTo(end);
    }
  }

  @Test
  void word_order_and_case_do_not_matter() {
    long seed = 20261;
    Random random = new Random(seed);
    for (End end : Families.ends()) {
      List<String> words = new ArrayList<>(List.of(end.toString().split(" ", -1)));
      Collections.shuffle(words, random);
      String shuffled = String.join(" ", words);
      assertThat(End.parse(shuffled.toUpperCase(java.util.Locale.ROOT)))
          .as("seed %d: %s", seed, shuffled)
          .isEqualTo(end);
    }
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      textBlock =
          """
          2-1/2 NH male              | 2.5 NH male
          2 1/2 nst m                | 2.5 NH male
          2½ NH male                 | 2.5 NH male
          ½ NPT f                    | 0.5 NPT female
          1 ½" NPSH female swivel    | 1.5 NPSH female swivel
          2.5in NH male              | 2.5 NH male
          2.5" NHT M                 | 2.5 NH male
          2.5 inch NH male thread    | 2.5 NH male
          2.5″ NH male               | 2.5 NH male
          64mm NH male               | 2.5 NH male
          38 mm NH female            | 1.5 NH female
          DN50 G male                | 2 G male
          1.5 NPSH FS                | 1.5 NPSH female swivel
          1.5 NPSH swivel            | 1.5 NPSH female swivel
          1.5 NPSH rigid female      | 1.5 NPSH female
          2 MNPT                     | 2 NPT male
          2 FNPT                     | 2 NPT female
          2.5in mnst                 | 2.5 NH male
          2 FIP                      | 2 NPT female
          2.5-7.5 NH male            | 2.5 NH male
          2-1/2-7.5 NH male          | 2.5 NH male
          2.5 NH male 7.5 tpi        | 2.5 NH male
          3/4-8 NH male              | 0.75-8 NH male
          0.75-11.5 NH male          | 0.75 GHT male
          3/4 NST 8 threads per inch female | 0.75-8 NH female
          3/4 garden hose female swivel     | 0.75 GHT female swivel
          3/4 MHT                    | 0.75 GHT male
          3/4 NHR female             | 0.75 GHT female
          5in storz                  | 5 Storz
          Storz 125mm                | 5 Storz
          Storz B                    | 3 Storz
          C-52 Storz                 | 2 Storz
          storz f                    | 6 Storz
          cam plug 2in               | 2 cam plug
          2 cam and groove male      | 2 cam plug
          2 cam adapter              | 2 cam plug
          2 cam coupler              | 2 cam socket
          2 camlock female           | 2 cam socket
          G2 male                    | 2 G male
          2 BSPP male                | 2 G male
          Rc 2                       | 2 R female
          2 BSPT m                   | 2 R male
          1 Rp female                | 1 Rp female
          BS 336 2.5 male            | 2.5 instantaneous male
          forestry quarter-turn 1.5  | 1.5 forestry
          NS1 2.5 female             | 2.5 NS1 female
          Pacific Coast 1.5 male     | 1.5 PCT male
          1.5 straight iron pipe f   | 1.5 NPSH female
          """,
      delimiter = '|')
  void lenient_spellings_are_understood(String typed, String canonical) {
    assertThat(End.parse(typed)).hasToString(canonical);
  }

  @Test
  void a_small_nh_without_its_pitch_is_asked_about() {
    Problem problem = onlyProblem("3/4 NH male");

    assertThat(problem.allowed()).contains("'0.75-8 NH male'").contains("'0.75 GHT male'");
    assertThat(problem.nearest()).as("asked, never guessed").isEmpty();
  }

  @Test
  void a_small_nh_without_its_half_is_asked_about_as_well() {
    assertThat(problems("3/4 NH"))
        .hasSize(2)
        .allSatisfy(p -> assertThat(p.nearest()).as("asked, never guessed").isEmpty())
        .anySatisfy(p -> assertThat(p.allowed()).contains("'0.75 GHT male'"))
        .anySatisfy(p -> assertThat(p.allowed()).contains("say which half"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"2 BSP male", "1.5 IPT female", "2 pipe male", "2 NPTF"})
  void a_name_for_two_families_is_asked_about(String typed) {
    assertThat(onlyProblem(typed).nearest()).isEmpty();
    assertThat(onlyProblem(typed).allowed()).contains(" or ");
  }

  @Test
  void a_measured_size_is_caught_and_explained() {
    // 1.5-9 NH major diameter 1.9900: Machinery's Handbook 27 p.1876 (reprint of NFPA 1963-1993).
    Problem problem = onlyProblem("2 NH male");

    assertThat(problem.nearest()).isEqualTo("1.5 NH male");
    assertThat(problem.allowed())
        .contains("0.75, 1, 1.5, 2.5, 3, 3.5, 4, 4.5, 5, 6, 8")
        .contains("1.5 NH male measures 1.99 in");
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2.5 NH            | 2.5 NH male
          2.5 NK male       | 2.5 NH male
          2.5 NH femal      | 2.5 NH female
          5 Stortz          | 5 Storz
          7 NPT male        | 6 NPT male
          2.5-8 NH male     | 2.5 NH male
          2.5 NH male swivel| 2.5 NH male
          5 Storz female    | 5 Storz
          2 cam             | 2 cam plug
          1 Rp male         | 1 Rp female
          2 NPTT            | 2 NPT male
          """,
      delimiter = '|')
  void what_cannot_be_used_names_the_nearest_right_end(String typed, String nearest) {
    assertThat(problems(typed)).allSatisfy(p -> assertThat(p.field()).isEqualTo("end"));
    assertThat(problems(typed)).anySatisfy(p -> assertThat(p.nearest()).isEqualTo(nearest));
  }

  @Test
  void every_nearest_end_can_be_typed_as_it_stands() {
    for (String typed :
        List.of("2.5 NH", "NH", "2 NH", "9 NPT f", "2 cam", "2.5 Nz male", "Storz")) {
      for (Problem problem : problems(typed)) {
        if (!problem.nearest().isEmpty()) {
          assertThat(End.parse(problem.nearest())).hasToString(problem.nearest());
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "male",
        "2.5",
        "2.5 3 NH male",
        "2.5 NH NPT male",
        "2.5 NH male female",
        "0 NH male",
        "1/0 NH male",
        "-2.5/0 NH male",
        "2.5 NH male!",
        "NaN NH male",
        "1e9 NH male"
      })
  void nonsense_is_refused_as_bad_input(String typed) {
    assertThatThrownBy(() -> End.parse(typed)).isInstanceOf(BadInputException.class);
  }

  @Test
  void any_text_is_read_or_refused_but_never_breaks() {
    long seed = 99;
    Random random = new Random(seed);
    String letters = "0123456789/-. \"½NHPTSGRmfaleswivcuz";
    for (int i = 0; i < 5_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(18); n > 0; n--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      try {
        End end = End.parse(text.toString());
        assertThat(end.listed()).as("seed %d: %s", seed, text).isTrue();
      } catch (BadInputException expected) {
        assertThat(expected.problems()).isNotEmpty();
      }
    }
  }

  @Test
  void the_receiving_half_carries_the_gasket() {
    assertThat(End.parse("2.5 NH female").carriesGasket()).isTrue();
    assertThat(End.parse("2 cam socket").carriesGasket()).isTrue();
    assertThat(End.parse("5 Storz").carriesGasket()).isTrue();
    assertThat(End.parse("2.5 NH male").carriesGasket()).isFalse();
    assertThat(End.parse("2 NPT female").carriesGasket()).isFalse();
    assertThat(End.parse("2 cam plug").carriesGasket()).isFalse();
  }

  @Test
  void the_opposite_half_mates() {
    for (End end : Families.ends()) {
      assertThat(end.opposite().listed()).as(end.toString()).isTrue();
      if (!end.swivel() && Families.find(end.family()).orElseThrow().figures().figuresHeld()) {
        boolean held = ThreadTable.find(end).map(ThreadDimensions::figuresHeld).orElse(true);
        assertThat(Mating.of(end, end.opposite()).mates()).as(end.toString()).isEqualTo(held);
      }
    }
  }

  @Test
  void only_a_female_swivels() {
    assertThatThrownBy(() -> new End(2.5, "NH", Gender.MALE, true))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static List<Problem> problems(String typed) {
    BadInputException thrown =
        catchThrowableOfType(BadInputException.class, () -> End.parse(typed));
    assertThat(thrown).as(typed).isNotNull();
    return thrown.problems();
  }

  private static Problem onlyProblem(String typed) {
    assertThat(problems(typed)).hasSize(1);
    return problems(typed).get(0);
  }

  /** How people ask at the counter. Common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "1.5 NPSH long handle swivel, 1.5 NPSH female swivel",
    "2.5 NH long-handled, 2.5 NH female swivel",
    "2 type F, 2 cam plug",
    "2 type D, 2 cam socket",
    "52 Storz, 2 Storz",
  })
  void counter_speech_is_understood(String said, String meant) {
    assertThat(End.parse(said)).hasToString(meant);
  }

  @Test
  void iron_pipe_alone_is_asked_back() {
    assertThatThrownBy(() -> End.parse("1.5 iron pipe male")).hasMessageContaining("NPSH or NPT");
  }
}
