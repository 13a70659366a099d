package hosewright.line.water;

import hosewright.csv.PlainNumber;
import hosewright.hydraulics.law.CoefficientLaw;
import hosewright.hydraulics.law.FrictionLaw;
import hosewright.hydraulics.law.FrictionTable;
import hosewright.hydraulics.law.HazenWilliams;
import hosewright.job.Job;
import hosewright.job.Limit;
import hosewright.line.assembly.HoseLine;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The friction law that decides for a hose, and why.
 *
 * @param coefficient C, psi per 100 ft at 100 gpm; empty where Hazen-Williams decides
 * @param basis which law and coefficient, and where it came from, in words
 */
public record FrictionChoice(FrictionLaw law, Optional<Double> coefficient, String basis) {

  /**
   * The coefficient asked for, else the hose's own, else the size table's, else Hazen-Williams on
   * the bore.
   */
  public static FrictionChoice of(Job job, HoseLine hose) {
    return of(job, hose, false);
  }

  /**
   * @param owned whether for sections the buyer has: the catalogue's coefficient is not theirs
   */
  public static FrictionChoice of(Job job, HoseLine hose, boolean owned) {
    if (job.wishes().frictionCoefficient().isPresent()) {
      double c = job.wishes().frictionCoefficient().getAsDouble();
      return new FrictionChoice(
          new CoefficientLaw(c),
          Optional.of(c),
          "coefficient C = " + PlainNumber.of(c) + " as stated in the job");
    }
    if (hose.bore().frictionCoefficient().isPresent() && !owned) {
      double c = hose.bore().frictionCoefficient().getAsDouble();
      return new FrictionChoice(
          new CoefficientLaw(c),
          Optional.of(c),
          "coefficient C = " + PlainNumber.of(c) + " from the catalogue's hose");
    }
    return FrictionTable.coefficient(hose.sizeIn(), hose.couplingSizeIn())
        .map(
            row ->
                new FrictionChoice(
                    row.law(),
                    Optional.of(row.c()),
                    String.format(
                        "coefficient C = %s from the size table (%s; %s)",
                        PlainNumber.of(row.c()), row.howSure(), row.source())))
        .orElseGet(() -> hazenWilliams(hose));
  }

  /**
   * Other coefficients taught for hose of this size and couplings, the catalogue's own first where
   * the job overrules it; none where no coefficient decides.
   */
  public static List<FrictionTable.Row> others(Job job, HoseLine hose) {
    if (!(of(job, hose).law() instanceof CoefficientLaw used)) {
      return List.of();
    }
    List<FrictionTable.Row> ofSize = FrictionTable.all(hose.sizeIn());
    List<FrictionTable.Row> ofCouplings =
        ofSize.stream().filter(row -> row.couplingSizeIn() == hose.couplingSizeIn()).toList();
    Stream<FrictionTable.Row> own =
        hose.bore().frictionCoefficient().stream()
            .mapToObj(
                c ->
                    new FrictionTable.Row(
                        hose.sizeIn(),
                        hose.couplingSizeIn(),
                        c,
                        true,
                        "stated for this very hose",
                        "the catalogue's hose"));
    Set<Double> seen = new HashSet<>(Set.of(used.c()));
    return Stream.concat(own, (ofCouplings.isEmpty() ? ofSize : ofCouplings).stream())
        .filter(row -> seen.add(row.c()))
        .toList();
  }

  private static FrictionChoice hazenWilliams(HoseLine hose) {
    double c = Limit.HAZEN_WILLIAMS_C.value();
    return new FrictionChoice(
        new HazenWilliams(c, hose.bore().boreIn()),
        Optional.empty(),
        "Hazen-Williams C = " + PlainNumber.of(c) + ": no coefficient is known for this hose");
  }
}
