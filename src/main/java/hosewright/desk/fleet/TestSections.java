package hosewright.desk.fleet;

import hosewright.desk.Books;
import hosewright.desk.fleet.PrepareTests.Known;
import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.DaysRecords;
import hosewright.fleet.record.DaysRecords.Change;
import hosewright.fleet.record.RecordReader;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.store.fleet.FleetStore;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;

/** Enters a day's service tests and repairs. */
public final class TestSections {
  private final Supplier<Books> books;

  public TestSections(Supplier<Books> books) {
    this.books = books;
  }

  /** What was entered, and which sections left service or came back by it. */
  public record Entered(int records, int alreadyOnFile, List<Change> changes) {}

  /**
   * Enters the records, all or none.
   *
   * @param records what was handed over
   * @param known what was known when they were asked for
   * @throws BadInputException naming every record that cannot be; nothing was kept then
   */
  public Entered enter(TestRecords records, Known known) {
    AtomicReference<Entered> entered = new AtomicReference<>();
    try (Books open = books.get()) {
      FleetOnRecord.in(open);
      open.changeFleet(fleet -> entered.set(enter(records, known, fleet)));
    }
    return entered.get();
  }

  private static Entered enter(TestRecords records, Known known, FleetStore fleet) {
    AgencyLimits limits = fleet.limits();
    List<Problem> problems = new ArrayList<>();
    DaysRecords day = new DaysRecords(limits, fleet::find, problems);
    new RecordReader(known.today(), limits, known.ids(), problems)
        .read(records.tables(), day::take);
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    fleet.add(day.accepted());
    return new Entered(day.accepted().size(), day.known(), day.changes());
  }
}
