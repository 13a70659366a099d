package hosewright.desk.fleet;

import hosewright.desk.Books;
import hosewright.problem.ConflictException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.store.fleet.FleetStore;

/** The hose an agency has on record, for deeds that need some. */
final class FleetOnRecord {
  private FleetOnRecord() {}

  /**
   * The fleet on the books.
   *
   * @throws ConflictException when no hose is on record
   */
  static FleetStore in(Books books) {
    FleetStore fleet = books.fleet();
    if (fleet.isEmpty()) {
      throw ConflictException.stateForbids(
          "fleet",
          "",
          "has no hose on record yet",
          "load an inventory first, such as 'fleet load catalogue/fleet'");
    }
    return fleet;
  }

  /** What somebody is told who named a section that is not on record. */
  static Problem unknown(String id, FleetStore fleet) {
    return new Problem("SECTION", id, "a section on record", Nearest.to(id, fleet.ids()));
  }
}
