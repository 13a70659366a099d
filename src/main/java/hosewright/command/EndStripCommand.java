package hosewright.command;

import hosewright.desk.Refusals;
import hosewright.report.Export;
import hosewright.report.Paper;
import hosewright.report.StripPdf;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.ShellCommand;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** Writes a strip to cut out, for a customer on the phone who has no caliper. */
final class EndStripCommand extends ShellCommand {

  EndStripCommand() {
    super(
        CommandSpec.of(
                "end strip",
                Group.IDENTIFY,
                "Writes a strip to cut out and wrap round a male thread, as PDF in true size",
                "end strip --out quotes --paper letter --overwrite")
            .with(PaperOptions.options()));
  }

  record Strip(String file, String paper) {}

  @Override
  protected Answer answer(Invocation in) {
    Refusals refusals = new Refusals();
    Optional<Paper> paper = refusals.read(() -> PaperOptions.paper(in));
    Optional<Path> folder = refusals.read(() -> PaperOptions.folder(in));
    refusals.throwAny();
    return strip(paper.orElseThrow(), folder.orElseThrow(), in.flag("overwrite"));
  }

  private static Answer strip(Paper paper, Path folder, boolean overwrite) {
    String size = paper.name().toLowerCase(Locale.ROOT);
    Export place = Export.to(folder, "thread-strip-" + size + ".pdf", overwrite);
    Path file = write(place, paper);
    return Answer.of(
        new Strip(file.toString(), size),
        "Wrote "
            + file
            + "\n"
            + "Print it at 100 %, and measure its bar before you trust it. Worn threads read"
            + " small.");
  }

  private static Path write(Export place, Paper paper) {
    try {
      return place.write(out -> StripPdf.write(paper, out));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
