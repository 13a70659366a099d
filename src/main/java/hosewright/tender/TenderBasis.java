package hosewright.tender;

import java.time.Instant;
import java.time.LocalDate;

/**
 * What a run of a tender rests on; a run that was cut short goes on only where none of it changed.
 *
 * @param catalogueLoad number of the catalogue's load
 * @param date the day prices are of where a row names none
 * @param customer whose terms hold where a row names nobody; empty for list prices
 * @param quotes whether a quote is kept for each
 * @param together whether one quote is kept for all
 * @param begun when the run began, which tells its quotes from another run's
 */
public record TenderBasis(
    Source source,
    int catalogueLoad,
    LocalDate date,
    String customer,
    boolean quotes,
    Boolean together,
    Instant begun) {

  /** Runs begun before there was one quote for all say nothing of it. */
  public TenderBasis {
    together = together != null && together;
  }

  /** Whether rows are quoted, each or together. */
  public boolean quoted() {
    return quotes || together;
  }

  /**
   * The file priced.
   *
   * @param file the file's name, for people
   * @param sha256 digest of its bytes
   * @param rows how many jobs it has
   */
  public record Source(String file, String sha256, int rows) {}
}
