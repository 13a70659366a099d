package hosewright.door.shell.kit;

import hosewright.desk.Books;
import hosewright.desk.Kits.Kit;
import hosewright.desk.TextLines;
import hosewright.desk.kit.AddKit;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.screen.Answer;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/** Keeps a list of parts under a name. */
public final class KitAddCommand extends ShellCommand {
  private final AddKit addKit;

  public KitAddCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "kit add",
                Group.QUOTE,
                "Keeps a list of parts under a name, to be quoted by it",
                "kit add hand-line --add \"2 x W-SPAN-15-3 per line\" --overwrite")
            .with(ArgumentSpec.required("NAME", "what the kit is called"))
            .with(
                OptionSpec.value(
                        "add",
                        "WHAT",
                        "a part: '2 x ITEM', '2 x ITEM per line', '1 x ITEM per 50 ft'")
                    .asRepeatable(),
                OptionSpec.value("parts", "FILE", "parts from a text file, one a line")
                    .completingFiles(),
                OptionSpec.flag("overwrite", "replace a kit of that name; quotes made stay")));
    this.addKit = new AddKit(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    List<String> lines = new ArrayList<>(in.values("add"));
    in.value("parts").ifPresent(file -> lines.addAll(TextLines.read("parts", file)));
    Kit kit =
        addKit.add(new AddKit.Request(in.argument(0).orElseThrow(), lines, in.flag("overwrite")));
    return Answer.of(kit, "Kept " + KitShowCommand.text(kit));
  }
}
