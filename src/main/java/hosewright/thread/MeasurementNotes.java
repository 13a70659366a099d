package hosewright.thread;

import hosewright.csv.PlainNumber;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a person should know about a measurement before ordering by it. */
final class MeasurementNotes {
  /** How near a reading must lie to a nominal size to be mistaken for it. */
  private static final double MISTAKEN_IN = 0.1;

  private static final double DOES_NOT_FIT = 0.05;

  private MeasurementNotes() {}

  static List<String> on(Measurement measurement, EndWords stencil, List<Candidate> ranked) {
    List<String> notes = new ArrayList<>();
    trap(measurement, ranked).ifPresent(notes::add);
    stencilDisagrees(measurement, stencil).ifPresent(notes::add);
    if (!ranked.isEmpty()
        && Families.ofCode(ranked.get(0).end().family()).orElseThrow().regional()) {
      notes.add("A regional fire thread: check with the local fire service.");
    }
    if (!ranked.isEmpty() && ranked.get(0).differenceIn() < -measurement.diameterErrorIn()) {
      notes.add("It reads small; worn or damaged threads do: measure a clean, undamaged one.");
    }
    return notes;
  }

  /** The reading is another nominal size: the mistake that orders the wrong hose. */
  private static Optional<String> trap(Measurement measurement, List<Candidate> ranked) {
    if (ranked.isEmpty()) {
      return Optional.empty();
    }
    Candidate leader = ranked.get(0);
    double measured = measurement.outsideDiameterIn();
    return ThreadTable.all().stream()
        .map(ThreadDimensions::sizeIn)
        .filter(nominal -> nominal != leader.end().sizeIn())
        .filter(nominal -> Math.abs(nominal - measured) <= MISTAKEN_IN)
        .min(Comparator.comparingDouble(nominal -> Math.abs(nominal - measured)))
        .map(nominal -> trapText(leader, nominal));
  }

  private static String trapText(Candidate leader, double nominal) {
    String family = leader.end().family();
    String other =
        ThreadTable.find(family, nominal)
            .filter(r -> r.majorMaxIn().isPresent())
            .map(
                r ->
                    String.format(
                        Locale.ROOT,
                        "; a %s %s measures %.3f in",
                        PlainNumber.of(nominal),
                        family,
                        r.majorMaxIn().getAsDouble()))
            .orElse("");
    return String.format(
        Locale.ROOT,
        "A %s measures %.3f in across, close to %s in, but sizes are nominal: order it as %s%s.",
        leader.end(),
        leader.majorDiameterIn(),
        PlainNumber.of(nominal),
        PlainNumber.of(leader.end().sizeIn()),
        other);
  }

  private static Optional<String> stencilDisagrees(Measurement measurement, EndWords stencil) {
    boolean fits =
        ThreadTable.all().stream()
            .filter(r -> r.majorMaxIn().isPresent() && Identification.named(r, stencil))
            .anyMatch(r -> Identification.diameterFit(r, measurement) > DOES_NOT_FIT);
    return stencil.families.isEmpty() || fits
        ? Optional.empty()
        : Optional.of(
            "The stencil and the measured diameter do not agree: the end may have been replaced,"
                + " so trust neither until the threads are counted.");
  }
}
