package hosewright.intake;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Which column of a route file says what, and in which unit.
 *
 * @param places the place of each of our columns in a row
 * @param units the unit of each measure
 * @param headings what the file calls each
 */
record RouteColumns(
    Map<String, Integer> places, Map<String, String> units, Map<String, String> headings) {
  static final String ALLOWED =
      "a heading such as distance (ft),elevation (ft),note, with ft or m for each measure";

  private static final String DISTANCE = "distance";
  private static final String ELEVATION = "elevation";
  private static final String NOTE = "note";
  private static final Map<String, String> WORDS =
      Map.of(
          DISTANCE,
          DISTANCE,
          "chainage",
          DISTANCE,
          "along",
          DISTANCE,
          ELEVATION,
          ELEVATION,
          "height",
          ELEVATION,
          "level",
          ELEVATION,
          NOTE,
          NOTE,
          "notes",
          NOTE,
          "remark",
          NOTE);

  /** The columns a heading names; what is wrong with it is added to the problems. */
  static Optional<RouteColumns> of(String file, List<String> heading, List<Problem> problems) {
    RouteColumns columns = new RouteColumns(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
    List<Problem> wrong = new ArrayList<>();
    for (int i = 0; i < heading.size(); i++) {
      columns.add(file + " heading", i, heading.get(i), wrong);
    }
    for (String needed : List.of(DISTANCE, ELEVATION)) {
      if (wrong.isEmpty() && !columns.places.containsKey(needed)) {
        wrong.add(Problem.of(file + " heading", String.join(",", heading), ALLOWED));
      }
    }
    problems.addAll(wrong);
    return wrong.isEmpty() ? Optional.of(columns) : Optional.empty();
  }

  private void add(String at, int place, String heading, List<Problem> wrong) {
    String[] words =
        heading.toLowerCase(Locale.ROOT).replaceAll("[\\s_()\\[\\]:.,-]+", " ").strip().split(" ");
    String column = WORDS.get(words[0]);
    if (column == null || words.length > 2) {
      wrong.add(new Problem(at, heading, ALLOWED, Nearest.to(words[0], WORDS.keySet())));
    } else if (places.putIfAbsent(column, place) != null) {
      wrong.add(Problem.of(at, heading, "each column stands once"));
    } else if (!column.equals(NOTE)) {
      headings.put(column, heading);
      if (words.length < 2 || !isLength(words[1])) {
        wrong.add(new Problem(at, heading, "the unit in the heading: ft or m", words[0] + " (ft)"));
      } else {
        units.put(column, words[1]);
      }
    }
  }

  private static boolean isLength(String unit) {
    try {
      return Measures.distanceFt("unit", "1 " + unit) > 0;
    } catch (BadInputException e) {
      return false;
    }
  }

  String distanceHeading() {
    return headings.get(DISTANCE);
  }

  String elevationHeading() {
    return headings.get(ELEVATION);
  }

  /** How far along a row lies, with its unit; empty where the cell is. */
  Optional<String> distance(List<String> cells) {
    return measure(DISTANCE, cells);
  }

  Optional<String> elevation(List<String> cells) {
    return measure(ELEVATION, cells);
  }

  String note(List<String> cells) {
    Integer place = places.get(NOTE);
    return place == null || place >= cells.size() ? "" : cells.get(place);
  }

  private Optional<String> measure(String column, List<String> cells) {
    int place = places.get(column);
    return place >= cells.size() || cells.get(place).isEmpty()
        ? Optional.empty()
        : Optional.of(cells.get(place) + " " + units.get(column));
  }
}
