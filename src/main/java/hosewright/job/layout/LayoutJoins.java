package hosewright.job.layout;

import hosewright.job.question.JobField;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where legs divide and meet by the names of points: puts legs that meet together as one, and every
 * other leg behind the one it begins at.
 */
final class LayoutJoins {
  private static final String IS = PumpForm.IS;
  private static final String PUMP = "pump";
  private static final String SPLIT = "split";
  private static final String JOIN = "join";
  private static final String APPLIANCE = "appliance";
  private static final List<String> KINDS = List.of(PUMP, SPLIT, JOIN, APPLIANCE);

  private final List<PointText> points;
  private final Map<String, LegText> legs;
  private final List<Problem> problems;

  /** Where legs end by name, before those that end alone let go of it. */
  private final List<String> endsNamed;

  private final Map<String, List<LegText>> members = new LinkedHashMap<>();

  LayoutJoins(List<PointText> points, Map<String, LegText> legs, List<Problem> problems) {
    this.points = points;
    this.legs = new LinkedHashMap<>(legs);
    this.problems = problems;
    points.forEach(this::words);
    this.legs.values().stream()
        .filter(leg -> !leg.points().meeting().isEmpty())
        .toList()
        .forEach(this::meeting);
    this.endsNamed =
        this.legs.values().stream()
            .flatMap(leg -> leg.points().ends().stream())
            .distinct()
            .toList();
    names().forEach(this::place);
  }

  /** Every leg, those that meet put together as one. */
  Map<String, LegText> legs() {
    return legs;
  }

  /** The legs that were put together, by the name of what they make. */
  Map<String, List<LegText>> members() {
    return members;
  }

  /** The points at which pumps stand. */
  List<PointText> pumps() {
    return points.stream().filter(LayoutJoins::isPump).toList();
  }

  private static String kind(PointText point) {
    return point.words().getOrDefault(IS, PUMP).strip();
  }

  private static boolean isPump(PointText point) {
    return kind(point).equals(PUMP);
  }

  private void words(PointText point) {
    List<String> allowed = new ArrayList<>(List.of(IS));
    if (kind(point).equals(APPLIANCE)) {
      PointText.OF_AN_APPLIANCE.forEach(field -> allowed.add(field.word()));
    } else if (!KINDS.contains(kind(point))) {
      unknownKind(point);
      return;
    } else if (isPump(point)) {
      allowed.addAll(PumpForm.WORDS);
    }
    point
        .words()
        .forEach(
            (word, said) -> {
              if (!allowed.contains(word)) {
                problems.add(
                    Problem.of(
                        "point " + point.name() + ": " + word,
                        said,
                        "left out: of what '" + IS + ": " + kind(point) + "' it says nothing"));
              }
            });
  }

  private void unknownKind(PointText point) {
    problems.add(
        new Problem(
            "point " + point.name() + ": " + IS,
            kind(point),
            String.join(", ", KINDS),
            Nearest.to(kind(point), KINDS)));
  }

  /** The same as if the legs behind which a leg begins had named the point where they end. */
  private void meeting(LegText leg) {
    List<String> names = leg.points().meeting();
    String point = String.join(" and ", names);
    for (String name : names) {
      LegText member = legs.get(name);
      if (member == null || name.equals(leg.name())) {
        List<String> others =
            legs.keySet().stream().filter(one -> !one.equals(leg.name())).toList();
        add(leg, "behind", name, "another leg: " + String.join(", ", others), others);
      } else if (member.points().ends().isPresent()) {
        String ends = member.points().ends().get();
        add(member, "ends", ends, "left out: " + leg.name() + " begins where it ends", List.of());
      } else {
        legs.put(
            name,
            with(
                member,
                member.behind(),
                new LegPoints(
                    member.points().begins(),
                    Optional.of(point),
                    member.points().pump(),
                    member.points().meeting())));
      }
    }
    legs.put(
        leg.name(),
        with(
            leg,
            Optional.empty(),
            new LegPoints(Optional.of(point), leg.points().ends(), leg.points().pump())));
  }

