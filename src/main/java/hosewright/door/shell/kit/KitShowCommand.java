package hosewright.door.shell.kit;

import hosewright.desk.Books;
import hosewright.desk.Kits.Kit;
import hosewright.desk.kit.ShowKits;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Shows the dealer's kits. */
public final class KitShowCommand extends ShellCommand {
  private final ShowKits showKits;

  public KitShowCommand(Supplier<Books> books) {
    super(
        CommandSpec.of("kit show", Group.QUOTE, "Shows a kit, or all of them", "kit show hand-line")
            .with(ArgumentSpec.optional("NAME", "the kit's name; all without it")));
    this.showKits = new ShowKits(books);
  }

  record Shown(List<Kit> kits) {}

  @Override
  protected Answer answer(Invocation in) {
    List<Kit> kits = showKits.show(in.argument(0));
    return Answer.of(
        new Shown(kits),
        kits.isEmpty()
            ? "No kit is kept yet: 'kit add' keeps one."
            : kits.stream().map(KitShowCommand::text).collect(Collectors.joining("\n")));
  }

  static String text(Kit kit) {
    return kit.name() + "\n  " + String.join("\n  ", kit.lines());
  }
}
