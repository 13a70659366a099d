package hosewright.door.shell.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A chart of bars in plain characters, the same on any terminal. */
public final class Bars {
  private static final int WIDEST = 40;

  private final List<String> labels = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();

  public Bars add(String label, double value) {
    labels.add(label);
    values.add(value);
    return this;
  }

  /** Labels on the left, a bar in proportion, the number behind it. */
  public String drawn() {
    int width = labels.stream().mapToInt(String::length).max().orElse(0);
    double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    StringBuilder chart = new StringBuilder();
    for (int i = 0; i < labels.size(); i++) {
      double value = values.get(i);
      int length = most > 0 ? (int) Math.round(value / most * WIDEST) : 0;
      // What is not nothing must not look like nothing.
      int shown = value > 0 ? Math.max(1, length) : 0;
      chart.append(
          String.format(
              Locale.ROOT,
              "%" + Math.max(1, width) + "s |%s %,.0f%n",
              labels.get(i),
              "#".repeat(shown),
              value));
    }
    return chart.toString().replace("\r", "").stripTrailing();
  }
}
