package hosewright.thread;

import hosewright.csv.PlainNumber;
import hosewright.measure.Measures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Decides which nominal size of a family the numbers and letters of a written end mean. */
final class EndSize {
  /** Sizes are names, so a number near one is not that size; this only forgives rounding. */
  private static final double SAME_SIZE_IN = 0.006;

  /** How near a size must lie to a measured diameter to look like a measurement. */
  private static final double LOOKS_MEASURED_IN = 0.035;

  /** Nobody makes couplings with two like halves so large. Common practice, no source. */
  private static final double LARGEST_SEXLESS_IN = 12;

  private EndSize() {}

  /**
   * A size, or why there is none.
   *
   * @param sizeIn the nominal size, inches; empty when refused
   * @param refusal what is allowed instead
   * @param suggestedIn the size that was probably meant; empty when there is no telling
   */
  record Answer(OptionalDouble sizeIn, String refusal, OptionalDouble suggestedIn) {}

  static Answer of(EndWords words, Family family) {
    Optional<Double> lettered = lettered(words, family);
    if (lettered.isPresent()) {
      return found(lettered.get());
    }
    int given = words.sizesIn.size() + words.sizesMm.size();
    if (given != 1 || !words.letters.isEmpty()) {
      String opening = given == 0 ? "a size is missing: " : "give one size: ";
      return new Answer(OptionalDouble.empty(), opening + madeIn(family), OptionalDouble.empty());
    }
    double wanted =
        words.sizesMm.isEmpty()
            ? plain(family, words.sizesIn.get(0))
            : inches(family, words.sizesMm.get(0));
    double nearest = nearest(family, wanted);
    return Math.abs(nearest - wanted) <= SAME_SIZE_IN
        ? found(nearest)
        : notMade(family, wanted, nearest);
  }

  /** Couplings of no inch size so large go by the millimetres of their hose: {@code 52 Storz}. */
  private static double plain(Family family, double number) {
    return family.kind() == FamilyKind.SEXLESS && number > LARGEST_SEXLESS_IN
        ? inches(family, number)
        : number;
  }

  private static Answer found(double sizeIn) {
    return new Answer(OptionalDouble.of(sizeIn), "", OptionalDouble.empty());
  }

  private static Answer notMade(Family family, double wanted, double nearest) {
    Optional<ThreadDimensions> measured = measuring(family, wanted);
    String trap = measured.map(EndSize::trap).orElse("");
    double suggested = measured.map(ThreadDimensions::sizeIn).orElse(nearest);
    return new Answer(OptionalDouble.empty(), madeIn(family) + trap, OptionalDouble.of(suggested));
  }

  private static String trap(ThreadDimensions row) {
    return "; sizes are nominal, never measured: a "
        + new End(row.sizeIn(), row.family(), Gender.MALE, false)
        + " measures "
        + PlainNumber.of(row.majorMaxIn().orElseThrow())
        + " in across";
  }

  /** A Storz size may be called by its letter, with or without the hose behind it in mm. */
  private static Optional<Double> lettered(EndWords words, Family family) {
    List<String> letters = new ArrayList<>(words.letters);
    boolean bare = words.sizesIn.isEmpty() && words.sizesMm.isEmpty();
    if (letters.isEmpty() && words.bareF && family.kind() == FamilyKind.SEXLESS && bare) {
      letters.add("f");
      words.genders.remove(Gender.FEMALE);
    }
    List<Double> hoses = new ArrayList<>(words.sizesIn);
    hoses.addAll(words.sizesMm);
    return CouplingSize.all().stream()
        .filter(c -> c.family().equals(family.code()) && letters.size() == 1)
        .filter(c -> c.letter().toLowerCase(Locale.ROOT).equals(letters.get(0)))
        .filter(c -> hoses.isEmpty() || hoses.equals(List.of(c.hoseMm())))
        .map(CouplingSize::sizeIn)
        .findFirst();
  }

  /** A coupling goes by the hose it is put on; all else by what metric sizes usually stand for. */
  private static double inches(Family family, double millimetres) {
    return CouplingSize.all().stream()
        .filter(c -> c.family().equals(family.code()) && c.hoseMm() == millimetres)
        .map(CouplingSize::sizeIn)
        .findFirst()
        .orElseGet(() -> Measures.nominalIn(millimetres));
  }

  private static double nearest(Family family, double sizeIn) {
    return family.sizesIn().stream()
        .min(Comparator.comparingDouble(s -> Math.abs(s - sizeIn)))
        .orElseThrow();
  }

  private static Optional<ThreadDimensions> measuring(Family family, double sizeIn) {
    return ThreadTable.all().stream()
        .filter(r -> r.family().equals(family.code()) && r.majorMaxIn().isPresent())
        .filter(r -> Math.abs(r.majorMaxIn().getAsDouble() - sizeIn) <= LOOKS_MEASURED_IN)
        .findFirst();
  }

  private static String madeIn(Family family) {
    return family.code()
        + " is made in "
        + family.sizesIn().stream().map(PlainNumber::of).collect(Collectors.joining(", "))
        + " in nominal";
  }
}
