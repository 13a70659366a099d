package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The tables against the standards they quote, and against the relations between standards. */
final class ThreadTableTest {

  /** Tables print ten-thousandths of an inch. */
  private static final double PRINTED = 0.00006;

  // Machinery's Handbook 27th ed. p.1875 (reprint of NFPA 1963-1993 Table 1) for size, threads per
  // inch and female; p.1876 (Table 2) for male major, pitch and their lower limits.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
             0.75 |       8 |  1.3750 |  1.3528 |  1.2938 |  1.2827 |  1.2246 |  1.3058 |  1.3870
                1 |       8 |  1.3750 |  1.3528 |  1.2938 |  1.2827 |  1.2246 |  1.3058 |  1.3870
              1.5 |       9 |  1.9900 |  1.9678 |  1.9178 |  1.9067 |  1.8577 |  1.9298 |  2.0020
              2.5 |     7.5 |  3.0686 |  3.0366 |  2.9820 |  2.9660 |  2.9104 |  2.9970 |  3.0836
                3 |       6 |  3.6239 |  3.5879 |  3.5156 |  3.4976 |  3.4223 |  3.5306 |  3.6389
              3.5 |       6 |  4.2439 |  4.2079 |  4.1356 |  4.1176 |  4.0473 |  4.1556 |  4.2639
                4 |       4 |  5.0109 |  4.9609 |  4.8485 |  4.8235 |  4.7111 |  4.8735 |  5.0359
              4.5 |       4 |  5.7609 |  5.7109 |  5.5985 |  5.5735 |  5.4611 |  5.6235 |  5.7859
                5 |       4 |  6.2600 |  6.2100 |  6.0976 |  6.0726 |  5.9602 |  6.1226 |  6.2850
                6 |       4 |  7.0250 |  6.9750 |  6.8626 |  6.8376 |  6.7252 |  6.8876 |  7.0500
          """)
  void nh_is_as_nfpa_1963_prints_it(
      double size,
      double tpi,
      double major,
      double majorLow,
      double pitch,
      double pitchLow,
      double femaleMinor,
      double femalePitch,
      double femaleMajor) {
    ThreadDimensions row = row("NH", size);

    assertThat(row.threadsPerInch()).hasValue(tpi);
    assertThat(row.majorMaxIn()).hasValue(major);
    assertThat(row.male().majorMinIn()).hasValue(majorLow);
    assertThat(row.male().pitchMaxIn()).hasValue(pitch);
    assertThat(row.male().pitchMinIn()).hasValue(pitchLow);
    assertThat(row.female().minorMinIn()).hasValue(femaleMinor);
    assertThat(row.female().pitchMinIn()).hasValue(femalePitch);
    assertThat(row.female().majorMinIn()).hasValue(femaleMajor);
  }

  // ASME B1.20.1 Table 2 (secondary print): pipe outside diameter, E1, E0, L1.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
              0.5 |      14 |   0.840 | 0.77843 | 0.75843 |   0.320
             0.75 |      14 |   1.050 | 0.98887 | 0.96768 |   0.339
                1 |    11.5 |   1.315 | 1.23863 | 1.21363 |   0.400
             1.25 |    11.5 |   1.660 | 1.58338 | 1.55713 |   0.420
              1.5 |    11.5 |   1.900 | 1.82234 | 1.79609 |   0.420
                2 |    11.5 |   2.375 | 2.29627 | 2.26902 |   0.436
              2.5 |       8 |   2.875 | 2.76216 | 2.71953 |   0.682
                3 |       8 |   3.500 | 3.38850 | 3.34063 |   0.766
              3.5 |       8 |   4.000 | 3.88881 | 3.83750 |   0.821
                4 |       8 |   4.500 | 4.38712 | 4.33437 |   0.844
                5 |       8 |   5.563 | 5.44929 | 5.39073 |   0.937
                6 |       8 |   6.625 | 6.50597 | 6.44609 |   0.958
          """)
  void npt_is_as_asme_b1_20_1_prints_it(
      double size, double tpi, double pipe, double e1, double e0, double l1) {
    ThreadDimensions row = row("NPT", size);

    assertThat(row.threadsPerInch()).hasValue(tpi);
    assertThat(row.majorMaxIn()).hasValue(pipe);
    assertThat(row.male().pitchMaxIn()).hasValue(e1);
    assertThat(row.male().taper().e0In()).hasValue(e0);
    assertThat(row.male().taper().l1In()).hasValue(l1);
  }

  // ASME B1.20.7 Tables 2-3 (secondary prints) for 0.75 to 2 in; the others are derived from the
  // E1 of ASME B1.20.1 and are checked by the relations below as well.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
              0.5 |      14 |  0.8248 |  0.7784
             0.75 |      14 |  1.0353 |  0.9889
                1 |    11.5 |  1.2951 |  1.2386
             1.25 |    11.5 |  1.6399 |  1.5834
              1.5 |    11.5 |  1.8788 |  1.8223
                2 |    11.5 |  2.3528 |  2.2963
              2.5 |       8 |  2.8434 |  2.7622
                3 |       8 |  3.4697 |  3.3885
              3.5 |       8 |  3.9700 |  3.8888
                4 |       8 |  4.4683 |  4.3871
          """)
  void npsh_is_as_asme_b1_20_7_prints_it(double size, double tpi, double major, double pitch) {
    ThreadDimensions row = row("NPSH", size);

    assertThat(row.threadsPerInch()).hasValue(tpi);
    assertThat(row.majorMaxIn()).hasValue(major);
    assertThat(row.male().pitchMaxIn()).hasValue(pitch);
  }

  // ISO 228-1 Table 1 (secondary print): threads per inch, major and minor diameter in mm. The
  // pitch
  // diameter lies midway; that of G 1 is also printed, 31.770 mm.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
              0.5 |      14 |  20.955 |  18.631
             0.75 |      14 |  26.441 |  24.117
                1 |      11 |  33.249 |  30.291
             1.25 |      11 |  41.910 |  38.952
              1.5 |      11 |  47.803 |  44.845
                2 |      11 |  59.614 |  56.656
              2.5 |      11 |  75.184 |  72.226
                3 |      11 |  87.884 |  84.926
              3.5 |      11 | 100.330 |  97.372
                4 |      11 | 113.030 | 110.072
          """)
  void g_is_as_iso_228_1_prints_it(double size, double tpi, double majorMm, double minorMm) {
    ThreadDimensions row = row("G", size);

    assertThat(row.threadsPerInch()).hasValue(tpi);
    assertThat(row.majorMaxIn().orElseThrow()).isCloseTo(majorMm / 25.4, within(PRINTED));
    assertThat(row.male().pitchMaxIn().orElseThrow())
        .isCloseTo((majorMm + minorMm) / 2 / 25.4, within(PRINTED));
    if (size == 1) {
      assertThat(row.male().pitchMaxIn().orElseThrow()).isCloseTo(31.770 / 25.4, within(PRINTED));
    }
  }

  // ISO 7-1 Table 1 (secondary print): gauge length in mm; taper 1 in 16 on diameter.
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
              0.5 |      14 |  20.955 |     8.2
             0.75 |      14 |  26.441 |     9.5
                1 |      11 |  33.249 |    10.4
             1.25 |      11 |  41.910 |    12.7
              1.5 |      11 |  47.803 |    12.7
                2 |      11 |  59.614 |    15.9
              2.5 |      11 |  75.184 |    17.5
                3 |      11 |  87.884 |    20.6
                4 |      11 | 113.030 |    25.4
          """)
  void r_is_as_iso_7_1_prints_it(double size, double tpi, double majorMm, double gaugeMm) {
    ThreadDimensions row = row("R", size);

    assertThat(row.threadsPerInch()).hasValue(tpi);
    assertThat(row.majorMaxIn().orElseThrow()).isCloseTo(majorMm / 25.4, within(PRINTED));
    assertThat(row.male().taper().smallEndMajorIn().orElseThrow())
        .isCloseTo((majorMm - gaugeMm / 16) / 25.4, within(PRINTED));
    assertThat(row("Rp", size).majorMaxIn()).isEqualTo(row.majorMaxIn());
  }

  @Test
  void garden_thread_is_as_published() {
    // Encyclopaedia article on the garden hose: 1 1/16 in diameter, 11.5 threads per inch.
    ThreadDimensions row = row("GHT", 0.75);

    assertThat(row.majorMaxIn()).hasValue(1 + 1.0 / 16);
    assertThat(row.threadsPerInch()).hasValue(11.5);
  }

  @Test
  void taper_pipe_thread_grows_by_one_in_sixteen_to_the_hand_tight_plane() {
    // ASME B1.20.1: E1 = E0 + 0.0625 L1. L1 is printed to 0.001 in.
    for (ThreadDimensions row : rows("NPT")) {
      assertThat(row.male().pitchMaxIn().orElseThrow())
          .as(row.sizeIn() + " NPT")
          .isCloseTo(
              row.male().taper().e0In().orElseThrow()
                  + row.male().taper().l1In().orElseThrow() / 16,
              within(0.0625 * 0.0006));
    }
  }

  @Test
  void taper_pipe_thread_starts_where_the_pipe_and_pitch_put_it() {
    // ASME B1.20.1: E0 = D - (0.05 D + 1.1) p, so a wrong E0 cannot hide behind a matching E1.
    for (ThreadDimensions row : rows("NPT")) {
      double pipe = row.majorMaxIn().orElseThrow();
      double pitch = row.pitchIn().orElseThrow();
      assertThat(row.male().taper().e0In().orElseThrow())
          .as(row.sizeIn() + " NPT")
          .isCloseTo(pipe - (0.05 * pipe + 1.1) * pitch, within(0.00002));
      assertThat(row.male().taper().smallEndMajorIn().orElseThrow())
          .isCloseTo(row.male().taper().e0In().orElseThrow() + 0.8 * pitch, within(PRINTED));
    }
  }

  @Test
  void straight_hose_thread_shares_pitch_and_pitch_diameter_with_pipe_thread() {
    // ASME B1.20.1-2013 section 1.2 and 6.1.3: NPSH and NPSM are based on the NPT thread at E1.
    for (ThreadDimensions row : rows("NPSH")) {
      if (row.male().pitchMaxIn().isPresent()) {
        ThreadDimensions pipe = row("NPT", row.sizeIn());
        assertThat(row.threadsPerInch()).isEqualTo(pipe.threadsPerInch());
        assertThat(row.male().pitchMaxIn().orElseThrow())
            .as(row.sizeIn() + " NPSH")
            .isCloseTo(pipe.male().pitchMaxIn().orElseThrow(), within(PRINTED));
      }
    }
    for (ThreadDimensions row : rows("NPSM")) {
      assertThat(row.male().pitchMaxIn()).isEqualTo(row("NPT", row.sizeIn()).male().pitchMaxIn());
    }
  }

  @Test
  void sixty_degree_hose_threads_are_as_deep_as_their_form_says() {
    // American form: height 0.64952 pitch = 0.75 x 0.866025 pitch; major = pitch dia + height.
    double height = 0.75 * Math.sqrt(3) / 2;
    for (String family : List.of("NH", "NPSH")) {
      for (ThreadDimensions row : rows(family)) {
        if (row.male().pitchMaxIn().isPresent()) {
          assertThat(row.majorMaxIn().orElseThrow())
              .as(row.sizeIn() + " " + family)
              .isCloseTo(
                  row.male().pitchMaxIn().orElseThrow() + height * row.pitchIn().orElseThrow(),
                  within(0.00012));
        }
      }
    }
  }

  @Test
  void fifty_five_degree_threads_are_as_deep_as_whitworth_s_form_says() {
    // ISO 228-1: height 0.640327 pitch.
    for (String family : List.of("G", "R")) {
      for (ThreadDimensions row : rows(family)) {
        assertThat(row.majorMaxIn().orElseThrow() - row.male().pitchMaxIn().orElseThrow())
            .as(row.sizeIn() + " " + family)
            .isCloseTo(0.640327 * row.pitchIn().orElseThrow(), within(0.00012));
      }
    }
  }

  @Test
  void every_male_thread_enters_its_female() {
    for (ThreadDimensions row : rows("NH")) {
      if (row.figuresHeld()) {
        assertThat(row.female().pitchMinIn().orElseThrow())
            .isGreaterThan(row.male().pitchMaxIn().orElseThrow());
        assertThat(row.female().majorMinIn().orElseThrow())
            .isGreaterThan(row.majorMaxIn().orElseThrow());
        assertThat(row.male().majorMinIn().orElseThrow())
            .isLessThan(row.majorMaxIn().orElseThrow());
        assertThat(row.female().minorMaxIn().orElseThrow())
            .isGreaterThan(row.female().minorMinIn().orElseThrow());
      }
    }
  }

  @Test
  void every_figure_says_where_it_is_from_and_how_sure_it_is() {
    for (ThreadDimensions row : ThreadTable.all()) {
      assertThat(row.origin().source()).as("%s %s", row.sizeIn(), row.family()).isNotBlank();
      assertThat(row.origin().confidence()).isNotBlank();
      assertThat(Families.find(row.family())).isPresent();
    }
    for (CouplingSize row : CouplingSize.all()) {
      assertThat(row.origin().source()).isNotBlank();
      assertThat(row.origin().confidence()).isNotBlank();
    }
  }

  @Test
  void no_size_of_a_family_is_listed_twice() {
    for (Family family : Families.all()) {
      assertThat(family.sizesIn()).as(family.code()).isNotEmpty().doesNotHaveDuplicates();
      assertThat(family.figures().source()).isNotBlank();
    }
  }

  private static ThreadDimensions row(String family, double size) {
    return ThreadTable.find(family, size).orElseThrow();
  }

  private static List<ThreadDimensions> rows(String family) {
    return ThreadTable.all().stream().filter(r -> r.family().equals(family)).toList();
  }
}
