package hosewright.desk.fleet;

import hosewright.desk.Books;
import hosewright.fleet.record.AgencyLimits;
import hosewright.store.fleet.FleetStore;
import java.time.LocalDate;
import java.util.Set;
import java.util.function.Supplier;

/** Tells what must be known before service tests are asked for or read. */
public final class PrepareTests {
  private final Supplier<Books> books;

  public PrepareTests(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What is known.
   *
   * @param ids sections on record
   * @param limits what the agency holds its hose to
   */
  public record Known(Set<String> ids, LocalDate today, AgencyLimits limits) {

    /** How long a test must be held to be passed, minutes. */
    public double leastHoldMinutes() {
      return limits.hold().orElseThrow().value();
    }
  }

  /**
   * The sections there are, and what a test of today is held to. The books are closed again: they
   * are not kept open while somebody thinks.
   *
   * @throws hosewright.problem.BadInputException when no hose is on record
   */
  public Known prepare() {
    try (Books open = books.get()) {
      FleetStore fleet = FleetOnRecord.in(open);
      return new Known(fleet.ids(), open.today(), fleet.limits());
    }
  }
}
