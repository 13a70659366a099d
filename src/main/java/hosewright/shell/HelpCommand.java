package hosewright.shell;

import java.util.List;
import java.util.Optional;
import org.springframework.beans.factory.ObjectProvider;

/** Lists the commands, or explains one. */
final class HelpCommand extends ShellCommand {

  HelpCommand(ObjectProvider<CommandIndex> commands) {
    super(
        CommandSpec.of("help", Group.SHELL, "Lists commands, or explains one", "help version")
            .with(
                ArgumentSpec.optional("COMMAND", "command to explain, or its first word")
                    .asRepeatable()
                    .completing(
                        () ->
                            commands.getObject().all().stream()
                                .map(ShellCommand::getName)
                                .toList())));
  }

  record Overview(List<HelpDocument> commands) {
    static Overview of(List<ShellCommand> commands) {
      return new Overview(commands.stream().map(c -> HelpDocument.of(c.spec())).toList());
    }
  }

  @Override
  protected Answer answer(Invocation in) {
    CommandIndex index = new CommandIndex(in.context().commandRegistry());
    List<String> words =
        in.arguments().stream().flatMap(argument -> Words.of(argument).stream()).toList();
    if (words.isEmpty()) {
      List<ShellCommand> all = index.all();
      return Answer.of(Overview.of(all), screen -> HelpText.overview(all, screen));
    }
    Optional<CommandIndex.Match> command = index.head(words);
    List<ShellCommand> verbs = index.verbsOf(words.get(0));
    if (command.isEmpty() && words.size() == 1 && !verbs.isEmpty()) {
      return Answer.of(
          Overview.of(verbs), screen -> HelpText.commands(words.get(0) + " takes", verbs, screen));
    }
    CommandSpec spec = index.find(words).command().spec();
    return Answer.of(HelpDocument.of(spec), screen -> HelpText.of(spec, screen));
  }
}
