package hosewright.command;

import hosewright.csv.CsvFile;
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
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Looks up which thread a district uses, in the register the dealer keeps. */
final class EndLocalCommand extends ShellCommand {
  private static final String EXAMPLE =
      "Port Harlow,2.5,PCT,2026-01-31,thread gauge on two hydrants";

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
                            read(workspace.where().resolve(LocalThreads.FILE))
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
    Path file = workspace.where().resolve(LocalThreads.FILE);
    Optional<LocalThreads> register = read(file);
    String district = String.join(" ", in.arguments());
    if (register.isEmpty() && !district.isBlank()) {
      throw new BadInputException(
          "district",
          district,
          "no register is kept yet, so check with the local fire service. " + howTo(file));
    }
    List<LocalThread> threads =
        district.isBlank()
            ? register.map(LocalThreads::rows).orElse(List.of())
            : register.orElseThrow().of(district);
    Local local = new Local(file.toString(), register.isPresent(), threads);
    return Answer.of(local, screen -> text(local, file, screen));
  }

  private static Optional<LocalThreads> read(Path file) {
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try (Reader text = CsvFile.utf8(Files.newInputStream(file))) {
      return Optional.of(LocalThreads.read(text));
    } catch (IOException e) {
      throw new BadInputException("file", file.toString(), "a file that can be read");
    }
  }

  private static String howTo(Path file) {
    return "To keep one, make "
        + file
        + " with the header line '"
        + String.join(",", LocalThreads.COLUMNS)
        + "' and lines such as '"
        + EXAMPLE
        + "'";
  }

  private static String text(Local local, Path file, Screen screen) {
    Prose text = new Prose(screen);
    if (!local.kept()) {
      return text.line("No register of local threads is kept yet.")
          .line(howTo(file) + ".")
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
