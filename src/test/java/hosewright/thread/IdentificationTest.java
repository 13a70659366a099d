package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hosewright.problem.BadInputException;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class IdentificationTest {

  @Test
  void a_reading_of_two_inches_with_nine_threads_is_a_nominal_inch_and_a_half() {
    // 1.5-9 NH: major 1.9900, 9 threads per inch. Machinery's Handbook 27 p.1875-1876 (NFPA 1963).
    Identification found = Identification.identify(Measurement.caliper(1.99).withThreadsPerInch(9));

    assertThat(found.candidates().get(0).end()).hasToString("1.5 NH male");
    assertThat(found.candidates().get(0).likelihood()).isGreaterThan(0.95);
    assertThat(found.ask()).isEmpty();
    assertThat(found.notes()).anySatisfy(n -> assertThat(n).contains("order it as 1.5"));
  }

  @Test
  void every_male_is_first_on_its_own_figures() {
    for (ThreadDimensions row : males()) {
      Identification found = Identification.identify(exact(row));
      End first = found.candidates().get(0).end();
      if (!first.equals(male(row))) {
        Candidate own = candidate(found, male(row));
        assertThat(own.likelihood())
            .as("%s has the same figures as %s", male(row), first)
            .isEqualTo(found.candidates().get(0).likelihood());
        assertThat(lookalikes(male(row))).contains(first);
      }
    }
  }

  @Test
  void a_caliper_that_is_a_hundredth_off_still_finds_it_unless_two_standards_look_alike() {
    long seed = 1963;
    Random random = new Random(seed);
    for (ThreadDimensions row : males()) {
      List<End> alike = lookalikes(male(row));
      int first = 0;
      for (int draw = 0; draw < 200; draw++) {
        double read = row.majorMaxIn().orElseThrow() + 0.01 * random.nextGaussian();
        Identification found =
            Identification.identify(
                Measurement.caliper(read).withThreadsPerInch(row.threadsPerInch().orElseThrow()));
        End best = found.candidates().get(0).end();
        if (best.equals(male(row)) || alike.contains(best)) {
          first++;
        }
        assertThat(candidate(found, male(row)).likelihood()).isPositive();
      }
      assertThat(first).as("seed %d: %s", seed, male(row)).isGreaterThanOrEqualTo(198);
    }
  }

  @Test
  void lookalikes_are_shown_together() {
    for (Lookalike pair : Lookalike.all()) {
      ThreadDimensions row = ThreadTable.find(pair.a()).orElseThrow();
      Identification found = Identification.identify(exact(row));
      assertThat(found.candidates()).extracting(Candidate::end).contains(pair.a());
      if (pair.gapIn() <= 2 * Measurement.CALIPER_ERROR_IN) {
        assertThat(found.candidates()).extracting(Candidate::end).contains(pair.b());
      }
    }
  }

  @Test
  void a_paper_strip_says_the_same_as_a_caliper() {
    for (ThreadDimensions row : males()) {
      double diameter = row.majorMaxIn().orElseThrow();
      Identification caliper = Identification.identify(Measurement.caliper(diameter));
      Identification strip = Identification.identify(Measurement.strip(Math.PI * diameter));

      assertThat(strip.candidates())
          .extracting(Candidate::end)
          .containsExactlyElementsOf(caliper.candidates().stream().map(Candidate::end).toList());
      assertThat(strip.ask()).isEqualTo(caliper.ask());
      for (int i = 0; i < caliper.candidates().size(); i++) {
        assertThat(strip.candidates().get(i).likelihood())
            .isCloseTo(caliper.candidates().get(i).likelihood(), within(1e-6));
      }
    }
  }

  @Test
  void shares_never_pass_one_and_something_is_left_for_none_of_these() {
    long seed = 4;
    Random random = new Random(seed);
    for (int i = 0; i < 2_000; i++) {
      Measurement measurement = Measurement.caliper(0.5 + 6.5 * random.nextDouble());
      if (random.nextBoolean()) {
        measurement = measurement.withThreadsPerInch(4 + 10 * random.nextDouble());
      }
      Identification found = Identification.identify(measurement);
      double sum = found.candidates().stream().mapToDouble(Candidate::likelihood).sum();
      assertThat(sum).as("seed %d: %s", seed, measurement).isLessThanOrEqualTo(1);
      assertThat(found.noneOfThese()).isPositive();
      assertThat(sum + found.noneOfThese()).isCloseTo(1, within(1e-9));
      assertThat(found.candidates())
          .isSortedAccordingTo((a, b) -> Double.compare(b.likelihood(), a.likelihood()));
    }
  }

  @Test
  void the_question_separates_the_leaders() {
    // 1.5-11.5 NPSH 1.8788 and NPT 1.900 share their pitch: ASME B1.20.7 and B1.20.1.
    Measurement pipe = Measurement.caliper(1.89).withThreadsPerInch(11.5);
    assertThat(Identification.identify(pipe).ask())
        .startsWith("Lay a straight edge")
        .contains("straight is 1.5 NPSH")
        .contains("tapering is 1.5 NPT");
    assertThat(Identification.identify(Measurement.caliper(1.99)).ask())
        .startsWith("Count the threads");
    assertThat(
            Identification.identify(
                    Measurement.caliper(1.375).withThreadsPerInch(8).withStencil("NST"))
                .ask())
        .startsWith("Measure the waterway");
  }

  @Test
  void the_answer_to_the_question_moves_the_ranking() {
    Measurement pipe = Measurement.caliper(1.89).withThreadsPerInch(11.5);

    assertThat(first(pipe.withTaper(true))).hasToString("1.5 NPT male");
    assertThat(first(pipe.withTaper(false))).hasToString("1.5 NPSH male");
    assertThat(first(pipe.withStencil("1-1/2 NPT"))).hasToString("1.5 NPT male");
    // ISO 228-1 G 2: pitch 2.309 mm.
    assertThat(first(Measurement.caliper(59.614 / 25.4).withPitchMm(2.309).withTaper(false)))
        .hasToString("2 G male");
  }

  @Test
  void a_worn_thread_is_likelier_than_one_that_grew() {
    double major = 3.0686; // 2.5-7.5 NH, Machinery's Handbook 27 p.1876 (NFPA 1963-1993)
    ThreadDimensions nh = ThreadTable.find("NH", 2.5).orElseThrow();

    assertThat(Identification.diameterFit(nh, Measurement.caliper(major - 0.03)))
        .isGreaterThan(Identification.diameterFit(nh, Measurement.caliper(major + 0.03)));
    assertThat(
            Identification.identify(Measurement.caliper(major - 0.035).withThreadsPerInch(7.5))
                .notes())
        .isNotEmpty();
  }

  @Test
  void a_stencil_that_contradicts_the_measure_is_pointed_out() {
    Identification found =
        Identification.identify(
            Measurement.caliper(3.0686).withThreadsPerInch(7.5).withStencil("1.5 NPSH"));

    assertThat(found.notes()).anySatisfy(n -> assertThat(n).contains("do not agree"));
  }

  @Test
  void a_diameter_of_no_thread_names_none() {
    Identification found = Identification.identify(Measurement.caliper(8));

    assertThat(found.candidates()).isEmpty();
    assertThat(found.noneOfThese()).isEqualTo(1);
    assertThat(found.ask()).contains("Nothing listed");
  }

  @Test
  void a_female_is_never_measured() {
    assertThatThrownBy(
            () -> Identification.identify(Measurement.caliper(1.9).withGender(Gender.FEMALE)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("measure the male that fits it")
        .hasMessageContaining("stencil");
  }

  @Test
  void all_that_is_out_of_range_is_said_at_once() {
    assertThatThrownBy(() -> Identification.identify(Measurement.caliper(-1).withThreadsPerInch(0)))
        .isInstanceOfSatisfying(
            BadInputException.class,
            e ->
                assertThat(e.problems())
                    .extracting(hosewright.problem.Problem::field)
                    .containsExactly("od", "tpi"));
    assertThatThrownBy(() -> Identification.identify(Measurement.strip(Double.NaN)))
        .isInstanceOf(BadInputException.class);
  }

  private static End first(Measurement measurement) {
    return Identification.identify(measurement).candidates().get(0).end();
  }

  private static Measurement exact(ThreadDimensions row) {
    return Measurement.caliper(row.majorMaxIn().orElseThrow())
        .withThreadsPerInch(row.threadsPerInch().orElseThrow());
  }

  private static Candidate candidate(Identification found, End end) {
    return found.candidates().stream().filter(c -> c.end().equals(end)).findFirst().orElseThrow();
  }

  private static List<End> lookalikes(End end) {
    return Lookalike.all().stream()
        .flatMap(
            p ->
                p.a().equals(end)
                    ? Stream.of(p.b())
                    : p.b().equals(end) ? Stream.of(p.a()) : Stream.empty())
        .toList();
  }

  private static End male(ThreadDimensions row) {
    return new End(row.sizeIn(), row.family(), Gender.MALE, false);
  }

  private static List<ThreadDimensions> males() {
    return ThreadTable.all().stream()
        .filter(r -> r.majorMaxIn().isPresent() && r.threadsPerInch().isPresent())
        .filter(r -> male(r).listed())
        .toList();
  }
}
