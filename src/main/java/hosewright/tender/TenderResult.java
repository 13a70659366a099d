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
 * @param line the line of the file the row begins on
 * @param limit the check that binds, where there is no safe plan
 * @param instead what would do, where there is no safe plan
 * @param problems what is wrong with the row, or what failed in us
 */
public record TenderResult(
    long line,
    String id,
    String title,
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

  /**
   * The figures of a plan.
   *
   * @param sections as said at a counter, for example {@code 9 x 50 ft}
   * @param deliveredPsi at the appliance, psi; with the source's, empty for a fluid that the laws
   *     used do not hold for
   * @param goods subtotal of the goods; freight and tax are a quote's
   * @param terms whose prices, in words
   */
  public record Figures(
      String hose,
      double sizeIn,
      int lines,
      String sections,
      double flowGpm,
      double needPsi,
      Optional<Double> deliveredPsi,
      Optional<Double> requiredSourcePsi,
      Optional<Double> sourcePsi,
      Money goods,
      String terms,
      Optional<String> quote,
      Optional<Money> quoteTotal) {

    static Figures of(LinePlan plan, String terms) {
      return new Figures(
          plan.hose().map(LinePlan.HoseChoice::series).orElse(""),
          plan.hose().map(LinePlan.HoseChoice::sizeIn).orElse(0.0),
          plan.hose().map(LinePlan.HoseChoice::lines).orElse(0),
          plan.layout().hoseLegs().stream()
              .flatMap(leg -> leg.sectionCounts().stream())
              .map(s -> s.count() + " x " + feet(s.lengthFt()))
              .collect(Collectors.joining(", ")),
          plan.flowGpm(),
          plan.needPsi(),
          calculated(plan, plan.hydraulics().deliveredPsi()),
          calculated(plan, plan.hydraulics().requiredSourcePsi()),
          plan.hydraulics().sourcePsi(),
          plan.total(),
          terms,
          Optional.empty(),
          Optional.empty());
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
          hose,
          sizeIn,
          lines,
          sections,
          flowGpm,
          needPsi,
          deliveredPsi,
          requiredSourcePsi,
          sourcePsi,
          goods,
          terms,
          Optional.of(number),
          Optional.of(total));
    }
  }

  static TenderResult refused(TenderRow row, Outcome outcome, List<Problem> problems) {
    String title = row.answers().getOrDefault(JobField.TITLE, "");
    return new TenderResult(
        row.line(), row.id(), title, outcome, "", List.of(), problems, Optional.empty());
  }

  /** This result with the quote that was kept for it. */
  public TenderResult quoted(String number, Money total) {
    return new TenderResult(
        line,
        id,
        title,
        outcome,
        limit,
        instead,
        problems,
        figures.map(known -> known.quoted(number, total)));
  }
}
