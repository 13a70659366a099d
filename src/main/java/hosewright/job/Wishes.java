package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What the buyer insists on; empty leaves the choice to the plan.
 *
 * @param hoseSizesIn nominal hose sizes allowed, in; empty for any
 * @param couplingSizeIn nominal size of the hose's couplings, in
 * @param hoseThread family code of the hose's couplings
 * @param sectionFt the only section length allowed, ft
 * @param lines parallel lines
 * @param frictionCoefficient C to calculate with instead of the catalogue's
 */
public record Wishes(
    List<Double> hoseSizesIn,
    OptionalDouble couplingSizeIn,
    Optional<String> hoseThread,
    OptionalDouble sectionFt,
    OptionalInt lines,
    OptionalDouble frictionCoefficient) {

  /** Lines side by side at the most. */
  public static final int MOST_LINES = 3;

  public Wishes {
    hoseSizesIn = List.copyOf(hoseSizesIn);
  }

  public static final Wishes NONE =
      new Wishes(
          List.of(),
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalInt.empty(),
          OptionalDouble.empty());

  static Wishes read(Answers answers, Network network) {
    Optional<Integer> lines =
        network.branched() ? Optional.of(network.outlets()) : answers.of(JobField.LINES);
    return new Wishes(
        answers.of(JobField.SIZE).orElse(List.of()),
        answers.number(JobField.COUPLING_SIZE),
        answers.of(JobField.HOSE_THREAD),
        answers.number(JobField.SECTION),
        lines.map(OptionalInt::of).orElse(OptionalInt.empty()),
        answers.number(JobField.FRICTION_COEFFICIENT));
  }

  public boolean allows(double sizeIn) {
    return hoseSizesIn.isEmpty() || hoseSizesIn.contains(sizeIn);
  }

  public int fewestLines() {
    return lines.orElse(1);
  }

  public int mostLines() {
    return lines.orElse(hoseSizesIn.size() == 1 ? 1 : MOST_LINES);
  }

  public Wishes withAnySize() {
    return new Wishes(
        List.of(), OptionalDouble.empty(), hoseThread, sectionFt, lines, OptionalDouble.empty());
  }

  /** What holds for attack lines: of sizes of their own, else as for the whole job. */
  public Wishes ofSizes(List<Double> sizesIn) {
    return new Wishes(
        sizesIn,
        OptionalDouble.empty(),
        hoseThread,
        sectionFt,
        OptionalInt.empty(),
        OptionalDouble.empty());
  }

  public Wishes withLines(int count) {
    return new Wishes(
        hoseSizesIn,
        couplingSizeIn,
        hoseThread,
        sectionFt,
        OptionalInt.of(count),
        frictionCoefficient);
  }
}
