package hosewright.desk.end;

import hosewright.desk.Refusals;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.thread.Gender;
import hosewright.thread.Identification;
import hosewright.thread.Measurement;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Tells which end a measured male may be. */
public final class IdentifyEnd {

  /** Stands in where a value was refused, so that the rest can still be looked at. */
  private static final Measurement STAND_IN = Measurement.caliper(2);

  /**
   * The ends it may be, likeliest first.
   *
   * @param said what was measured, each in the words it was said in; without a half it is a male
   * @throws BadInputException naming everything that cannot be used
   */
  public Identification identify(Map<MeasuredField, String> said) {
    Refusals refusals = new Refusals();
    Measurement measured = refusals.read(() -> reading(said)).orElse(STAND_IN);
    Optional<Double> tpi =
        of(said, MeasuredField.TPI)
            .flatMap(t -> refusals.read(() -> Measures.threadsPerInch("tpi", t)));
    Optional<Double> pitchMm =
        of(said, MeasuredField.PITCH)
            .flatMap(t -> refusals.read(() -> Measures.pitchMm("pitch", t)));
    if (said.containsKey(MeasuredField.TPI) && said.containsKey(MeasuredField.PITCH)) {
      refusals.add("pitch", said.get(MeasuredField.PITCH), "give --tpi or --pitch, not both");
    }
    measured = tpi.isPresent() ? measured.withThreadsPerInch(tpi.get()) : measured;
    measured = pitchMm.isPresent() ? measured.withPitchMm(pitchMm.get()) : measured;
    Optional<Boolean> taper =
        of(said, MeasuredField.TAPER).flatMap(t -> refusals.read(() -> tapered(t)));
    measured = taper.isPresent() ? measured.withTaper(taper.get()) : measured;
    Optional<Double> error =
        of(said, MeasuredField.ERROR)
            .flatMap(t -> refusals.read(() -> Measures.measuredIn("error", t)));
    measured = error.isPresent() ? measured.withReadingError(error.get()) : measured;
    Optional<Gender> half =
        refusals.read(
            () -> of(said, MeasuredField.GENDER).map(IdentifyEnd::half).orElse(Gender.MALE));
    Measurement whole =
        measured
            .withStencil(of(said, MeasuredField.STENCIL).orElse(""))
            .withGender(half.orElse(Gender.MALE));
    Optional<Identification> found = refusals.read(() -> Identification.identify(whole));
    refusals.throwAny();
    return found.orElseThrow();
  }

  private static Optional<String> of(Map<MeasuredField, String> said, MeasuredField field) {
    return Optional.ofNullable(said.get(field));
  }

  private static Measurement reading(Map<MeasuredField, String> said) {
    Optional<String> od = of(said, MeasuredField.OD);
    Optional<String> wrap = of(said, MeasuredField.WRAP);
    if (od.isPresent() == wrap.isPresent()) {
      throw new BadInputException(
          "od",
          od.orElse(""),
          od.isPresent()
              ? "give --od or --wrap, not both"
              : "measure over the male thread and give --od 1.99in, or the paper strip --wrap"
                  + " 6.25in");
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
