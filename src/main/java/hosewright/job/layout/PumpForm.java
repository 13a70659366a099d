package hosewright.job.layout;

import hosewright.hydraulics.PumpCurve;
import hosewright.hydraulics.RelayPump;
import hosewright.hydraulics.suction.Drafting;
import hosewright.job.question.JobField;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what is said of a pump in a layout. */
public final class PumpForm {
  static final String IS = "is";
  static final String INTAKE = "intake";
  static final String DISCHARGES = "discharges";
  static final String CURVE = JobField.PUMP_CURVE.word();
  static final String RELIEF = "relief";
  static final String LEAST_INTAKE = "least-intake";
  static final String NPSH = "npsh";

  /** What may be said of a pump where legs are listed. */
  public static final List<String> WORDS =
      List.of(IS, INTAKE, DISCHARGES, CURVE, RELIEF, LEAST_INTAKE, NPSH);

  /** What a leg may say of the pump where it begins. */
  public static final List<String> OF_A_LEG =
      List.of(INTAKE, DISCHARGES, RELIEF, LEAST_INTAKE, BoosterWish.PUMP, BoosterWish.BOOSTERS);

  private static final int MOST_DISCHARGES = 12;
  private static final Pattern SEVERAL = Pattern.compile("(\\d{1,2})\\s*(?:x|×)\\s*(.+)");

  private final String name;
  private final String place;
  private final Map<String, String> words;
  private final Optional<DraftText> draft;
  private final List<Problem> problems;

  /**
   * @param name what legs call the pump
   * @param place where it is spoken of: {@code point pump 2}
   * @param draft how it draws its water, where it draws it from below
   */
  PumpForm(
      String name,
      String place,
      Map<String, String> words,
      Optional<DraftText> draft,
      List<Problem> problems) {
    this.name = name;
    this.place = place;
    this.words = words;
    this.draft = draft;
    this.problems = problems;
  }

  /** The pump; empty, with its problems told, where it cannot be read. */
  Optional<LayoutPump> pump() {
    int before = problems.size();
    Optional<End> intake =
        needed(INTAKE, "the end that the leg before it is coupled to", "4.5 NH male")
            .flatMap(text -> read(INTAKE, text, (field, end) -> End.parse(end)));
    List<End> discharges =
        needed(DISCHARGES, "the ends that lines begin at behind it", "2 x 2.5 NH male")
            .map(this::discharges)
            .orElse(List.of());
    Optional<PumpCurve> curve =
        needed(CURVE, "what it adds to its intake", JobField.PUMP_CURVE.example())
            .flatMap(
                text ->
                    read(
                        CURVE,
                        text,
                        (field, said) -> new PumpCurve(JobField.PUMP_CURVE.read(said))));
    Optional<Double> relief =
        said(RELIEF).flatMap(text -> read(RELIEF, text, Measures::pressurePsi));
    Optional<Double> least =
        said(LEAST_INTAKE).flatMap(text -> read(LEAST_INTAKE, text, Measures::lossPsi));
    Optional<Double> npshFt = said(NPSH).flatMap(text -> read(NPSH, text, Measures::lengthFt));
    said(draft.isPresent() ? LEAST_INTAKE : NPSH)
        .ifPresent(
            text ->
                problems.add(
                    Problem.of(
                        in(draft.isPresent() ? LEAST_INTAKE : NPSH),
                        text,
                        draft.isPresent()
                            ? "npsh instead, the suction head its maker states: this pump draws"
                                + " from open water"
                            : "least-intake instead: this pump is fed by a line under pressure")));
    Optional<Drafting> drafting =
        draft.map(one -> one.by(npshFt.map(OptionalDouble::of).orElse(OptionalDouble.empty())));
    if (problems.size() > before || intake.isEmpty() || curve.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new LayoutPump(
            name,
            intake.get(),
            discharges,
            curve.get(),
            drafting
                .map(Drafting::leastIntakePsi)
                .orElseGet(() -> least.orElse(RelayPump.LEAST_INTAKE_PSI)),
            relief.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            drafting));
  }

  private Optional<String> said(String word) {
    return Optional.ofNullable(words.get(word)).filter(text -> !text.isBlank());
  }

  private Optional<String> needed(String word, String meaning, String example) {
    Optional<String> said = said(word);
    if (said.isEmpty()) {
      problems.add(new Problem(in(word), "", "give " + meaning, example));
    }
    return said;
  }

  private List<End> discharges(String text) {
    List<End> ends = new ArrayList<>();
    for (String one : text.split("[,;]")) {
      Matcher several = SEVERAL.matcher(one.strip());
      int count = several.matches() ? Integer.parseInt(several.group(1)) : 1;
      String end = several.matches() ? several.group(2) : one.strip();
      if (count < 1 || count > MOST_DISCHARGES) {
        problems.add(
            Problem.of(in(DISCHARGES), one.strip(), "1 to " + MOST_DISCHARGES + " of an end"));
      } else {
        read(DISCHARGES, end, (field, said) -> End.parse(said))
            .ifPresent(found -> ends.addAll(Collections.nCopies(count, found)));
      }
    }
    return ends;
  }

  private <T> Optional<T> read(String word, String text, BiFunction<String, String, T> reader) {
    try {
      return Optional.of(reader.apply(word, text));
    } catch (BadInputException e) {
      for (Problem problem : e.problems()) {
        problems.add(new Problem(in(word), text, problem.allowed(), problem.nearest()));
      }
      return Optional.empty();
    }
  }

  private String in(String word) {
    return place + ": " + word;
  }
}
