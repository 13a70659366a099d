package hosewright.line;

import hosewright.hydraulics.CoefficientLaw;
import hosewright.hydraulics.FrictionLaw;
import hosewright.hydraulics.FrictionTable;
import hosewright.hydraulics.HazenWilliams;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * The friction law that decides for a hose, and why.
 *
 * @param basis which law and coefficient, where it came from and what else is taught, in words
 */
record FrictionChoice(FrictionLaw law, String basis) {

  /**
   * The coefficient asked for, else the hose's own, else the size table's, else Hazen-Williams on
   * the bore.
   */
  static FrictionChoice of(Job job, HoseLine hose) {
    return of(job, hose, false);
  }

  /**
   * @param owned whether for sections the buyer has: the catalogue's coefficient is not theirs
   */
  static FrictionChoice of(Job job, HoseLine hose, boolean owned) {
    if (job.wishes().frictionCoefficient().isPresent()) {
      double c = job.wishes().frictionCoefficient().getAsDouble();
      return new FrictionChoice(
          new CoefficientLaw(c), "coefficient C = " + plain(c) + " as stated in the job");
    }
    Optional<FrictionTable.Row> table =
        FrictionTable.coefficient(hose.sizeIn(), hose.couplingSizeIn());
    if (hose.frictionCoefficient().isPresent() && !owned) {
      double c = hose.frictionCoefficient().getAsDouble();
      return new FrictionChoice(
          new CoefficientLaw(c),
          "coefficient C = "
              + plain(c)
              + " from the catalogue's hose"
              + table.map(row -> "; the size table teaches C = " + plain(row.c())).orElse(""));
    }
    return table
        .map(
            row ->
                new FrictionChoice(
                    row.law(),
                    String.format(
                        "coefficient C = %s from the size table (%s; %s)",
                        plain(row.c()), row.howSure(), row.source())))
        .orElseGet(() -> hazenWilliams(hose));
  }

  private static FrictionChoice hazenWilliams(HoseLine hose) {
    double c = Limit.HAZEN_WILLIAMS_C.value();
    return new FrictionChoice(
        new HazenWilliams(c, hose.boreIn()),
        "Hazen-Williams C = " + plain(c) + ": no coefficient is known for this hose");
  }

  private static String plain(double c) {
    return BigDecimal.valueOf(c).stripTrailingZeros().toPlainString();
  }
}
