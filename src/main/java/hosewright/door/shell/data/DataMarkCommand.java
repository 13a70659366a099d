package hosewright.door.shell.data;

import hosewright.desk.Books;
import hosewright.desk.data.SetMark;
import hosewright.desk.data.SetMark.Marked;
import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.SignedBy;
import hosewright.door.shell.screen.Answer;
import java.util.function.Supplier;

/** Sets right what this machine remembers as the highest number ever given to a paper. */
public final class DataMarkCommand extends ShellCommand {
  private final SetMark setMark;

  public DataMarkCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "data mark",
                Group.DATA,
                "Sets right the highest number ever given to quotes, orders or purchase orders",
                "data mark quote 500 --reason \"the file was copied from another machine\"")
            .with(
                ArgumentSpec.required("PAPER", "quote, order or purchase order"),
                ArgumentSpec.required("NUMBER", "the highest number that is on paper"))
            .with(
                OptionSpec.value("reason", "TEXT", "why, for the log").asRequired(),
                SignedBy.option()));
    setMark = new SetMark(books);
  }

  @Override
  protected Answer answer(Invocation in) {
    Marked done =
        setMark.mark(
            in.argument(0).orElseThrow(),
            in.argument(1).orElseThrow(),
            in.required("reason"),
            SignedBy.name(in));
    return Answer.of(
        done,
        "%s says %d now; it said '%s'. %s is given next: if it is on paper already, set the number higher.\nWritten into %s."
            .formatted(done.file(), done.number(), done.before(), done.next(), done.log()));
  }
}
