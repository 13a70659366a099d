package hosewright.job.question;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the places of a route: {@code 0 ft at 0 ft; -40 ft at 300 ft, road 2 lanes; 5 ft at 500
 * ft}, each a height, a distance from the source and perhaps a note.
 */
final class RouteForm {
  private static final String FORM =
      "places such as '-40 ft at 300 ft', with a note behind a comma, separated by semicolons; or"
          + " the name of a CSV file with the columns distance (ft), elevation (ft) and note";
  private static final int MOST_PLACES = 1_000;

  /** Hose does not climb more than it is long. */
  private static final double ROUNDING_FT = 1e-6;

  private static final Pattern PLACE =
      Pattern.compile(
          "(.+?)\\s+at\\s+([-+]?[0-9](?:[0-9.,]*[0-9])?\\s*[^\\s,]*)(?:\\s*,\\s*(.*))?");

  private final String field;
  private final List<Problem> problems = new ArrayList<>();
  private final List<Route.Place> places = new ArrayList<>();

  RouteForm(String field) {
    this.field = field;
  }

  /** Whether a text lists places, rather than naming a file. */
  static boolean lists(String text) {
    return text.contains(";") || PLACE.matcher(text.strip()).matches();
  }

  /**
   * The route.
   *
   * @throws BadInputException naming every place that cannot be used
   */
  Route read(String text) {
    if (!lists(text)) {
      throw AnswerReading.refusal(field, text, FORM, "");
    }
    String[] rows = text.split(";");
    if (rows.length > MOST_PLACES) {
      throw AnswerReading.refusal(
          field, rows.length + " places", "at most " + MOST_PLACES + " places", "");
    }
    for (String row : rows) {
      if (!row.isBlank()) {
        place(row.strip()).ifPresent(place -> add(row.strip(), place));
      }
    }
    if (problems.isEmpty() && places.size() < 2) {
      refuse(text, "two places or more: the source, the appliance and what lies between", "");
    }
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return new Route(places);
  }

  private Optional<Route.Place> place(String row) {
    Matcher place = PLACE.matcher(row);
    if (!place.matches()) {
      refuse(row, FORM, JobField.ROUTE.example());
      return Optional.empty();
    }
    try {
      double elevationFt = Measures.altitudeFt(field, place.group(1));
      double alongFt = Measures.distanceFt(field, place.group(2));
      String note = place.group(3) == null ? "" : place.group(3).strip();
      return Optional.of(new Route.Place(alongFt, elevationFt, note));
    } catch (BadInputException e) {
      e.problems().forEach(problem -> refuse(row, problem.allowed(), problem.nearest()));
      return Optional.empty();
    }
  }

  /** Adds a place, wherever it lies, so that the next is held against it and not to one farther. */
  private void add(String row, Route.Place place) {
    if (places.isEmpty() && problems.isEmpty() && place.alongFt() != 0) {
      refuse(row, "the source first, at 0 ft", "");
    }
    if (!places.isEmpty()) {
      Route.Place before = places.get(places.size() - 1);
      double onFt = place.alongFt() - before.alongFt();
      if (onFt <= 0) {
        refuse(row, "a place farther from the source than the one before", "");
      } else if (Math.abs(place.elevationFt() - before.elevationFt()) > onFt + ROUNDING_FT) {
        refuse(row, "no more up or down than along the ground from the place before", "");
      }
    }
    places.add(place);
  }

  private void refuse(String row, String allowed, String nearest) {
    problems.add(new Problem(field, row, allowed, nearest));
  }
}
