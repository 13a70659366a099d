package hosewright.desk.fleet;

import hosewright.desk.Books;
import hosewright.fleet.budget.FleetStatus;
import hosewright.fleet.budget.FleetTally;
import hosewright.store.fleet.FleetStore;
import java.util.Optional;
import java.util.function.Supplier;

/** Shows how an agency's hose stands. */
public final class ShowFleet {
  private final Supplier<Books> books;

  public ShowFleet(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The fleet as it stands.
   *
   * @param date the day to count on, in words; empty for today
   * @throws hosewright.problem.BadInputException when that is no day, or no hose is on record
   */
  public FleetStatus show(Optional<String> date) {
    try (Books open = books.get()) {
      FleetStore fleet = FleetOnRecord.in(open);
      FleetTally tally =
          new FleetTally(
              fleet.limits(),
              date.map(text -> FleetWords.day("date", text)).orElseGet(open::today));
      fleet.each(tally::add);
      return tally.status(fleet.outlets());
    }
  }
}
