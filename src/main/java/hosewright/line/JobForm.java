package hosewright.line;

import static hosewright.line.JobField.*;

import hosewright.hydraulics.Demand;
import hosewright.hydraulics.Suction;
import hosewright.line.EndPhrase.Phrase;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.Families;
import hosewright.thread.Family;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleBiFunction;

/**
 * Turns the answers of a form, as text, into a {@link Job}, or names everything wrong with them.
 */
public final class JobForm {
  private final Map<JobField, String> answers;
  private final List<Problem> problems = new ArrayList<>();

  private JobForm(Map<JobField, String> answers) {
    this.answers = answers;
  }

  /**
   * The job that the answers state.
   *
   * @param answers text by field; a field left out is left open
   * @throws BadInputException naming every missing or unusable answer
   */
  public static Job read(Map<JobField, String> answers) {
    return new JobForm(answers).job();
  }

  /** Checks one answer alone, for a form that is filled in step by step. */
  public static List<Problem> problemsOf(JobField field, String answer) {
    JobForm form = new JobForm(Map.of(field, answer));
    form.parts();
    return form.problems.stream().filter(problem -> problem.field().equals(field.word())).toList();
  }

  private Job job() {
    for (JobField field : JobField.values()) {
      if (field.required() && text(field).isEmpty()) {
        problems.add(new Problem(field.word(), "", "give " + field.meaning(), field.example()));
      }
    }
    Optional<Job> job = parts();
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
    return job.orElseThrow();
  }

  /** Reads every field, so that all problems are found in one go. */
  private Optional<Job> parts() {
    Optional<Phrase<SourceKind>> from = phrase(FROM, EndPhrase::source);
    Optional<Phrase<ApplianceKind>> to = phrase(TO, EndPhrase::appliance);
    OptionalDouble length = number(LENGTH, Measures::lengthFt);
    OptionalDouble rise = number(RISE, Measures::riseFt);
    OptionalDouble slack = number(SLACK, Measures::percent);
    OptionalDouble temperature = number(TEMPERATURE, Measures::temperatureF);
    Optional<Job.Suction> suction = suction(temperature);
    OptionalDouble flow = number(FLOW, Measures::flowGpm);
    OptionalDouble need = number(NEED, Measures::lossPsi);
    OptionalDouble tip = number(TIP, JobForm::tip);
    var supply = new SupplyForm(this::text, problems).supply();
    Job.Network network = new NetworkForm(this::text, problems).network();
    Job.Wishes wishes = wishes(network);
    Conditions conditions = new ConditionsForm(this::text, problems).conditions();
    Job.Service service =
        new Job.Service(
            read(USE, this::use).orElse(Use.WATER),
            text(FLUID).map(fluid -> fluid.toLowerCase(Locale.ROOT)).orElse("water"),
            temperature);
    List<String> accessories = read(ACCESSORIES, JobForm::list).orElse(List.of());
    Optional<LocalDate> date = read(DATE, JobForm::date);
    if (from.isEmpty()
        || to.isEmpty()
        || length.isEmpty()
        || flow.isEmpty()
        || need.isEmpty()
        || !problems.isEmpty()) {
      return Optional.empty();
    }
    Job.Run run =
        new Job.Run(length.getAsDouble(), rise.orElse(0), slack.orElse(Job.USUAL_SLACK), suction);
    Job job =
        new Job(
            text(TITLE).orElseGet(() -> from.get().end() + " to " + to.get().end()),
            from.get().kind(),
            from.get().end(),
            to.get().kind(),
            to.get().end(),
            run,
            flow.getAsDouble() * network.attack().map(Job.Attack::lines).orElse(1),
            need.getAsDouble(),
            tip,
            supply,
            network,
            wishes,
            conditions,
            service,
            accessories,
            text(CUSTOMER),
            date,
            text(DISTRICT));
    List<Problem> beyond = JobLimits.problemsOf(job, this::text);
    problems.addAll(beyond);
    return beyond.isEmpty() ? Optional.of(job) : Optional.empty();
  }

  /** The lift, if the atmosphere can hold it where the pump stands. */
  private Optional<Job.Suction> suction(OptionalDouble temperatureF) {
    OptionalDouble altitudeFt = number(ALTITUDE, Measures::altitudeFt);
    double waterF = temperatureF.orElse(Limit.WATER_TEMPERATURE_F.value());
    OptionalDouble liftFt =
        number(
            LIFT,
            (field, text) ->
                Suction.checkedLiftFt(
                    field,
                    Measures.lengthFt(field, text),
                    altitudeFt.orElse(0),
                    Math.min(Math.max(waterF, 32), 212)));
    return liftFt.isPresent()
        ? Optional.of(new Job.Suction(liftFt.getAsDouble(), altitudeFt.orElse(0)))
        : Optional.empty();
  }

