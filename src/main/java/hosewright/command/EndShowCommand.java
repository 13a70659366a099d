package hosewright.command;

import hosewright.desk.Refusals;
import hosewright.problem.BadInputException;
import hosewright.report.EndDrawing;
import hosewright.report.Export;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.thread.CouplingSize;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Family;
import hosewright.thread.Mating;
import hosewright.thread.ThreadDimensions;
import hosewright.thread.ThreadTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Shows one end: its figures, what it joins, and a drawing to scale. */
final class EndShowCommand extends ShellCommand {
  private static final int DRAWING_WIDTH = 80;

  EndShowCommand() {
    super(
        CommandSpec.of(
                "end show",
                Group.IDENTIFY,
                "Shows the figures of an end, what it joins, and a drawing to scale",
                "end show 2.5 NH male")
            .with(
                ArgumentSpec.required("END", "size, family and half")
                    .asRepeatable()
                    .completing(JointCheckCommand::ends))
            .with(PictureFile.options()));
  }

  /**
   * An end as scripts read it.
   *
   * @param figures its dimensions, inches or millimetres as named; empty where none are held
   * @param joins every end that mates with it
   * @param picture the file drawn; null when none was asked for
   */
  record Shown(
      End end,
      String familyName,
      String kind,
      String seal,
      List<Figure> figures,
      String standard,
      String table,
      String confidence,
      String source,
      String note,
      List<End> joins,
      String picture) {}

  /** One figure with the name of what it measures, and its unit. */
  record Figure(String name, double value, String unit) {}

  @Override
  protected Answer answer(Invocation in) {
    End end = Refusals.named("end", () -> End.parse(String.join(" ", in.arguments())));
    if (!end.listed()) {
      throw new BadInputException("end", end.toString(), "an end that 'end list' names");
    }
    Optional<Export> place = PictureFile.place(in);
    Shown shown = shown(end, PictureFile.draw(place, () -> EndDrawing.svg(end)));
    return Answer.of(shown, screen -> text(shown, screen));
  }

  private static Shown shown(End end, String picture) {
    Family family = Families.find(end.family()).orElseThrow();
    Optional<ThreadDimensions> thread = ThreadTable.find(end);
    Optional<CouplingSize> coupling = CouplingSize.find(end.family(), end.sizeIn());
    List<End> joins =
        Families.ends().stream().filter(other -> Mating.of(end, other).mates()).toList();
    return new Shown(
        end,
        family.name(),
        family.kind().word(),
        family.seal(),
        thread.map(EndFigures::of).or(() -> coupling.map(EndFigures::of)).orElse(List.of()),
        thread
            .map(ThreadDimensions::standard)
            .or(() -> coupling.map(CouplingSize::standard))
            .orElse(""),
        thread.map(ThreadDimensions::table).orElse(""),
        thread
            .map(ThreadDimensions::confidence)
            .or(() -> coupling.map(CouplingSize::confidence))
            .orElse(""),
        thread
            .map(ThreadDimensions::source)
            .or(() -> coupling.map(CouplingSize::source))
            .orElse(family.source()),
        thread.map(ThreadDimensions::note).or(() -> coupling.map(CouplingSize::note)).orElse(""),
        joins,
        picture);
  }

  private static String text(Shown shown, Screen screen) {
    Prose text = new Prose(screen);
    text.line(shown.end() + ": " + shown.familyName() + ", " + shown.kind());
    if (shown.figures().isEmpty()) {
      text.line("No published figures were found for it: measure it.");
    } else {
      Table table = Table.of("figure", "", "").numbers(1);
      shown.figures().forEach(f -> table.row(f.name(), Prose.plain(f.value()), f.unit()));
      text.block(table.on(screen));
      text.block(EndDrawing.text(shown.end(), Math.min(DRAWING_WIDTH, screen.width())));
    }
    text.line("Seals: " + shown.seal());
    text.line("Joins: " + joins(shown));
    standing(shown).forEach(text::line);
    if (shown.picture() != null) {
      text.line("Drawn into " + shown.picture());
    }
    return text.toString();
  }

  private static String joins(Shown shown) {
    return shown.joins().isEmpty()
        ? "nothing for certain; measure it and its mate"
        : String.join(", ", shown.joins().stream().map(End::toString).toList());
  }

  /** What the figures rest on. */
  private static List<String> standing(Shown shown) {
    List<String> lines = new ArrayList<>();
    String standard = (shown.standard() + " " + shown.table()).strip();
    if (!standard.isEmpty()) {
      lines.add("Standard: " + standard);
    }
    if (!shown.confidence().isEmpty()) {
      lines.add("How sure: " + shown.confidence());
    }
    lines.add("Source: " + shown.source());
    if (!shown.note().isEmpty()) {
      lines.add("Note: " + shown.note());
    }
    return lines;
  }
}
