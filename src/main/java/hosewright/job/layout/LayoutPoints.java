package hosewright.job.layout;

import hosewright.job.question.JobField;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The pumps of a layout as it was written down, and which leg ends and begins at each. */
final class LayoutPoints {
  private final List<PointText> points;
  private final Map<String, LegText> legs;
  private final Optional<DraftText> draft;
  private final List<Problem> problems;

  /**
   * @param draft how water is drawn, where the first leg draws it from below
   */
  LayoutPoints(
      List<PointText> points,
      Map<String, LegText> legs,
      Optional<DraftText> draft,
      List<Problem> problems) {
    this.points = points;
    this.legs = legs;
    this.draft = draft;
    this.problems = problems;
  }

  /** The legs with every leg behind the one it begins at, whichever way that was said. */
  Map<String, LegText> placed() {
    points.forEach(this::named);
    Map<String, LegText> placed = new LinkedHashMap<>();
    legs.forEach((name, leg) -> placed.put(name, placed(leg)));
    return placed;
  }

  private void named(PointText point) {
    if (points.stream().filter(other -> other.name().equals(point.name())).count() > 1) {
      add("point", point.name(), "a name of its own: another point is called the same", "");
    }
    List<String> ending = ending(point.name());
    if (ending.size() != 1) {
      add(
          "point " + point.name(),
          ending.isEmpty() ? "no leg ends there" : String.join(" and ", ending) + " end there",
          "one leg that says 'ends: " + point.name() + "': it feeds the pump's intake",
          "");
    }
    if (legs.values().stream().noneMatch(leg -> beginsAt(leg, point.name(), ending))) {
      add(
          "point " + point.name(),
          "no leg begins there",
          "a leg that says 'begins: "
              + point.name()
              + "', or the leg before it has an appliance"
              + " of its own",
          "");
    }
  }

  private List<String> ending(String point) {
    return legs.values().stream()
        .filter(leg -> leg.points().ends().equals(Optional.of(point)))
        .map(LegText::name)
        .toList();
  }

  private static boolean beginsAt(LegText leg, String point, List<String> ending) {
    return leg.points().begins().equals(Optional.of(point))
        || leg.behind().filter(ending::contains).isPresent();
  }

  private LegText placed(LegText leg) {
    leg.points().ends().ifPresent(point -> known(leg, "ends", point));
    if (leg.points().begins().isEmpty()) {
      return leg;
    }
    String point = leg.points().begins().get();
    if (leg.behind().isPresent()) {
      add(
          "leg " + leg.name() + ": begins",
          point,
          "left out beside behind, which says where it begins",
          "");
      return leg;
    }
    known(leg, "begins", point);
    List<String> ending = ending(point);
    return ending.isEmpty() ? leg : leg.behind(ending.get(0));
  }

  private void known(LegText leg, String word, String point) {
    List<String> names = points.stream().map(PointText::name).toList();
    if (!names.contains(point)) {
      add(
          "leg " + leg.name() + ": " + word,
          point,
          names.isEmpty()
              ? "a point listed under points: there is none"
              : "a point listed under points: " + String.join(", ", names),
          Nearest.to(point, names));
    }
  }

  /**
   * The pumps, by the leg that ends at each.
   *
   * @param placed the legs, each behind the one it begins at
   */
  Map<String, LayoutPump> pumps(Map<String, LegText> placed) {
    Map<String, LayoutPump> pumps = new LinkedHashMap<>();
    for (PointText point : points) {
      List<String> ending = ending(point.name());
      boolean draws = !ending.isEmpty() && placed.get(ending.get(0)).behind().isEmpty();
      new PumpForm(
              point.name(),
              "point " + point.name(),
              point.words(),
              draft.filter(one -> draws),
              problems)
          .pump()
          .filter(pump -> !ending.isEmpty())
          .ifPresent(pump -> pumps.put(ending.get(0), pump));
    }
    placed.values().forEach(leg -> brought(leg, placed, pumps));
    return pumps;
  }

  /** A pump that a leg brings by itself. */
  private void brought(LegText leg, Map<String, LegText> placed, Map<String, LayoutPump> pumps) {
    Map<String, String> words = new LinkedHashMap<>(leg.points().pump());
    words.keySet().removeAll(List.of(BoosterWish.PUMP, BoosterWish.BOOSTERS));
    Optional.ofNullable(leg.answers().get(JobField.PUMP_CURVE))
        .ifPresent(curve -> words.put(PumpForm.CURVE, curve));
    if (words.isEmpty()) {
      return;
    }
    String field = "leg " + leg.name() + ": " + words.keySet().iterator().next();
    String said = words.values().iterator().next();
    if (leg.behind().isEmpty()) {
      add(
          field,
          said,
          "said above the legs, where the leg begins at the source; a pump on the way stands"
              + " between two legs",
          "");
      return;
    }
    String before = leg.behind().get();
    List<String> others =
        placed.values().stream()
            .filter(other -> other != leg && other.behind().equals(leg.behind()))
            .map(LegText::name)
            .toList();
    if (!others.isEmpty() || pumps.containsKey(before)) {
      add(
          field,
          said,
          pumps.containsKey(before)
              ? "said once, of the point where " + before + " ends"
              : "said of a point of its own, 'is: pump': "
                  + String.join(", ", others)
                  + " begins there too",
          "");
      return;
    }
    boolean draws = placed.containsKey(before) && placed.get(before).behind().isEmpty();
    new PumpForm(
            "pump before " + leg.name(),
            "leg " + leg.name(),
            words,
            draft.filter(one -> draws),
            problems)
        .pump()
        .ifPresent(pump -> pumps.put(before, pump));
  }

  /**
   * Whether each pump has a discharge for each line behind it.
   *
   * @param copies of each leg, by name
   */
  void enoughDischarges(
      Map<String, LayoutPump> pumps, Map<String, LegText> placed, Map<String, Integer> copies) {
    pumps.forEach(
        (before, pump) -> {
          List<LegText> behind = new ArrayList<>();
          placed.values().stream()
              .filter(leg -> leg.behind().equals(Optional.of(before)))
              .forEach(behind::add);
          int lines = behind.stream().mapToInt(leg -> copies.getOrDefault(leg.name(), 1)).sum();
          if (lines > pump.discharges().size()) {
            add(
                "point " + pump.name() + ": " + PumpForm.DISCHARGES,
                pump.discharges().size() + " discharges",
                "one for each of the "
                    + lines
                    + " lines that begin there ("
                    + String.join(", ", behind.stream().map(LegText::name).toList())
                    + ")",
                lines + " x " + pump.discharges().get(0));
          }
        });
  }

  private void add(String field, String value, String allowed, String nearest) {
    problems.add(new Problem(field, value, allowed, nearest));
  }
}
