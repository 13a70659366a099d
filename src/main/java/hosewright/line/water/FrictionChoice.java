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
 * @param origin where it came from
 * @param taught the row of the size table, where it decides
 */
public record FrictionChoice(
    FrictionLaw law,
    Optional<Double> coefficient,
    Origin origin,
    Optional<FrictionTable.Row> taught) {

  /** Where a law comes from. */
  public enum Origin {
    JOB,
    HOSE,
    SIZE_TABLE,
    BORE
  }

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
      return stated(job.wishes().frictionCoefficient().getAsDouble(), Origin.JOB);
    }
    if (hose.bore().frictionCoefficient().isPresent() && !owned) {
      return stated(hose.bore().frictionCoefficient().getAsDouble(), Origin.HOSE);
    }
    Optional<FrictionTable.Row> row =
        FrictionTable.coefficient(hose.sizeIn(), hose.couplingSizeIn());
    return row.isPresent()
        ? new FrictionChoice(row.get().law(), Optional.of(row.get().c()), Origin.SIZE_TABLE, row)
        : hazenWilliams(hose);
  }

  private static FrictionChoice stated(double c, Origin origin) {
    return new FrictionChoice(new CoefficientLaw(c), Optional.of(c), origin, Optional.empty());
  }

  /** Which law and coefficient, and where it came from, in words. */
  public String basis() {
    return switch (origin) {
      case JOB -> words() + " as stated in the job";
      case HOSE -> words() + " from the catalogue's hose";
      case SIZE_TABLE ->
          "%s from the size table (%s; %s)"
              .formatted(words(), taught.orElseThrow().howSure(), taught.orElseThrow().source());
      case BORE ->
          "Hazen-Williams C = %s: no coefficient is known for this hose"
              .formatted(PlainNumber.of(Limit.HAZEN_WILLIAMS_C.value()));
    };
  }

  private String words() {
    return "coefficient C = " + PlainNumber.of(coefficient.orElseThrow());
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
    return new FrictionChoice(
        new HazenWilliams(Limit.HAZEN_WILLIAMS_C.value(), hose.bore().boreIn()),
        Optional.empty(),
        Origin.BORE,
        Optional.empty());
  }
}