  /**
   * Every point that a leg names and no pump stands at, those first that lie nearest the source.
   */
  private Set<String> names() {
    Set<String> names = new LinkedHashSet<>();
    for (LegText leg : legs.values()) {
      leg.points().begins().ifPresent(names::add);
      leg.points().ends().ifPresent(names::add);
    }
    points.forEach(point -> names.add(point.name()));
    pumps().forEach(point -> names.remove(point.name()));
    return names;
  }

  private void place(String point) {
    List<LegText> ending =
        legs.values().stream()
            .filter(leg -> leg.points().ends().equals(Optional.of(point)))
            .toList();
    List<LegText> beginning =
        legs.values().stream()
            .filter(leg -> leg.points().begins().equals(Optional.of(point)))
            .toList();
    Optional<PointText> listed =
        points.stream().filter(one -> one.name().equals(point)).findFirst();
    Optional<String> kind = listed.map(LayoutJoins::kind);
    if (ending.isEmpty()) {
      noneEnds(point, beginning, listed);
    } else if (ending.size() == 1) {
      one(point, ending.get(0), beginning, kind);
    } else if (mayMeet(point, ending, kind)) {
      several(point, ending, beginning, listed);
    }
  }

  private void noneEnds(String point, List<LegText> beginning, Optional<PointText> listed) {
    List<String> named = new ArrayList<>(endsNamed);
    pumps().stream().map(PointText::name).filter(name -> !named.contains(name)).forEach(named::add);
    for (LegText leg : beginning) {
      add(leg, "begins", point, "a point where a leg ends" + listed(named), named);
    }
    if (beginning.isEmpty() && listed.isPresent()) {
      problems.add(
          Problem.of(
              "point " + point, "no leg ends there", "a leg that says 'ends: " + point + "'"));
    }
  }

  private List<String> othersThan(String point) {
    Set<String> others = names();
    pumps().forEach(pump -> others.add(pump.name()));
    others.remove(point);
    return List.copyOf(others);
  }

  private static String listed(List<String> names) {
    return names.isEmpty() ? ": no leg names one" : ": " + String.join(", ", names);
  }

  private void one(String point, LegText leg, List<LegText> beginning, Optional<String> kind) {
    if (kind.filter(JOIN::equals).isPresent()) {
      add(leg, "ends", point, "a point where another leg ends too: legs join there", List.of());
    } else if (beginning.isEmpty()) {
      add(
          leg,
          "ends",
          point,
          "a point where another leg begins or ends; the end of one line has 'to'",
          othersThan(point));
    }
    legs.put(leg.name(), with(leg, leg.behind(), leg.points().notEnding()));
    beginning.forEach(next -> behind(next, leg.name()));
  }

  private boolean mayMeet(String point, List<LegText> ending, Optional<String> kind) {
    int before = problems.size();
    String names = names(ending);
    if (kind.filter(SPLIT::equals).isPresent()) {
      problems.add(
          Problem.of(
              "point " + point + ": " + IS,
              SPLIT,
              JOIN + ": " + names + " end there, and a split has one inlet"));
    }
    LegText first = ending.get(0);
    for (LegText leg : ending) {
      if (leadsBack(leg, point, new HashSet<>())) {
        add(
            leg,
            "ends",
            point,
            "a point that the water has not passed: this leg runs in a ring",
            List.of());
        return false;
      }
    }
    for (LegText leg : ending) {
      if (!leg.behind().equals(first.behind())
          || !leg.points().begins().equals(first.points().begins())) {
        add(
            leg,
            "ends",
            point,
            "where a leg ends that begins where this one begins: "
                + first.name()
                + " begins "
                + begins(first)
                + ", "
                + leg.name()
                + " "
                + begins(leg),
            List.of());
      }
      legs.values().stream()
          .filter(other -> other.behind().equals(Optional.of(leg.name())))
          .forEach(
              other ->
                  add(
                      other,
                      "behind",
                      leg.name(),
                      "the legs that meet there: [" + String.join(", ", list(ending)) + "]",
                      List.of()));
      for (JobField field : PointText.OF_AN_APPLIANCE) {
        if (leg.answers().containsKey(field)) {
          add(
              leg,
              field.word(),
              leg.answers().get(field),
              "said where " + names + " meet, or of the leg that begins there",
              List.of());
        }
      }
      if (!leg.copies().isBlank()) {
        add(leg, "copies", leg.copies(), "left out of a leg that meets others", List.of());
      }
      leg.points()
          .pump()
          .forEach(
              (word, said) ->
                  add(
                      leg,
                      word,
                      said,
                      "left out of a leg that meets others: no pump stands in one of them",
                      List.of()));
    }
    return problems.size() == before;
  }

