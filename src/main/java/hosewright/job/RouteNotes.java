package hosewright.job;

import hosewright.csv.ReferenceTable;
import hosewright.job.question.JobField;
import hosewright.job.question.Route;
import hosewright.problem.Problem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the notes of a route ask for: {@code road 2 lanes} is a ramp over two lanes where the hose
 * passes it. Other notes are only read.
 */
final class RouteNotes {
  private static final Pattern LANES = Pattern.compile("(\\D*?)[\\s,]*(\\d{1,2})\\s*lanes?");
  private static final Map<String, String> GOODS = goods();

  private final double slack;
  private final List<Problem> problems;
  private final List<String> asked = new ArrayList<>();

  private RouteNotes(double slack, List<Problem> problems) {
    this.slack = slack;
    this.problems = problems;
  }

  /**
   * Goods as a buyer would ask for them, with their places along the hose.
   *
   * @param slack extra hose as a share of the way
   * @param beforeFt how much of the way lies before a wye, or all of it
   * @param problems what cannot be asked for is added here
   */
  static List<String> goods(Route route, double slack, double beforeFt, List<Problem> problems) {
    RouteNotes notes = new RouteNotes(slack, problems);
    route.places().forEach(place -> notes.read(place, beforeFt));
    return notes.asked;
  }

  private void read(Route.Place place, double beforeFt) {
    String note = place.note().toLowerCase(Locale.ROOT).strip();
    Matcher lanes = LANES.matcher(note);
    boolean counted = lanes.matches();
    Optional<String> goods =
        Optional.ofNullable(GOODS.get(counted ? lanes.group(1).strip() : note));
    if (goods.isEmpty()) {
      return;
    }
    if (!counted || Integer.parseInt(lanes.group(2)) == 0) {
      refuse(place, "how many lanes it has, as in '" + note + " 2 lanes'");
    } else if (place.alongFt() <= 0 || place.alongFt() >= beforeFt) {
      refuse(
          place,
          "a place between the source and the end of its hose; ask for what lies behind"
              + " a wye by count, as in accessories '4 x ramp'");
    } else {
      asked.add(
          goods.get() + " over " + lanes.group(2) + " lanes at " + hoseFt(place.alongFt()) + " ft");
    }
  }

  /** Hose laid up to a place, ft, to a tenth. */
  private String hoseFt(double alongFt) {
    return BigDecimal.valueOf(alongFt * (1 + slack))
        .setScale(1, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }

  private void refuse(Route.Place place, String allowed) {
    problems.add(Problem.of(JobField.ROUTE.word(), place.note(), allowed));
  }

  private static Map<String, String> goods() {
    Map<String, String> goods = new LinkedHashMap<>();
    ReferenceTable.rows("line/route-notes.csv", row -> Map.entry(row.get("word"), row.get("goods")))
        .forEach(one -> goods.put(one.getKey(), one.getValue()));
    return goods;
  }
}