  private Job.Wishes wishes(Job.Network network) {
    boolean branched = network.outlets() > 1 || network.attack().isPresent();
    return new Job.Wishes(
        read(SIZE, JobForm::sizes).orElse(List.of()),
        number(COUPLING_SIZE, Measures::sizeIn),
        read(HOSE_THREAD, this::family),
        number(SECTION, Measures::lengthFt),
        branched
            ? OptionalInt.of(network.outlets())
            : read(LINES, JobForm::lines).map(OptionalInt::of).orElse(OptionalInt.empty()),
        number(FRICTION_COEFFICIENT, JobForm::coefficient));
  }

  private Optional<String> text(JobField field) {
    return Optional.ofNullable(answers.get(field)).map(String::strip).filter(s -> !s.isEmpty());
  }

  private OptionalDouble number(JobField field, ToDoubleBiFunction<String, String> reader) {
    return read(field, (name, text) -> OptionalDouble.of(reader.applyAsDouble(name, text)))
        .orElse(OptionalDouble.empty());
  }

  private <K> Optional<Phrase<K>> phrase(JobField field, Function<String, Phrase<K>> reader) {
    return read(field, (name, text) -> reader.apply(text));
  }

  private <T> Optional<T> read(JobField field, BiFunction<String, String, T> reader) {
    Optional<String> text = text(field);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(reader.apply(field.word(), text.get()));
    } catch (BadInputException e) {
      for (Problem problem : e.problems()) {
        problems.add(
            new Problem(field.word(), problem.value(), problem.allowed(), problem.nearest()));
      }
      return Optional.empty();
    }
  }

  private Use use(String field, String text) {
    return Arrays.stream(Use.values())
        .filter(use -> use.name().equalsIgnoreCase(text))
        .findFirst()
        .orElseThrow(
            () ->
                refusal(
                    field,
                    text,
                    "it is fire, water or drinking",
                    Nearest.to(text, List.of("fire", "water", "drinking"))));
  }

  private String family(String field, String text) {
    return Families.find(text)
        .map(Family::code)
        .orElseThrow(
            () -> {
              List<String> codes = Families.all().stream().map(Family::code).toList();
              return refusal(
                  field,
                  text,
                  "it is a family such as " + String.join(", ", codes),
                  Nearest.to(text, codes));
            });
  }

  static List<Double> sizes(String field, String text) {
    return Arrays.stream(text.split("[,;]|\\bor\\b"))
        .map(size -> Measures.sizeIn(field, size.strip()))
        .distinct()
        .sorted()
        .toList();
  }

  private static int lines(String field, String text) {
    if (!text.matches("[1-3]")) {
      throw refusal(field, text, "a whole number from 1 to 3", "");
    }
    return Integer.parseInt(text);
  }

  private static double tip(String field, String text) {
    double tipIn = Measures.sizeIn(field, text);
    if (tipIn > Demand.SmoothBore.LARGEST_TIP_IN) {
      throw refusal(field, text, "over 0 up to 6 in", "");
    }
    return tipIn;
  }

  private static double coefficient(String field, String text) {
    try {
      double c = Double.parseDouble(text);
      if (c > 0 && c <= 5000) {
        return c;
      }
    } catch (NumberFormatException e) {
      // falls through to the one message for all unusable coefficients
    }
    throw refusal(
        field, text, "a plain number over 0 up to 5000, psi per 100 ft at 100 gpm", "15.5");
  }

  static LocalDate date(String field, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw refusal(field, text, "a day of the calendar as YYYY-MM-DD", "");
    }
  }

  private static List<String> list(String field, String text) {
    return Arrays.stream(text.split("[,;]"))
        .map(String::strip)
        .filter(s -> !s.isEmpty())
        .map(
            asked ->
                Asked.read(asked)
                    .orElseThrow(
                        () ->
                            refusal(
                                field,
                                asked,
                                "a device stands 'at source', as it does unasked, 'at appliance',"
                                    + " or at a station such as 'at 150 ft'",
                                "")))
        .toList();
  }

  static BadInputException refusal(String field, String value, String allowed, String nearest) {
    return new BadInputException(List.of(new Problem(field, value, allowed, nearest)));
  }
}
