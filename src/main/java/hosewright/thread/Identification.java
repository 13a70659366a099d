package hosewright.thread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a measured male is, most likely first.
 *
 * <p>The error model. Each thread that has a major diameter in the table gets a fit between 0 and
 * 1: the product of three bell curves' heights.
 *
 * <ul>
 *   <li>Diameter: one standard deviation of the reading above the table figure; below it {@value
 *       #READS_SMALL} times as much, because wear and manufacturing limits only take away, and on a
 *       taper male also half the fall from the full end to the small end.
 *   <li>Threads per inch, when counted: one standard deviation is {@value #COUNT_ERROR_TPI}.
 *   <li>What was seen besides: a contradicted taper counts {@value #TAPER_MISJUDGED}, another
 *       family than the stencil's {@value #STENCIL_WRONG}, another size {@value
 *       #STENCIL_SIZE_WRONG}.
 * </ul>
 *
 * <p>"None of these" fits {@value #NONE_FITS} always. A likelihood is a fit divided by the sum of
 * all fits: no thread is held to be commoner than another. The constants are a working judgement;
 * common practice, no source.
 *
 * @param measuredIn the outside diameter the ranking rests on, inches
 * @param candidates most likely first; those too unlikely to matter are left out
 * @param noneOfThese the share left for threads that are not listed, 0 to 1
 * @param ask the one question that would best tell the leaders apart; empty when one is clear
 * @param notes what to know about this measurement, each a sentence
 */
public record Identification(
    double measuredIn,
    List<Candidate> candidates,
    double noneOfThese,
    String ask,
    List<String> notes) {

  static final double READS_SMALL = 1.25;
  static final double COUNT_ERROR_TPI = 0.25;
  static final double TAPER_MISJUDGED = 0.1;
  static final double STENCIL_WRONG = 0.05;
  static final double STENCIL_SIZE_WRONG = 0.3;
  static final double NONE_FITS = 0.03;
  private static final double WORTH_SHOWING = 0.005;

  private static final List<ThreadDimensions> MALES =
      ThreadTable.all().stream().filter(Identification::male).toList();

  public Identification {
    candidates = List.copyOf(candidates);
    notes = List.copyOf(notes);
  }

  /**
   * Ranks every male in the tables against a measurement.
   *
   * @throws hosewright.problem.BadInputException for a female, or a reading out of range
   */
  public static Identification identify(Measurement measurement) {
    measurement.check();
    EndWords stencil = EndWords.of(measurement.stencil());
    double[] fits = MALES.stream().mapToDouble(m -> fit(m, measurement, stencil)).toArray();
    double all = NONE_FITS;
    for (double fit : fits) {
      all += fit;
    }
    List<Candidate> ranked = new ArrayList<>();
    for (int i = 0; i < fits.length; i++) {
      if (fits[i] / all >= WORTH_SHOWING) {
        ranked.add(candidate(MALES.get(i), measurement, fits[i] / all));
      }
    }
    // The sort is stable: equal fits stay in the order of the table.
    ranked.sort(
        Comparator.comparingDouble(Candidate::likelihood)
            .reversed()
            .thenComparingDouble(c -> Math.abs(c.differenceIn())));
    double listed = ranked.stream().mapToDouble(Candidate::likelihood).sum();
    return new Identification(
        measurement.outsideDiameterIn(),
        ranked,
        Math.max(0, 1 - listed),
        NextQuestion.after(measurement, ranked),
        MeasurementNotes.on(measurement, stencil, ranked));
  }

  static boolean male(ThreadDimensions row) {
    return row.majorMaxIn().isPresent()
        && row.threadsPerInch().isPresent()
        && Families.ofCode(row.family()).orElseThrow().halves().genders().contains(Gender.MALE);
  }

  private static Candidate candidate(
      ThreadDimensions male, Measurement measurement, double likelihood) {
    double major = male.majorMaxIn().orElseThrow();
    return new Candidate(
        new End(male.sizeIn(), male.family(), Gender.MALE, false),
        major,
        measurement.outsideDiameterIn() - major,
        male.threadsPerInch().orElseThrow(),
        likelihood);
  }

  private static double fit(ThreadDimensions male, Measurement measurement, EndWords stencil) {
    return diameterFit(male, measurement)
        * pitchFit(male, measurement)
        * seenFit(male, measurement, stencil);
  }

  static double diameterFit(ThreadDimensions male, Measurement measurement) {
    double major = male.majorMaxIn().orElseThrow();
    double difference = measurement.outsideDiameterIn() - major;
    double error = measurement.diameterErrorIn();
    if (difference > 0) {
      return bell(difference / error);
    }
    double fall = (major - male.male().taper().smallEndMajorIn().orElse(major)) / 2;
    return bell(difference / Math.hypot(error * READS_SMALL, fall));
  }

  private static double pitchFit(ThreadDimensions male, Measurement measurement) {
    if (measurement.threadsPerInch().isEmpty()) {
      return 1;
    }
    double difference =
        measurement.threadsPerInch().getAsDouble() - male.threadsPerInch().orElseThrow();
    return bell(difference / COUNT_ERROR_TPI);
  }

  private static double seenFit(ThreadDimensions male, Measurement measurement, EndWords stencil) {
    double fit = 1;
    if (measurement.taper().isPresent() && measurement.taper().get() != tapers(male)) {
      fit *= TAPER_MISJUDGED;
    }
    if (!stencil.families.isEmpty() && !named(male, stencil)) {
      fit *= STENCIL_WRONG;
    }
    if (!stencil.sizesIn.isEmpty() && !stencil.sizesIn.contains(male.sizeIn())) {
      fit *= STENCIL_SIZE_WRONG;
    }
    return fit;
  }

  static boolean named(ThreadDimensions male, EndWords stencil) {
    return stencil.families.stream()
        .map(Family::code)
        .anyMatch(code -> code.equals(male.family()) || code.equals(male.sharedWith()));
  }

  static boolean tapers(ThreadDimensions row) {
    return Families.ofCode(row.family()).orElseThrow().kind() == FamilyKind.TAPER_THREAD;
  }

  private static double bell(double deviations) {
    return Math.exp(-deviations * deviations / 2);
  }

  static String names(List<Candidate> candidates) {
    return candidates.stream()
        .map(c -> c.end().toString().replace(" male", ""))
        .collect(Collectors.joining(" or "));
  }
}