  /** Whether water that comes to a leg has passed a point. */
  private boolean leadsBack(LegText leg, String point, Set<String> passed) {
    if (leg.points().begins().equals(Optional.of(point)) || !passed.add(leg.name())) {
      return true;
    }
    return legs.values().stream()
        .filter(
            before ->
                leg.behind().equals(Optional.of(before.name()))
                    || leg.points().begins().isPresent()
                        && leg.points().begins().equals(before.points().ends()))
        .anyMatch(before -> leadsBack(before, point, new HashSet<>(passed)));
  }

  private static String begins(LegText leg) {
    return leg.points().begins().or(leg::behind).map(name -> "at " + name).orElse("at the source");
  }

  private void several(
      String point, List<LegText> ending, List<LegText> beginning, Optional<PointText> listed) {
    boolean appliance = listed.map(LayoutJoins::kind).filter(APPLIANCE::equals).isPresent();
    String name = names(ending);
    if (appliance && !beginning.isEmpty()) {
      add(beginning.get(0), "begins", point, "left out: an appliance stands there", List.of());
    } else if (!appliance && beginning.size() != 1) {
      problems.add(
          Problem.of(
              "point " + point,
              beginning.isEmpty() ? "no leg begins there" : names(beginning) + " begin there",
              "one leg that begins where "
                  + name
                  + " meet: a siamese has one outlet"
                  + (beginning.isEmpty()
                      ? "; an appliance of several inlets is listed under points, 'is: appliance'"
                          + " with to, flow and need"
                      : ", and what divides the water stands at the end of a leg")));
      return;
    }
    Map<JobField, String> answers = new LinkedHashMap<>();
    if (appliance) {
      PointText.OF_AN_APPLIANCE.forEach(
          field ->
              Optional.ofNullable(listed.get().words().get(field.word()))
                  .ifPresent(answer -> answers.put(field, answer)));
    }
    LegText first = ending.get(0);
    putTogether(ending, new LegText(name, first.behind(), "", answers, first.points().notEnding()));
    beginning.forEach(next -> behind(next, name));
  }

  private void putTogether(List<LegText> ending, LegText together) {
    Map<String, LegText> so = new LinkedHashMap<>();
    legs.forEach(
        (name, leg) -> {
          if (name.equals(ending.get(0).name())) {
            so.put(together.name(), together);
          } else if (!ending.contains(leg)) {
            so.put(name, leg);
          }
        });
    legs.clear();
    legs.putAll(so);
    members.put(together.name(), ending);
  }

  private void behind(LegText leg, String before) {
    legs.put(leg.name(), with(leg, Optional.of(before), leg.points().notBeginning()));
  }

  private static LegText with(LegText leg, Optional<String> behind, LegPoints points) {
    return new LegText(leg.name(), behind, leg.copies(), leg.answers(), points);
  }

  private static List<String> list(List<LegText> some) {
    return some.stream().map(LegText::name).toList();
  }

  private static String names(List<LegText> some) {
    return String.join(" and ", list(some));
  }

  private void add(LegText leg, String word, String value, String allowed, List<String> nearest) {
    problems.add(
        new Problem("leg " + leg.name() + ": " + word, value, allowed, Nearest.to(value, nearest)));
  }
}
