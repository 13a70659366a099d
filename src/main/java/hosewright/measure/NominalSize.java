package hosewright.measure;

import hosewright.csv.ReferenceTable;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads nominal sizes, which are names more than measurements. */
final class NominalSize {
  private static final Range SIZE =
      Range.above(0, 60, TradeUnit.INCH, "2.5 in").in(TradeUnit.INCH, TradeUnit.MILLIMETRE);
  private static final Pattern DN = Pattern.compile("(?i)\\s*DN\\s*(\\d+)\\s*");

  private NominalSize() {}

  static double read(String field, String text) {
    Matcher dn = DN.matcher(text == null ? "" : text);
    String written = dn.matches() ? dn.group(1) + " mm" : text;
    Numeral numeral = SIZE.numeral(field, written);
    double number = numeral.number().getAsDouble();
    if (TradeUnit.labelled(numeral.unitText()) == TradeUnit.MILLIMETRE) {
      Double known = Table.INCHES_BY_MILLIMETRES.get(number);
      if (known != null) {
        return known;
      }
    }
    double sizeIn = SIZE.readBareAllowed(field, written);
    // An unlisted metric size keeps its own measure; more decimals would only pretend.
    return numeral.unitText().isEmpty() ? sizeIn : Math.round(sizeIn * 1000) / 1000.0;
  }

  /** What a metric size stands for, in; its own measure where none is listed. */
  static double inches(double millimetres) {
    return Table.INCHES_BY_MILLIMETRES.getOrDefault(millimetres, millimetres / 25.4);
  }

  /** Loaded only when a metric size is read. */
  private static final class Table {
    static final Map<Double, Double> INCHES_BY_MILLIMETRES = load();

    private static Map<Double, Double> load() {
      return ReferenceTable.rows("measure/metric-nominal-sizes.csv", row -> row).stream()
          .collect(
              Collectors.toMap(
                  row -> Double.valueOf(row.get("mm")), row -> Double.valueOf(row.get("size_in"))));
    }
  }
}
