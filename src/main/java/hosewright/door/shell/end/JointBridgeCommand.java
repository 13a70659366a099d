package hosewright.door.shell.end;

import hosewright.desk.Books;
import hosewright.desk.end.FindBridge;
import hosewright.desk.end.FindBridge.Found;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.CatalogueChoice;
import hosewright.door.shell.screen.Answer;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Finds the adapters that go between two ends. */
public final class JointBridgeCommand extends ShellCommand {
  private final FindBridge find;

  public JointBridgeCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "joint bridge",
                Group.IDENTIFY,
                "Finds the cheapest adapters between two ends",
                "joint bridge --from \"2 NPT male\" --to \"1.5 NH female swivel\" --show 3")
            .alias("bridge")
            .with(
                OptionSpec.value("from", "END", "the open end, where the water comes from")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("to", "END", "the end it goes into")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("customer", "ID", "whose terms price it")
                    .withDefaultSaid("list prices")
                    .completing(() -> CatalogueChoice.customers(books)),
                OptionSpec.value(
                        "show", "N", "how many ways to show, 1 to " + FindBridge.MOST_SHOWN)
                    .withDefault("1")));
    find = new FindBridge(books);
  }

  @Override
  public Optional<BareWords> bareWords() {
    return Optional.of(
        words -> EndPair.asOptions(words, List.of("to", "into", "and"), "from", "to"));
  }

  @Override
  protected Answer answer(Invocation in) {
    Found found =
        find.find(
            new FindBridge.Request(
                in.required("from"), in.required("to"), in.required("show"), in.value("customer")));
    return found.stocked()
        ? Answer.of(found.bridged(), screen -> BridgeText.of(found, screen))
        : Answer.noSafePlan(found.bridged(), screen -> BridgeText.of(found, screen));
  }
}
