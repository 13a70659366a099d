package hosewright.desk.fleet;

import hosewright.csv.CellRows;
import hosewright.desk.Books;
import hosewright.fleet.record.InventoryReader;
import hosewright.fleet.record.LimitReader;
import hosewright.fleet.record.OutletReader;
import hosewright.fleet.record.RecordReader;
import hosewright.intake.DealerFiles;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Takes an agency's inventory of hose into the books, all or nothing. */
public final class LoadFleet {
  private final Supplier<Books> books;

  public LoadFleet(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What was taken in.
   *
   * @param sections rows of the inventory
   * @param records service records, the inventory's own last tests among them
   */
  public record Loaded(long sections, long records, int outlets) {}

  /**
   * Loads an inventory.
   *
   * @param place the folder or workbook it is in
   * @param mapping file that maps columns of other names to ours
   * @param replace whether to forget the hose on record first
   * @throws hosewright.problem.BadInputException naming every row that cannot be used
   */
  public Loaded load(Path place, Optional<Path> mapping, boolean replace) {
    Map<String, CellRows> tables =
        DealerFiles.open(
            place,
            mapping,
            List.of(InventoryReader.FORM),
            List.of(RecordReader.FORM, OutletReader.FORM, LimitReader.FORM));
    try (Books open = books.get()) {
      return FleetIntake.load(open, tables, replace);
    }
  }
}
