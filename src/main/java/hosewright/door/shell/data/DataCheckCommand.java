package hosewright.door.shell.data;

import hosewright.desk.data.CheckBooks;
import hosewright.desk.data.CheckBooks.Damaged;
import hosewright.desk.data.CheckBooks.Found;
import hosewright.desk.data.CheckBooks.LastBackup;
import hosewright.desk.data.CheckBooks.Lost;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.Workspace;
import hosewright.door.shell.option.WorkspacePlace;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.screen.Table;
import hosewright.door.shell.words.Prose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads all books and says what is damaged. */
public final class DataCheckCommand extends ShellCommand {
  private static final int SHOWN = 50;
  private static final int NAMED = 12;

  private final CheckBooks check;

  public DataCheckCommand(Workspace workspace) {
    super(
        CommandSpec.of(
            "data check",
            Group.DATA,
            "Reads all books and says what is damaged, and what the last backup would bring back",
            "data check"));
    check = new CheckBooks(new WorkspacePlace(workspace));
  }

  @Override
  protected Answer answer(Invocation in) {
    Found found = check.check();
    return found.sound()
        ? Answer.of(found, screen -> text(found, screen))
        : Answer.trouble(found, screen -> text(found, screen));
  }

  private static String text(Found found, Screen screen) {
    Prose prose = new Prose(screen);
    if (found.sound()) {
      prose.line(
          String.format(
              Locale.ROOT, "Read %,d rows: all of them read as they were written.", found.rows()));
      if (found.changed()) {
        prose.line(
            "The store's file was changed since it was last closed, and nothing in it is damaged:"
                + " it is taken as it is now.");
      }
      return prose.toString();
    }
    prose.line(
        String.format(
            Locale.ROOT, "Read %,d rows. Damaged: %,d.", found.rows(), found.damaged().size()));
    Table table =
        found.backup() == null
            ? Table.of("what", "which", "damage")
            : Table.of("what", "which", "damage", "the last backup");
    found.damaged().stream().limit(SHOWN).forEach(one -> row(table, one));
    prose.block(table.on(screen));
    if (found.damaged().size() > SHOWN) {
      prose.line("--json shows all of them.");
    }
    found
        .passedOver()
        .forEach(
            one -> prose.line("The backup %s would not help: %s".formatted(one.file(), one.why())));
    return prose
        .line(
            found.backup() == null
                ? "No backup that would help lies in the data folder: if you keep one elsewhere,"
                    + " 'data restore FILE' puts it back."
                : back(found.backup()))
        .toString();
  }

  private static void row(Table table, Damaged one) {
    if (one.inBackup() == null) {
      table.row(one.thing(), one.named(), one.what());
    } else {
      table.row(one.thing(), one.named(), one.what(), one.inBackup());
    }
  }

  private static String back(LastBackup backup) {
    String back =
        "The last backup was written %s and reads as it was: 'data restore %s' puts all books back"
                .formatted(backup.written(), backup.file())
            + " as they stood then, and keeps these as they are now. ";
    return back
        + (backup.lost().isEmpty()
            ? "Nothing was written since."
            : "What was written since would go: "
                + backup.lost().stream()
                    .map(DataCheckCommand::kind)
                    .collect(Collectors.joining("; "))
                + ".");
  }

  /** {@code quote Q-000004 revision 1; quote Q-000003 revision 1, back to how it stood}. */
  private static String kind(Lost lost) {
    List<String> which = new ArrayList<>();
    named(lost.gone()).ifPresent(names -> which.add(lost.thing() + " " + names));
    named(lost.goBack())
        .ifPresent(names -> which.add(lost.thing() + " " + names + ", back to how it stood then"));
    return which.isEmpty()
        ? String.format(
            Locale.ROOT,
            "%,d %s of %s",
            lost.rows(),
            lost.rows() == 1 ? "row" : "rows",
            lost.thing())
        : String.join("; ", which);
  }

  private static Optional<String> named(List<String> names) {
    if (names.isEmpty()) {
      return Optional.empty();
    }
    String more =
        names.size() > NAMED
            ? String.format(Locale.ROOT, " and %,d more", names.size() - NAMED)
            : "";
    return Optional.of(names.stream().limit(NAMED).collect(Collectors.joining(", ")) + more);
  }
}
