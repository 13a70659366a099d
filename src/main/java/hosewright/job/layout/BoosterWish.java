package hosewright.job.layout;

import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Pumps from the catalogue that a leg is to have on its way.
 *
 * @param places where each stands; none where the plan finds how many and where
 */
public record BoosterWish(List<Place> places) {
  static final String PUMP = "pump";
  static final String BOOSTERS = "boosters";
  private static final String AS_NEEDED = "as needed";
  private static final String ANY = "booster";
  private static final Pattern PLACE = Pattern.compile("(.+?)\\s+at\\s+(.+)");

  public BoosterWish {
    places = List.copyOf(places);
  }

  /**
   * A pump in its place.
   *
   * @param item its item number; empty for any that does
   * @param atFt how far along the ground from where the leg begins, ft
   */
  public record Place(Optional<String> item, double atFt) {}

  /** Whether the plan finds how many and where. */
  public boolean asNeeded() {
    return places.isEmpty();
  }

  /**
   * What a leg wishes; empty where it wishes none, or says it in words not understood.
   *
   * @param lengthFt of the leg along the ground, ft
   */
  static Optional<BoosterWish> read(LegText leg, double lengthFt, List<Problem> problems) {
    String boosters = leg.points().pump().getOrDefault(BOOSTERS, "").strip();
    String pumps = leg.points().pump().getOrDefault(PUMP, "").strip();
    if (!boosters.isEmpty() && !boosters.equals(AS_NEEDED)) {
      problems.add(
          new Problem(
              in(leg, BOOSTERS), boosters, "as needed; or 'pump: ITEM at 1800 ft'", AS_NEEDED));
    }
    if (!boosters.isEmpty()) {
      return Optional.of(new BoosterWish(List.of()));
    }
    List<Place> places = new ArrayList<>();
    for (String one : pumps.isEmpty() ? new String[0] : pumps.split("[,;]")) {
      place(leg, one.strip(), lengthFt, problems).ifPresent(places::add);
    }
    for (int i = 1; i < places.size(); i++) {
      if (places.get(i).atFt() <= places.get(i - 1).atFt()) {
        problems.add(Problem.of(in(leg, PUMP), pumps, "pumps in the order water meets them"));
      }
    }
    return places.isEmpty() ? Optional.empty() : Optional.of(new BoosterWish(places));
  }

  private static Optional<Place> place(
      LegText leg, String text, double lengthFt, List<Problem> problems) {
    Matcher said = PLACE.matcher(text);
    if (!said.matches()) {
      problems.add(
          new Problem(
              in(leg, PUMP),
              text,
              "an item of the catalogue, or 'booster' for any, and its place",
              text + " at 1800 ft"));
      return Optional.empty();
    }
    try {
      double atFt = Measures.lengthFt(PUMP, said.group(2));
      if (atFt >= lengthFt) {
        problems.add(
            Problem.of(
                in(leg, PUMP), text, "before the leg ends, at " + Math.round(lengthFt) + " ft"));
        return Optional.empty();
      }
      String item = said.group(1).strip();
      return Optional.of(new Place(Optional.of(item).filter(name -> !name.equals(ANY)), atFt));
    } catch (BadInputException e) {
      e.problems()
          .forEach(
              one -> problems.add(new Problem(in(leg, PUMP), text, one.allowed(), one.nearest())));
      return Optional.empty();
    }
  }

  private static String in(LegText leg, String word) {
    return "leg " + leg.name() + ": " + word;
  }
}
