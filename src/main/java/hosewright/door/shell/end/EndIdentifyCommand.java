package hosewright.door.shell.end;

import hosewright.csv.PlainNumber;
import hosewright.desk.end.IdentifyEnd;
import hosewright.desk.end.MeasuredField;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.thread.Candidate;
import hosewright.thread.Identification;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Tells which end a measured male may be. */
public final class EndIdentifyCommand extends ShellCommand {
  private final IdentifyEnd identify = new IdentifyEnd();

  public EndIdentifyCommand() {
    super(
        CommandSpec.of(
                "end identify",
                Group.IDENTIFY,
                "Tells which end a measured male may be, likeliest first",
                "end identify 1.99in 9tpi")
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
  public Optional<BareWords> bareWords() {
    return Optional.of(MeasuredWords::asOptions);
  }

  @Override
  protected Answer answer(Invocation in) {
    Map<MeasuredField, String> said = new EnumMap<>(MeasuredField.class);
    for (MeasuredField field : MeasuredField.values()) {
      in.value(field.word()).ifPresent(text -> said.put(field, text));
    }
    Identification found = identify.identify(said);
    return Answer.of(found, screen -> text(found, screen));
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
            PlainNumber.of(candidate.threadsPerInch()),
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
