package hosewright.door.shell.end;

import hosewright.desk.end.FindLocalThreads;
import hosewright.desk.end.FindLocalThreads.Local;
import hosewright.desk.end.OfferDistricts;
import hosewright.door.shell.command.ArgumentSpec;
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
import hosewright.thread.LocalThreads.LocalThread;

/** Looks up which thread a district uses, in the register the dealer keeps. */
public final class EndLocalCommand extends ShellCommand {
  private final FindLocalThreads find;

  public EndLocalCommand(Workspace workspace) {
    super(
        CommandSpec.of(
                "end local",
                Group.IDENTIFY,
                "Looks up which thread a district uses, in your own register",
                "end local \"Port Harlow\"")
            .with(
                ArgumentSpec.optional("DISTRICT", "one district; all of them without it")
                    .asRepeatable()
                    .completing(
                        () -> new OfferDistricts(new WorkspacePlace(workspace)).districts())));
    find = new FindLocalThreads(new WorkspacePlace(workspace));
  }

  @Override
  protected Answer answer(Invocation in) {
    Local local = find.find(String.join(" ", in.arguments()));
    return Answer.of(local, screen -> text(local, screen));
  }

  private static String text(Local local, Screen screen) {
    Prose text = new Prose(screen);
    if (!local.kept()) {
      return text.line("No register of local threads is kept yet.")
          .line(local.howTo() + ".")
          .toString();
    }
    Table table = Table.of("district", "thread", "checked on", "by");
    for (LocalThread row : local.threads()) {
      table.row(row.district(), row.end(), row.checkedOn(), row.checkedBy());
    }
    text.block(table.on(screen));
    return text.line(
            "Hydrants are changed: where a check is old, check again before a large order.")
        .toString();
  }
}
