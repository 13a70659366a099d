package hosewright.desk.fleet;

import hosewright.csv.CellRows;
import hosewright.desk.Books;
import hosewright.desk.fleet.LoadFleet.Loaded;
import hosewright.fleet.record.AgencyLimits;
import hosewright.fleet.record.InventoryReader;
import hosewright.fleet.record.LimitReader;
import hosewright.fleet.record.Outlet;
import hosewright.fleet.record.OutletReader;
import hosewright.fleet.record.RecordReader;
import hosewright.fleet.record.ServiceRecord;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.store.fleet.FleetStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Takes the tables of an inventory into the fleet's store, all or nothing.
 *
 * <p>Rows go from file to store as they are read; the first problem found keeps everything out, and
 * reading goes on only to find the others.
 */
final class FleetIntake {
  private final Map<String, CellRows> tables;
  private final FleetStore fleet;
  private final LocalDate today;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, ServiceRecord> lastTests = new HashMap<>();
  private Set<String> ids = new HashSet<>();
  private long sections;
  private long records;

  FleetIntake(Map<String, CellRows> tables, FleetStore fleet, LocalDate today) {
    this.tables = tables;
    this.fleet = fleet;
    this.today = today;
  }

  /**
   * Takes an inventory into the books, all or nothing.
   *
   * @param replace whether to forget what is there first
   */
  static Loaded load(Books books, Map<String, CellRows> tables, boolean replace) {
    AtomicReference<Loaded> taken = new AtomicReference<>();
    books.changeFleet(
        fleet -> {
          if (replace) {
            fleet.clear();
          }
          taken.set(new FleetIntake(tables, fleet, books.today()).take());
        });
    return taken.get();
  }

  /**
   * Takes everything in.
   *
   * @throws BadInputException with every problem found; then nothing was kept
   */
  Loaded take() {
    boolean fresh = fleet.isEmpty();
    ids = new HashSet<>(fleet.ids());
    AgencyLimits limits =
        tables.containsKey(LimitReader.FORM.name())
            ? LimitReader.read(tables, problems)
            : fleet.limits();
    List<Outlet> outlets =
        tables.containsKey(OutletReader.FORM.name())
            ? OutletReader.read(tables, problems)
            : fleet.outlets();
    fleet.load(
        intake -> {
          readSections(intake, fresh);
          readRecords(intake, limits, fresh);
          throwAny();
        });
    fleet.replaceLimits(limits);
    fleet.replaceOutlets(outlets);
    return new Loaded(sections, records, outlets.size());
  }

  private void readSections(FleetStore.Intake intake, boolean fresh) {
    new InventoryReader(today, problems)
        .read(
            tables,
            (section, test) -> {
              sections++;
              ids.add(section.id());
              if (problems.isEmpty()) {
                intake.section(section);
              }
              test.ifPresent(record -> lastTests.put(section.id(), record));
            });
    boolean alone = !tables.containsKey(RecordReader.FORM.name());
    if (fresh && alone && problems.isEmpty()) {
      lastTests.values().forEach(record -> keep(intake, record));
      lastTests.clear();
    }
  }

  private void readRecords(FleetStore.Intake intake, AgencyLimits limits, boolean fresh) {
    List<ServiceRecord> later = new ArrayList<>();
    if (tables.containsKey(RecordReader.FORM.name())) {
      new RecordReader(today, limits, ids, problems)
          .read(
              tables,
              record -> {
                ServiceRecord own = lastTests.get(record.section());
                if (own != null && own.tellsTheSameAs(record)) {
                  lastTests.remove(record.section());
                }
                if (fresh) {
                  keep(intake, record);
                } else {
                  later.add(record);
                }
              });
    }
    later.addAll(lastTests.values());
    for (ServiceRecord record : later) {
      if (fresh) {
        keep(intake, record);
      } else {
        addIfNew(record, intake);
      }
    }
  }

  /** An update brings its history again: what is on file already is passed over. */
  private void addIfNew(ServiceRecord record, FleetStore.Intake intake) {
    boolean onFile =
        fleet.find(record.section()).stream()
            .flatMap(life -> life.records().stream())
            .anyMatch(record::tellsTheSameAs);
    if (!onFile) {
      keep(intake, record);
    }
  }

  private void keep(FleetStore.Intake intake, ServiceRecord record) {
    records++;
    if (problems.isEmpty()) {
      intake.record(record);
    }
  }

  private void throwAny() {
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
