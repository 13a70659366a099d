package hosewright.tender;

import hosewright.job.question.JobField;
import hosewright.line.model.LinePlan;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.joda.money.Money;

/**
 * What came of one row of a tender.
 *
 * @param limit the check that binds, where there is no safe plan
 * @param instead what would do, where there is no safe plan
 * @param problems what is wrong with the row, or what failed in us
 */
public record TenderResult(
    Place place,
    Outcome outcome,
    String limit,
    List<String> instead,
    List<Problem> problems,
    Optional<Figures> figures) {

  public TenderResult {
    instead = List.copyOf(instead);
    problems = List.copyOf(problems);
  }

  /** How a row ended. */
  public enum Outcome {
    PRICED,
    NO_SAFE_PLAN,
    BAD_INPUT,
    OUR_FAULT
  }

  /** The figures of a plan. */
  public record Figures(Laid laid, Water water, Price price) {

    static Figures of(LinePlan plan, String terms) {
      return new Figures(
          new Laid(
              plan.hose().map(LinePlan.HoseChoice::series).orElse(""),
              plan.hose().map(LinePlan.HoseChoice::sizeIn).orElse(0.0),
              plan.hose().map(LinePlan.HoseChoice::lines).orElse(0),
              plan.layout().hoseLegs().stream()
                  .flatMap(leg -> leg.sectionCounts().stream())
                  .map(s -> s.count() + " x " + feet(s.lengthFt()))
                  .collect(Collectors.joining(", "))),
          new Water(
              plan.flowGpm(),
              plan.needPsi(),
              calculated(plan, plan.hydraulics().deliveredPsi()),
              calculated(plan, plan.hydraulics().requiredSourcePsi()),
              plan.hydraulics().sourcePsi()),
          new Price(plan.total(), terms, Optional.empty(), Optional.empty()));
    }

    /**
     * Of a package, which has no pressures of its own.
     *
     * @param what what it consists of, in words
     */
    public static Figures ofPackage(String what, Money goods, String terms) {
      return new Figures(
          new Laid(what, 0, 0, ""),
          new Water(0, 0, Optional.empty(), Optional.empty(), Optional.empty()),
          new Price(goods, terms, Optional.empty(), Optional.empty()));
    }

    private static Optional<Double> calculated(LinePlan plan, double figure) {
      return plan.hydraulics().calculated() ? Optional.of(figure) : Optional.empty();
    }

    private static String feet(double lengthFt) {
      return lengthFt == Math.rint(lengthFt)
          ? String.format(Locale.ROOT, "%.0f ft", lengthFt)
          : String.format(Locale.ROOT, "%.1f ft", lengthFt);
    }

    private Figures quoted(String number, Money total) {
      return new Figures(
          laid,
          water,
          new Price(price.goods(), price.terms(), Optional.of(number), Optional.of(total)));
    }

    /**
     * The hose of the line, or what a package consists of.
     *
     * @param sizeIn 0 for a package, as the lines
     * @param sections as said at a counter, for example {@code 9 x 50 ft}
     */
    public record Laid(String hose, double sizeIn, int lines, String sections) {}

    /**
     * What the water does.
     *
     * @param flowGpm 0 for a package, as the need
     * @param deliveredPsi at the appliance, psi; with the source's, empty for a fluid that the laws
     *     used do not hold for
     */
    public record Water(
        double flowGpm,
        double needPsi,
        Optional<Double> deliveredPsi,
        Optional<Double> requiredSourcePsi,
        Optional<Double> sourcePsi) {}

    /**
     * What it costs.
     *
     * @param goods subtotal of the goods; freight and tax are a quote's
     * @param terms whose prices, in words
     */
    public record Price(
        Money goods, String terms, Optional<String> quote, Optional<Money> quoteTotal) {}
  }

  /** A row that could not be worked on. */
  public static TenderResult refused(TenderRow row, Outcome outcome, List<Problem> problems) {
    String title = row.answers().getOrDefault(JobField.TITLE, "");
    return new TenderResult(
        new Place(row.line(), row.id(), title), outcome, "", List.of(), problems, Optional.empty());
  }

  /** This result with the quote that was kept for it. */
  public TenderResult quoted(String number, Money total) {
    return new TenderResult(
        place,
        outcome,
        limit,
        instead,
        problems,
        figures.map(known -> known.quoted(number, total)));
  }

  /**
   * Where in the file the row stands and what it is called.
   *
   * @param line the line of the file the row begins on
   */
  public record Place(long line, String id, String title) {}
}
