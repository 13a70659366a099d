package hosewright.command;

import hosewright.desk.Refusals;
import hosewright.measure.Measures;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.thread.Candidate;
import hosewright.thread.Gender;
import hosewright.thread.Identification;
import hosewright.thread.Measurement;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells which end a measured male may be. */
final class EndIdentifyCommand extends ShellCommand {

  /** Stands in where a value was refused, so that the rest can still be looked at. */
  private static final Measurement STAND_IN = Measurement.caliper(2);

  EndIdentifyCommand() {
    super(
        CommandSpec.of(
                "end identify",
                Group.IDENTIFY,
                "Tells which end a measured male may be, likeliest first",
                "end identify --od 1.99in --tpi 9")
            .alias("identify")
            .with(
                OptionSpec.value("od", "LENGTH", "diameter over the male thread: 1.99in, 50.5mm"),
                OptionSpec.value(
                    "wrap", "LENGTH", "length of paper that just goes round it: 6.25in"),
                OptionSpec.value("tpi", "N", "threads counted in one inch: 9, 11.5"),
                OptionSpec.value("pitch", "LENGTH", "crest to crest, instead of --tpi: 2.82mm"),
                OptionSpec.value("taper", "SHAPE", "straight, or tapered: narrower at its end")
                    .completing("straight", "tapered"),
                OptionSpec.value("stencil", "TEXT", "what is stamped or printed on the part"),
                OptionSpec.value("error", "LENGTH", "how far the reading may be off")
                    .withDefaultSaid("0.02in by caliper, 0.06in by paper strip"),
                OptionSpec.value("gender", "HALF", "which half was measured: only a male can be")
                    .withDefault("male")
                    .completing("male")));
  }

  @Override
  protected Answer answer(Invocation in) {
    Identification found = identify(in);
    return Answer.of(found, screen -> text(found, screen));
  }

  private static Identification identify(Invocation in) {
    Refusals refusals = new Refusals();
    Measurement measured = refusals.read(() -> reading(in)).orElse(STAND_IN);
    Optional<Double> tpi =
        in.value("tpi").flatMap(t -> refusals.read(() -> Measures.threadsPerInch("tpi", t)));
    Optional<Double> pitchMm =
        in.value("pitch").flatMap(t -> refusals.read(() -> Measures.pitchMm("pitch", t)));
    if (in.given("tpi") && in.given("pitch")) {
      refusals.add("pitch", in.required("pitch"), "give --tpi or --pitch, not both");
    }
    measured = tpi.isPresent() ? measured.withThreadsPerInch(tpi.get()) : measured;
    measured = pitchMm.isPresent() ? measured.withPitchMm(pitchMm.get()) : measured;
    Optional<Boolean> taper = in.value("taper").flatMap(t -> refusals.read(() -> tapered(t)));
    measured = taper.isPresent() ? measured.withTaper(taper.get()) : measured;
    Optional<Double> error =
        in.value("error").flatMap(t -> refusals.read(() -> Measures.measuredIn("error", t)));
    measured = error.isPresent() ? measured.withReadingError(error.get()) : measured;
    Optional<Gender> half = refusals.read(() -> half(in.required("gender")));
    Measurement whole =
        measured.withStencil(in.value("stencil").orElse("")).withGender(half.orElse(Gender.MALE));
    Optional<Identification> found = refusals.read(() -> Identification.identify(whole));
    refusals.throwAny();
    return found.orElseThrow();
  }

  private static Measurement reading(Invocation in) {
    Optional<String> od = in.value("od");
    Optional<String> wrap = in.value("wrap");
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

  private static String text(Identification found, Screen screen) {
    Prose text = new Prose(screen);
    text.line(String.format(Locale.ROOT, "%.3f in across the male.", found.measuredIn()));
    if (!found.candidates().isEmpty()) {
      Table table =
          Table.of("may be", "measures, in", "reading off by, in", "threads per inch", "likely")
              .numbers(1, 2, 3, 4);
      for (Candidate candidate : found.candidates()) {
        table.row(
            candidate.end(),
            String.format(Locale.ROOT, "%.3f", candidate.majorDiameterIn()),
            String.format(Locale.ROOT, "%+.3f", candidate.differenceIn()),
            Prose.plain(candidate.threadsPerInch()),
            percent(candidate.likelihood()));
      }
      table.row("none of these", "", "", "", percent(found.noneOfThese()));
      text.block(table.on(screen));
    }
    found.notes().forEach(text::line);
    if (!found.ask().isEmpty()) {
      text.line("Next: " + found.ask());
    }
    return text.toString();
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, share < 0.01 ? "%.1f %%" : "%.0f %%", share * 100);
  }
}
