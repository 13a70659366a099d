package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.job.question.OwnedHose;
import hosewright.job.question.Practice;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.joda.money.Money;

/**
 * The terms a buyer sets besides the line itself.
 *
 * @param budget the most the goods may cost, before freight and tax
 * @param stockOnly nothing but what lies on the shelf
 * @param deliverBy the day everything must be there
 * @param spareSections sections to have beyond those laid
 * @param heaviestSectionLb the most one section may weigh empty, for the crew that carries it
 * @param owned sections the buyer has, to be laid before others are bought
 * @param allowed rules of the trade that the buyer lifts
 */
public record Conditions(
    Optional<Money> budget,
    boolean stockOnly,
    Optional<LocalDate> deliverBy,
    int spareSections,
    OptionalDouble heaviestSectionLb,
    List<OwnedHose> owned,
    List<Practice> allowed) {

  public static final Conditions NONE =
      new Conditions(
          Optional.empty(),
          false,
          Optional.empty(),
          0,
          OptionalDouble.empty(),
          List.of(),
          List.of());

  public Conditions {
    owned = List.copyOf(owned);
    allowed = List.copyOf(allowed);
  }

  static Conditions read(Answers answers) {
    return new Conditions(
        answers.of(JobField.BUDGET),
        answers.of(JobField.STOCK_ONLY).orElse(false),
        answers.of(JobField.DELIVER_BY),
        answers.of(JobField.SPARE_SECTIONS).orElse(0),
        answers.number(JobField.SECTION_WEIGHT),
        answers.of(JobField.OWNED).orElse(List.of()),
        answers.of(JobField.ALLOW).orElse(List.of()));
  }

  public Conditions fromAnyShelf(Optional<LocalDate> by) {
    return new Conditions(budget, false, by, spareSections, heaviestSectionLb, owned, allowed);
  }

  /** With one more rule of the trade lifted. */
  public Conditions lifting(Practice rule) {
    return new Conditions(
        budget,
        stockOnly,
        deliverBy,
        spareSections,
        heaviestSectionLb,
        owned,
        Stream.concat(allowed.stream(), Stream.of(rule)).distinct().toList());
  }

  public Conditions withAnyWeight() {
    return new Conditions(
        budget, stockOnly, deliverBy, spareSections, OptionalDouble.empty(), owned, allowed);
  }

  public Conditions withNothingOwned() {
    return new Conditions(
        budget, stockOnly, deliverBy, spareSections, heaviestSectionLb, List.of(), allowed);
  }
}
