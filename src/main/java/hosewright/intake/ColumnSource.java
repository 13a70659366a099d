package hosewright.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where one of our columns comes from.
 *
 * @param theirs the dealer's columns, joined in this order; empty for a constant
 * @param join what stands between them
 * @param words what the dealer writes to what we write
 * @param unit the unit the dealer's numbers are in, where it is not ours
 * @param always what stands in every row
 * @param dates how the dealer writes a day, in the order of day, month and year
 */
record ColumnSource(
    List<String> theirs,
    String join,
    Map<String, String> words,
    Optional<ColumnUnit> unit,
    Optional<String> always,
    Optional<DateOrder> dates) {

  ColumnSource {
    theirs = List.copyOf(theirs);
    words = Map.copyOf(words);
  }

  static ColumnSource of(String their) {
    return new ColumnSource(
        List.of(their), "", Map.of(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** As a problem names it: the dealer's columns, then ours, then the unit. */
  String title(String column) {
    return always.isPresent()
        ? column + " (always '" + always.get() + "' by the mapping)"
        : String.join(" + ", theirs)
            + " ("
            + column
            + unit.map(u -> ", in " + u.label()).orElse("")
            + ")";
  }
}
