package hosewright.quote.terms;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What tax is charged where goods are shipped to, from day to day. Immutable. */
public record TaxTable(List<TaxRow> rows) {
  public static final TaxTable NONE = new TaxTable(List.of());

  public TaxTable {
    rows = List.copyOf(rows);
  }

  /**
   * A place and what it charges.
   *
   * @param from first day in force
   * @param until last day in force; empty while open
   * @param charge what is charged
   */
  public record TaxRow(String place, LocalDate from, Optional<LocalDate> until, Charge charge) {

    /** Whether it holds on a day. */
    public boolean inForceOn(LocalDate day) {
      return !day.isBefore(from) && (until.isEmpty() || !day.isAfter(until.get()));
    }
  }

  /**
   * What is charged.
   *
   * @param rate fraction, for example 0.0625
   * @param onFreight whether freight is taxed too
   * @param untaxed items, and kinds of items, that are not, in lower case
   */
  public record Charge(String name, BigDecimal rate, boolean onFreight, Set<String> untaxed) {

    public Charge {
      untaxed = Set.copyOf(untaxed);
    }

    /** Whether an item is taxed. */
    public boolean taxes(String item, String kind) {
      return !untaxed.contains(item.toLowerCase(Locale.ROOT))
          && !untaxed.contains(kind.toLowerCase(Locale.ROOT));
    }
  }

  /**
   * What a place charges on a day.
   *
   * @throws BadInputException naming the nearest place when the table has none of that name, or
   *     none in force
   */
  public TaxRow of(String place, LocalDate day) {
    return rows.stream()
        .filter(row -> row.place().equalsIgnoreCase(place) && row.inForceOn(day))
        .findFirst()
        .orElseThrow(() -> unknown(place, day));
  }

  private BadInputException unknown(String place, LocalDate day) {
    List<String> places = rows.stream().map(TaxRow::place).distinct().toList();
    return new BadInputException(
        List.of(
            new Problem(
                "ship-to",
                place,
                places.isEmpty()
                    ? "a place of taxes.csv, which the books do not have yet"
                    : "a place whose tax is known on " + day + ", of " + String.join(", ", places),
                Nearest.to(place, places))));
  }
}
