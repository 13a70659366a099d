package hosewright.paper.drawing;

import hosewright.line.model.Hydraulics.Station;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.PressureDrawing.LimitLine;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;

/** Draws pressure over distance in letters. */
final class PressureText {
  private static final int ROWS = 17;
  private static final int MARGIN = 10;
  private static final int WIDEST = 90;
  private static final char FLOWING = '*';
  private static final char SHUT = 'o';
  private static final char BOTH = '@';

  private final List<Station> profile;
  private final List<LimitLine> limits;
  private final UnitSystem units;
  private final int columns;
  private final char[][] grid;
  private final double lowestPsi;
  private final double highestPsi;
  private final double longestFt;

  PressureText(List<Station> profile, List<LimitLine> limits, UnitSystem units, int width) {
    this.profile = profile;
    this.limits = limits;
    this.units = units;
    this.columns = Math.min(width, WIDEST) - MARGIN;
    this.grid = new char[ROWS][columns];
    this.lowestPsi = Math.min(0, all(profile, limits).min().orElse(0));
    this.highestPsi = Math.max(lowestPsi + 1, all(profile, limits).max().orElse(1));
    this.longestFt = Math.max(1e-9, profile.get(profile.size() - 1).distanceFt());
  }

  private static DoubleStream all(List<Station> profile, List<LimitLine> limits) {
    return DoubleStream.concat(
        profile.stream().flatMapToDouble(at -> DoubleStream.of(at.flowingPsi(), at.closedPsi())),
        limits.stream().mapToDouble(LimitLine::psi));
  }

  String drawn() {
    for (char[] row : grid) {
      Arrays.fill(row, ' ');
    }
    limits.forEach(limit -> Arrays.fill(grid[row(limit.psi())], limit.sign()));
    strokes(Station::closedPsi, SHUT);
    strokes(Station::flowingPsi, FLOWING);
    StringBuilder text = new StringBuilder();
    for (int row = 0; row < ROWS; row++) {
      text.append(String.format("%8s |", label(row)));
      text.append(String.valueOf(grid[row]).stripTrailing()).append('\n');
    }
    return text.append(distances()).append(legend()).toString();
  }

  private int row(double psi) {
    return (int) Math.round((highestPsi - psi) / (highestPsi - lowestPsi) * (ROWS - 1));
  }

  private int column(double distanceFt) {
    return (int) Math.round(distanceFt / longestFt * (columns - 1));
  }

  private void strokes(ToDoubleFunction<Station> psi, char sign) {
    for (int i = 1; i < profile.size(); i++) {
      Station from = profile.get(i - 1);
      Station to = profile.get(i);
      stroke(from, to, psi.applyAsDouble(from), psi.applyAsDouble(to), sign);
    }
  }

  /** From station to station; straight down where no hose lies between them. */
  private void stroke(Station from, Station to, double fromPsi, double toPsi, char sign) {
    int first = column(from.distanceFt());
    int last = column(to.distanceFt());
    int steps = Math.max(1, Math.max(last - first, Math.abs(row(toPsi) - row(fromPsi))));
    for (int i = 0; i <= steps; i++) {
      double share = (double) i / steps;
      int column = (int) Math.round(first + share * (last - first));
      mark(row(fromPsi + share * (toPsi - fromPsi)), column, sign);
    }
  }

  private void mark(int row, int column, char sign) {
    char there = grid[row][column];
    boolean other = sign == FLOWING && (there == SHUT || there == BOTH);
    grid[row][column] = other ? BOTH : sign;
  }

  /** The pressure of the limits in a row, the highest where two fall together. */
  private String label(int row) {
    double psi =
        limits.stream()
            .mapToDouble(LimitLine::psi)
            .filter(limit -> row(limit) == row)
            .max()
            .orElse(row == 0 ? highestPsi : row == ROWS - 1 ? lowestPsi : Double.NaN);
    return Double.isNaN(psi) ? "" : units.pressure().figure(psi);
  }

  private String distances() {
    String left = units.pressure().unit() + " ";
    String most = units.length().of(longestFt);
    int gap = Math.max(1, columns - 1 - most.length());
    return String.format("%9s|0%s%s%n", left, " ".repeat(gap), most)
        .replace(System.lineSeparator(), "\n");
  }

  private String legend() {
    StringBuilder legend = new StringBuilder();
    line(legend, FLOWING, "with water flowing");
    line(legend, SHUT, "with the nozzle shut");
    if (Arrays.stream(grid).anyMatch(row -> String.valueOf(row).indexOf(BOTH) >= 0)) {
      line(legend, BOTH, "both");
    }
    limits.forEach(
        limit ->
            line(legend, limit.sign(), limit.name() + ", " + units.pressure().of(limit.psi())));
    return legend.toString();
  }

  private static void line(StringBuilder legend, char sign, String words) {
    legend.append("          ").append(sign).append("  ").append(words).append('\n');
  }
}
