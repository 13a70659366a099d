package hosewright.door.shell.run;

import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.CommandSearch;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.HelpDocument;
import hosewright.door.shell.command.HelpText;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.command.ShortForms;
import hosewright.door.shell.command.Words;
import hosewright.door.shell.screen.Answer;
import java.util.List;
import java.util.Map;

/** Lists the commands, or explains one. */
final class HelpCommand extends ShellCommand {

  static final String NAME = "help";

  private final CommandIndex index;

  HelpCommand(CommandIndex index) {
    super(
        CommandSpec.of(
                NAME,
                Group.SHELL,
                "Lists commands, explains one, or finds one by what you want to do",
                "help change a price")
            .with(
                ArgumentSpec.optional(
                        "COMMAND", "command to explain, its first word, or what you want to do")
                    .asRepeatable()));
    this.index = index;
  }

  /**
   * Several commands.
   *
   * @param ownShortForms the user's own, each with the words it stands for
   */
  record Overview(List<HelpDocument> commands, Map<String, List<String>> ownShortForms) {
    static Overview of(List<ShellCommand> commands, Map<String, List<String>> ownShortForms) {
      return new Overview(
          commands.stream().map(c -> HelpDocument.of(c.spec())).toList(), ownShortForms);
    }
  }

  @Override
  protected Answer answer(Invocation in) {
    List<String> words =
        in.arguments().stream().flatMap(argument -> Words.of(argument).stream()).toList();
    if (words.isEmpty()) {
      List<ShellCommand> all = index.all();
      ShortForms own = index.own();
      return Answer.of(
          Overview.of(all, own.forms()), screen -> HelpText.overview(all, own, screen));
    }
    List<ShellCommand> verbs = index.verbsOf(words.get(0));
    if (words.size() == 1 && !verbs.isEmpty() && index.head(words).isEmpty()) {
      return Answer.of(
          Overview.of(verbs, Map.of()),
          screen -> HelpText.commands(words.get(0) + " takes", verbs, screen));
    }
    String wanted = String.join(" ", words);
    List<ShellCommand> found =
        index.isNamed(words) ? List.of() : new CommandSearch(index.all()).find(wanted);
    if (!found.isEmpty()) {
      return Answer.of(
          Overview.of(found, Map.of()),
          screen ->
              HelpText.commands("For '" + wanted + "', likeliest first", found, screen)
                  + "\n\n'help COMMAND' explains one.");
    }
    CommandSpec spec = index.find(words).command().spec();
    return Answer.of(HelpDocument.of(spec), screen -> HelpText.of(spec, screen));
  }
}
