package hosewright.store.database;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The highest number of each series. */
public record Highest(Map<Series, Integer> numbers) {
  public Highest {
    numbers = Map.copyOf(numbers);
  }

  public int of(Series series) {
    return numbers.getOrDefault(series, 0);
  }

  /** The first series whose number is farther beyond another's than any restore brings it. */
  public Optional<Series> farBeyond(Highest other) {
    return Arrays.stream(Series.values())
        .filter(series -> !HighWaterMark.isNear(of(series), other.of(series)))
        .findFirst();
  }

  /** A line for each series: its papers, a tab, the number. */
  public String written() {
    return Arrays.stream(Series.values())
        .map(series -> series.paper() + "\t" + of(series) + "\n")
        .collect(Collectors.joining());
  }

  /** The numbers again; empty when the text holds no such lines. */
  public static Optional<Highest> read(String text) {
    Map<Series, Integer> numbers = new EnumMap<>(Series.class);
    List<String> lines = text.lines().toList();
    for (Series series : Series.values()) {
      lines.stream()
          .filter(line -> line.matches(series.paper() + "\t\\d{1,9}"))
          .forEach(
              line -> numbers.put(series, Integer.valueOf(line.substring(line.indexOf('\t') + 1))));
    }
    Highest highest = new Highest(numbers);
    return highest.written().equals(text) ? Optional.of(highest) : Optional.empty();
  }
}
