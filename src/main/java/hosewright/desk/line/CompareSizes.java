package hosewright.desk.line;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.job.Job;
import hosewright.line.model.LinePlan;
import hosewright.line.model.Unpriced;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.joda.money.Money;

/** Sets the best line of every hose size side by side. */
public final class CompareSizes {
  private final Supplier<Books> books;

  public CompareSizes(Supplier<Books> books) {
    this.books = books;
  }

  /** The sizes; none where no hose may be laid as asked. */
  public record Sizes(List<Size> sizes) {

    /** Whether a line of any size does what is asked. */
    public boolean anyFeasible() {
      return sizes.stream().anyMatch(Size::feasible);
    }
  }

  /**
   * The best line of one size.
   *
   * @param limitedBy why it does not do; empty where it does
   * @param withoutPrice parts that are not in the total, because nobody has a price for them
   */
  public record Size(
      @JsonUnwrapped Hose hose,
      boolean feasible,
      Optional<String> limitedBy,
      @JsonUnwrapped Water water,
      @JsonUnwrapped Weight weight,
      Money total,
      int withoutPrice) {

    static Size of(LinePlan plan) {
      var h = plan.hydraulics();
      LinePlan.HoseChoice hose = plan.hose().orElseThrow();
      return new Size(
          new Hose(hose.sizeIn(), hose.couplingSizeIn(), hose.series(), hose.lines()),
          plan.feasible(),
          plan.limitedBy(),
          new Water(
              h.frictionLossPsi(),
              h.requiredSourcePsi(),
              h.deliveredPsi(),
              h.reactionLbf(),
              h.velocityFtPerS()),
          new Weight(h.emptyWeightLb(), h.chargedWeightLb()),
          plan.total(),
          Unpriced.parts(plan.bill().unpriced()));
    }

    /** The hose it is laid with. */
    public record Hose(double sizeIn, double couplingSizeIn, String hoseSeries, int lines) {}

    /**
     * What the water does.
     *
     * @param reactionLbf null where nothing is a nozzle
     */
    public record Water(
        double frictionLossPsi,
        double requiredSourcePsi,
        double deliveredPsi,
        Optional<Double> reactionLbf,
        double velocityFtPerS) {}

    /** What its hose weighs. */
    public record Weight(double emptyWeightLb, double chargedWeightLb) {}
  }

  /**
   * The comparison.
   *
   * @throws hosewright.problem.BadInputException when the job names what the books do not know
   */
  public Sizes compare(Job job) {
    try (Books open = books.get()) {
      return new Sizes(
          new Planning(open).planner(job).plansBySize(job).stream().map(Size::of).toList());
    }
  }
}
