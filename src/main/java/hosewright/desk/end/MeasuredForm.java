package hosewright.desk.end;

import hosewright.desk.Refusals;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Given;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.Gender;
import hosewright.thread.Measurement;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;

/** Reads what somebody says of a male thread they measured. */
final class MeasuredForm {

  /** Stands in where a value was refused, so that the rest can still be looked at. */
  private static final Measurement STAND_IN = Measurement.caliper(2);

  private final Map<MeasuredField, String> said;
  private final Refusals refusals;

  /**
   * @param refusals takes everything that cannot be used
   */
  MeasuredForm(Map<MeasuredField, String> said, Refusals refusals) {
    this.said = said;
    this.refusals = refusals;
  }

  /** The measurement, without what was refused. */
  Measurement read() {
    Measurement across = refusals.read(this::across).orElse(STAND_IN);
    Measurement counted =
        with(
            across,
            MeasuredField.TPI,
            text -> Measures.threadsPerInch("tpi", text),
            Measurement::withThreadsPerInch);
    Measurement pitched =
        with(
            counted,
            MeasuredField.PITCH,
            text -> Measures.pitchMm("pitch", text),
            Measurement::withPitchMm);
    if (said.containsKey(MeasuredField.TPI) && said.containsKey(MeasuredField.PITCH)) {
      refusals.add(
          "pitch",
          said.get(MeasuredField.PITCH),
          "give " + Given.as("tpi") + " or " + Given.as("pitch") + ", not both");
    }
    Measurement shaped =
        with(pitched, MeasuredField.TAPER, MeasuredForm::tapered, Measurement::withTaper);
    Measurement trusted =
        with(
            shaped,
            MeasuredField.ERROR,
            text -> Measures.measuredIn("error", text),
            Measurement::withReadingError);
    return with(
        trusted.withGender(Gender.MALE).withStencil(of(MeasuredField.STENCIL).orElse("")),
        MeasuredField.GENDER,
        MeasuredForm::half,
        Measurement::withGender);
  }

  private Optional<String> of(MeasuredField field) {
    return Optional.ofNullable(said.get(field));
  }

  /** The measurement with what a field says; as it was where that says nothing or is refused. */
  private <T> Measurement with(
      Measurement before,
      MeasuredField field,
      Function<String, T> reader,
      BiFunction<Measurement, T, Measurement> adding) {
    return of(field)
        .flatMap(text -> refusals.read(() -> reader.apply(text)))
        .map(value -> adding.apply(before, value))
        .orElse(before);
  }

  private Measurement across() {
    Optional<String> od = of(MeasuredField.OD);
    Optional<String> wrap = of(MeasuredField.WRAP);
    if (od.isPresent() == wrap.isPresent()) {
      throw new BadInputException(
          "od",
          od.orElse(""),
          od.isPresent()
              ? "give " + Given.as("od") + " or " + Given.as("wrap") + ", not both"
              : "measure over the male thread and give %s 1.99in, or the paper strip %s 6.25in"
                  .formatted(Given.as("od"), Given.as("wrap")));
    }
    return od.isPresent()
        ? Measurement.caliper(Measures.measuredIn("od", od.get()))
        : Measurement.strip(Measures.measuredIn("wrap", wrap.get()));
  }

  private static boolean tapered(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "tapered", "taper" -> true;
      case "straight", "parallel" -> false;
      default ->
          throw new BadInputException(
              List.of(
                  new Problem(
                      "taper",
                      text,
                      "straight or tapered",
                      Nearest.to(text, List.of("straight", "tapered")))));
    };
  }

  private static Gender half(String text) {
    return Arrays.stream(Gender.values())
        .filter(gender -> gender != Gender.SEXLESS)
        .filter(gender -> gender.word().equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () -> new BadInputException("gender", text, "male: only a male can be measured"));
  }
}
