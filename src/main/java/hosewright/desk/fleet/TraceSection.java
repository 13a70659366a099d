package hosewright.desk.fleet;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.HoseRecord;
import hosewright.fleet.record.Retirement;
import hosewright.fleet.record.SectionLife;
import hosewright.fleet.record.ServiceRecord;
import hosewright.fleet.record.Standing;
import hosewright.problem.NoSuchThingException;
import hosewright.store.fleet.FleetStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** Traces one section's life, and by which rule and record it left service. */
public final class TraceSection {
  private final Supplier<Books> books;

  public TraceSection(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * A section's life.
   *
   * @param dueRule the rule that retires it today although no record has done so
   */
  public record Trace(
      HoseRecord section,
      @JsonUnwrapped Today today,
      Optional<Left> left,
      Optional<String> dueRule,
      List<Line> records) {

    /** Where it stands today. */
    public record Today(
        String status, double lengthFt, double lostFt, int repairs, LocalDate testDue) {}
  }

  /** How it left service. */
  public record Left(
      String rule, String sentence, String source, int record, LocalDate date, boolean failure) {}

  /** One record. */
  public record Line(
      int record,
      LocalDate date,
      String outcome,
      Optional<Double> testPsi,
      Optional<Double> holdMin,
      Optional<Double> lengthFt,
      String note) {}

  /**
   * The section's life.
   *
   * @throws NoSuchThingException naming the nearest when no such section is on record
   */
  public Trace trace(String id) {
    try (Books open = books.get()) {
      FleetStore fleet = FleetOnRecord.in(open);
      SectionLife life =
          fleet
              .find(id)
              .orElseThrow(
                  () ->
                      new NoSuchThingException(
                          "section", id, fleet.ids(), "none so numbered is on record"));
      return trace(life, fleet.limits(), open.today());
    }
  }

  private static Trace trace(SectionLife life, AgencyLimits limits, LocalDate today) {
    Standing standing = life.standing(limits);
    HoseRecord section = life.section();
    return new Trace(
        section,
        new Trace.Today(
            standing.status().word(),
            standing.lengthFt(),
            standing.lengthLostFt(section),
            standing.repairs(),
            standing.testDue(section)),
        standing.retirement().map(TraceSection::left),
        standing.status().usable()
            ? life.due(limits, today).map(Retirement::rule)
            : Optional.empty(),
        lines(life));
  }

  private static List<Line> lines(SectionLife life) {
    List<Line> lines = new ArrayList<>();
    for (ServiceRecord record : life.records()) {
      lines.add(
          new Line(
              lines.size() + 1,
              record.date(),
              record.outcome().code(),
              boxed(record.pressurePsi()),
              boxed(record.holdMinutes()),
              boxed(record.lengthFt()),
              record.note()));
    }
    return lines;
  }

  private static Left left(Retirement retirement) {
    var rule = retirement.ruleInWords();
    return new Left(
        rule.code(),
        rule.sentence(),
        rule.source(),
        retirement.record(),
        retirement.date(),
        rule.failure());
  }

  private static Optional<Double> boxed(OptionalDouble number) {
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }
}
