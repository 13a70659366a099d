package hosewright.door.shell.end;

import hosewright.csv.PlainNumber;
import hosewright.desk.end.ShowEnd;
import hosewright.desk.end.ShowEnd.Shown;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PictureOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import hosewright.paper.drawing.EndDrawing;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/** Shows one end: its figures, what it joins, and a drawing to scale. */
public final class EndShowCommand extends ShellCommand {
  private static final int DRAWING_WIDTH = 80;

  private final ShowEnd show = new ShowEnd();

  public EndShowCommand() {
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
            .with(PictureOptions.options()));
  }

  @Override
  protected Answer answer(Invocation in) {
    Shown shown = show.show(String.join(" ", in.arguments()), PictureOptions.picture(in));
    return Answer.of(shown, screen -> text(shown, screen));
  }

  private static String text(Shown shown, Screen screen) {
    Prose text = new Prose(screen);
    text.line(shown.end() + ": " + shown.family().familyName() + ", " + shown.family().kind());
    if (shown.figures().isEmpty()) {
      text.line("No published figures were found for it: measure it.");
    } else {
      Table table = Table.of("figure", "", "").numbers(1);
      shown.figures().forEach(f -> table.row(f.name(), PlainNumber.of(f.value()), f.unit()));
      text.block(table.on(screen));
      text.block(EndDrawing.text(shown.end(), Math.min(DRAWING_WIDTH, screen.width())));
    }
    text.line("Seals: " + shown.family().seal());
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
    String standard = (shown.basis().standard() + " " + shown.basis().table()).strip();
    if (!standard.isEmpty()) {
      lines.add("Standard: " + standard);
    }
    if (!shown.basis().confidence().isEmpty()) {
      lines.add("How sure: " + shown.basis().confidence());
    }
    lines.add("Source: " + shown.basis().source());
    if (!shown.basis().note().isEmpty()) {
      lines.add("Note: " + shown.basis().note());
    }
    return lines;
  }
}
