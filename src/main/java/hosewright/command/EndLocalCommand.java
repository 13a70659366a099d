package hosewright.command;

import hosewright.desk.LocalRegister;
import hosewright.problem.BadInputException;
import hosewright.shell.Answer;
import hosewright.shell.ArgumentSpec;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.shell.Table;
import hosewright.shell.Workspace;
import hosewright.thread.LocalThreads;
import hosewright.thread.LocalThreads.LocalThread;
import java.util.List;
import java.util.Optional;

/** Looks up which thread a district uses, in the register the dealer keeps. */
final class EndLocalCommand extends ShellCommand {
  private final Workspace workspace;

  EndLocalCommand(Workspace workspace) {
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
                        () ->
                            LocalRegister.in(workspace.where())
                                .read()
                                .map(LocalThreads::districts)
                                .orElse(List.of()))));
    this.workspace = workspace;
  }

  /**
   * The register, or one district of it.
   *
   * @param file where it is kept, or would be
   */
  record Local(String file, boolean kept, List<LocalThread> threads) {}

  @Override
  protected Answer answer(Invocation in) {
    LocalRegister kept = LocalRegister.in(workspace.where());
    Optional<LocalThreads> register = kept.read();
    String district = String.join(" ", in.arguments());
    if (register.isEmpty() && !district.isBlank()) {
      throw new BadInputException(
          "district",
          district,
          "no register is kept yet, so check with the local fire service. " + kept.howTo());
    }
    List<LocalThread> threads =
        district.isBlank()
            ? register.map(LocalThreads::rows).orElse(List.of())
            : register.orElseThrow().of(district);
    Local local = new Local(kept.file().toString(), register.isPresent(), threads);
    return Answer.of(local, screen -> text(local, kept, screen));
  }

  private static String text(Local local, LocalRegister kept, Screen screen) {
    Prose text = new Prose(screen);
    if (!local.kept()) {
      return text.line("No register of local threads is kept yet.")
          .line(kept.howTo() + ".")
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
