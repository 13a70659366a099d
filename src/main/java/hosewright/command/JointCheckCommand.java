package hosewright.command;

import hosewright.desk.Books;
import hosewright.desk.Refusals;
import hosewright.report.Export;
import hosewright.report.JointDrawing;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.Screen;
import hosewright.shell.ShellCommand;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Says whether two ends join, how the joint seals, and whether it comes apart. */
final class JointCheckCommand extends ShellCommand {

  private final Supplier<Books> books;

  JointCheckCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "joint check",
                Group.IDENTIFY,
                "Says whether two ends join, and how",
                "joint check --a \"1.5 NPSH female swivel\" --b \"1.5 NPT male\"")
            .alias("check")
            .with(
                OptionSpec.value("a", "END", "one end")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("b", "END", "the other end")
                    .asRequired()
                    .completing(JointCheckCommand::ends))
            .with(PictureFile.options()));
    this.books = books;
  }

  static List<String> ends() {
    return Families.ends().stream().map(End::toString).toList();
  }

  /**
   * A verdict, with the names of {@link Verdict}, and what to do where the two do not mate.
   *
   * @param instead the shortest bridge; null when they mate, and when there is none
   * @param picture the file drawn; null when none was asked for
   */
  record Checked(
      Verdict.Outcome verdict,
      Verdict.Seal seal,
      boolean removable,
      String engagement,
      String reason,
      String source,
      BridgeDocument instead,
      String picture) {}

  @Override
  protected Answer answer(Invocation in) {
    Refusals refusals = new Refusals();
    Optional<End> a = refusals.read("a", () -> End.parse(in.required("a")));
    Optional<End> b = refusals.read("b", () -> End.parse(in.required("b")));
    Optional<Optional<Export>> place = refusals.read(() -> PictureFile.place(in));
    refusals.throwAny();
    return check(a.orElseThrow(), b.orElseThrow(), place.orElseThrow());
  }

  private Answer check(End a, End b, Optional<Export> place) {
    Verdict verdict = Mating.of(a, b);
    String picture = PictureFile.draw(place, () -> JointDrawing.svg(a, b, verdict));
    Instead instead = verdict.mates() ? Instead.NOTHING : Instead.of(a, b, books);
    Checked checked =
        new Checked(
            verdict.outcome(),
            verdict.seal(),
            verdict.removable(),
            verdict.engagement(),
            verdict.reason(),
            verdict.source(),
            instead.bridge(),
            picture);
    return Answer.of(checked, screen -> text(a, b, verdict, instead, picture, screen));
  }

  private static String text(
      End a, End b, Verdict verdict, Instead instead, String picture, Screen screen) {
    Prose text = new Prose(screen);
    text.line(a + " to " + b + ": " + JointDrawing.heading(verdict));
    text.line("  ", verdict.reason());
    text.block(JointDrawing.text(a, b, verdict));
    if (verdict.mates()) {
      text.line(
          "  ",
          "seal: "
              + verdict.seal().name().toLowerCase(Locale.ROOT)
              + (verdict.removable() ? ", comes apart again" : ", permanent"));
    }
    if (!verdict.engagement().isEmpty()) {
      text.line("  ", "in the hand: " + verdict.engagement());
    }
    if (!instead.sentence().isEmpty()) {
      text.line("  ", "instead: " + instead.sentence());
    }
    text.line("  ", "source: " + verdict.source());
    if (picture != null) {
      text.line("  ", "drawn into " + picture);
    }
    return text.toString();
  }
}
