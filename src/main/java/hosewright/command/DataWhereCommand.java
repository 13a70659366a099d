package hosewright.command;

import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import hosewright.shell.Workspace;
import hosewright.store.Backup;
import hosewright.store.Server;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Says where the books are kept; opens nothing, so that it works when they cannot be opened. */
final class DataWhereCommand extends ShellCommand {
  private final Workspace workspace;

  DataWhereCommand(Workspace workspace) {
    super(
        CommandSpec.of(
            "data where", Group.DATA, "Says where catalogue and quotes are kept", "data where"));
    this.workspace = workspace;
  }

  /**
   * @param database address of the team's database; null where the books are in the folder
   * @param lastBackup null when none was made in the usual place
   */
  record Where(String database, String folder, boolean made, List<Kept> files, String lastBackup) {}

  record Kept(String name, long bytes) {}

  @Override
  protected Answer answer(Invocation in) {
    Path folder = workspace.where();
    String last = Backup.last(folder).map(Path::toString).orElse(null);
    String database = TeamDatabase.in(workspace).map(Server::address).orElse(null);
    Where where =
        new Where(database, folder.toString(), Files.isDirectory(folder), kept(folder), last);
    return Answer.of(
        where,
        screen -> {
          Prose text = new Prose(screen);
          if (database != null) {
            text.line("The books are in " + database + "; on this machine:");
          }
          text.line(
              where.made()
                  ? folder.toString()
                  : folder + ", which is made when something is first kept in it");
          where
              .files()
              .forEach(
                  file ->
                      text.line(
                          "  ", "%s, %d KiB".formatted(file.name(), (file.bytes() + 1023) / 1024)));
          return text.line(last == null ? "No backup yet: data backup." : "Last backup: " + last)
              .toString();
        });
  }

  private static List<Kept> kept(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(Files::isRegularFile)
          .sorted()
          .map(file -> new Kept(file.getFileName().toString(), file.toFile().length()))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
