package hosewright.csv;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sees to it that at most one row about a thing is in force on any day. */
public final class Periods {
  private final Map<List<?>, List<Period>> taken = new HashMap<>();

  private record Period(LocalDate from, Optional<LocalDate> until, long line) {
    boolean overlaps(Period other) {
      return !endsBefore(other.from) && !other.endsBefore(from);
    }

    private boolean endsBefore(LocalDate day) {
      return until.isPresent() && until.get().isBefore(day);
    }
  }

  /**
   * Takes the period of a row, or refuses the row where an earlier one has part of it.
   *
   * @param thing what the row is about, for example its item and quantity
   */
  public void take(CsvRow row, List<?> thing, LocalDate from, Optional<LocalDate> until) {
    Period wanted = new Period(from, until, row.line());
    List<Period> earlier = taken.computeIfAbsent(thing, key -> new ArrayList<>());
    earlier.stream()
        .filter(wanted::overlaps)
        .findFirst()
        .ifPresent(
            other ->
                row.refuse(
                    "from",
                    "a period that does not overlap line %d (%s to %s) for %s"
                        .formatted(
                            other.line(),
                            other.from(),
                            other.until().map(LocalDate::toString).orElse("open"),
                            thing)));
    earlier.add(wanted);
  }
}
