package hosewright.door.shell.end;

import hosewright.desk.Refusals;
import hosewright.desk.end.PrintStrip;
import hosewright.desk.end.PrintStrip.Strip;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PaperOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.paper.page.Paper;
import java.nio.file.Path;
import java.util.Optional;

/** Writes a strip to cut out, for a customer on the phone who has no caliper. */
public final class EndStripCommand extends ShellCommand {
  private final PrintStrip print = new PrintStrip();

  public EndStripCommand() {
    super(
        CommandSpec.of(
                "end strip",
                Group.IDENTIFY,
                "Writes a strip to cut out and wrap round a male thread, as PDF in true size",
                "end strip --out quotes --paper letter --overwrite")
            .with(PaperOptions.options()));
  }

  @Override
  protected Answer answer(Invocation in) {
    Refusals refusals = new Refusals();
    Optional<Paper> paper = refusals.read(() -> PaperOptions.paper(in));
    Optional<Path> folder = refusals.read(() -> PaperOptions.folder(in));
    refusals.throwAny();
    Strip strip = print.print(paper.orElseThrow(), folder.orElseThrow(), in.flag("overwrite"));
    return Answer.of(
        strip,
        "Wrote "
            + strip.file()
            + "\n"
            + "Print it at 100 %, and measure its bar before you trust it. Worn threads read"
            + " small.");
  }
}
