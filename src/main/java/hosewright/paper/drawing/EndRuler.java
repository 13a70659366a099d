package hosewright.paper.drawing;

import hosewright.thread.CouplingSize;
import hosewright.thread.End;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** An end's lengths laid along one ruler, in letters, all to the same scale. */
final class EndRuler {
  private static final int LABELS = 21;

  /** Columns kept for a bar's end and its figure. */
  private static final int FIGURES = 9;

  /** Columns to an inch, the largest that fits is taken. */
  private static final int[] SCALES = {60, 40, 30, 24, 20, 16, 12, 10, 8, 6, 5, 4};

  private final int perInch;
  private final StringBuilder text = new StringBuilder();

  private EndRuler(double longestIn, int width) {
    int scale = SCALES[SCALES.length - 1];
    for (int i = SCALES.length - 1; i >= 0; i--) {
      if (longestIn * SCALES[i] <= width - LABELS - FIGURES) {
        scale = SCALES[i];
      }
    }
    this.perInch = scale;
  }

  static String of(End end, int width) {
    Optional<ThreadDimensions> thread = ThreadTable.find(end);
    OptionalDouble across = across(end, thread);
    if (across.isEmpty()) {
      return "  No width of it is published, so there is nothing to draw to scale.";
    }
    EndRuler ruler = new EndRuler(Math.max(1, Math.max(across.getAsDouble(), end.sizeIn())), width);
    ruler.scale(Math.max(1, Math.max(across.getAsDouble(), end.sizeIn())));
    ruler.bar(thread.isPresent() ? "across the male" : "lug to lug", across.getAsDouble(), '=');
    thread
        .flatMap(t -> present(t.male().taper().smallEndMajorIn()))
        .ifPresent(small -> ruler.bar("at its small end", small, '='));
    ruler.bar("size (only a name)", end.sizeIn(), '-');
    thread.flatMap(t -> present(t.threadsPerInch())).ifPresent(ruler::threads);
    return ruler.text.toString().stripTrailing();
  }

  private static OptionalDouble across(End end, Optional<ThreadDimensions> thread) {
    if (thread.isPresent()) {
      return thread.get().majorMaxIn();
    }
    return CouplingSize.find(end.family(), end.sizeIn())
        .map(CouplingSize::lugSpacingMm)
        .filter(OptionalDouble::isPresent)
        .map(mm -> OptionalDouble.of(mm.getAsDouble() / 25.4))
        .orElse(OptionalDouble.empty());
  }

  private static Optional<Double> present(OptionalDouble number) {
    return number.isPresent() ? Optional.of(number.getAsDouble()) : Optional.empty();
  }

  private void scale(double longestIn) {
    int inches = (int) Math.ceil(longestIn - 1e-9);
    StringBuilder numbers = new StringBuilder(" ".repeat(inches * perInch + 2));
    StringBuilder marks = new StringBuilder("-".repeat(inches * perInch + 1));
    for (int inch = 0; inch <= inches; inch++) {
      numbers.setCharAt(inch * perInch, (char) ('0' + inch));
      marks.setCharAt(inch * perInch, '+');
      if (inch < inches && perInch % 2 == 0) {
        marks.setCharAt(inch * perInch + perInch / 2, '\'');
      }
    }
    // The last inch is drawn only as far as something reaches into it.
    int reach = (int) Math.ceil(longestIn * perInch) + 1;
    line("inches", numbers.substring(0, Math.min(numbers.length(), reach + 1)));
    line("", marks.substring(0, Math.min(marks.length(), reach)));
  }

  private void bar(String label, double lengthIn, char stroke) {
    int columns = (int) Math.round(lengthIn * perInch);
    String drawn = "|" + String.valueOf(stroke).repeat(Math.max(0, columns - 1)) + "|";
    line(label, drawn + " " + plain(lengthIn));
  }

  /** One inch of them, so that they can be counted. */
  private void threads(double threadsPerInch) {
    StringBuilder drawn = new StringBuilder(" ".repeat(perInch));
    if (perInch / threadsPerInch >= 2) {
      for (int column = 0; column < perInch; column++) {
        double thread = (column + 0.5) / perInch * threadsPerInch;
        drawn.setCharAt(column, thread % 1 < 0.5 ? '/' : '\\');
      }
    } else {
      // Too narrow for flanks: one mark at each crest.
      for (double thread = 0.5; thread < threadsPerInch; thread++) {
        drawn.setCharAt((int) (thread / threadsPerInch * perInch), '^');
      }
    }
    line("threads in an inch", drawn + " " + plain(threadsPerInch));
  }

  private void line(String label, String drawn) {
    String shown = String.format(Locale.ROOT, "  %-" + (LABELS - 2) + "s%s", label, drawn);
    text.append(shown.stripTrailing()).append('\n');
  }

  /** A number with at most four decimals. */
  static String plain(double number) {
    return BigDecimal.valueOf(number)
        .setScale(4, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
