package hosewright.door.shell.end;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import hosewright.desk.Books;
import hosewright.desk.end.BridgeDocument;
import hosewright.desk.end.CheckJoint;
import hosewright.desk.end.CheckJoint.Checked;
import hosewright.door.shell.command.BareWords;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.Group;
import hosewright.door.shell.command.Invocation;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.ShellCommand;
import hosewright.door.shell.option.PictureOptions;
import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Screen;
import hosewright.door.shell.words.Prose;
import hosewright.paper.drawing.JointDrawing;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Verdict;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/** Says whether two ends join, how the joint seals, and whether it comes apart. */
public final class JointCheckCommand extends ShellCommand {
  private final CheckJoint check;

  public JointCheckCommand(Supplier<Books> books) {
    super(
        CommandSpec.of(
                "joint check",
                Group.IDENTIFY,
                "Says whether two ends join, and how",
                "joint check 1.5 NPSH female swivel on 1.5 NPT male")
            .alias("check")
            .with(
                OptionSpec.value("a", "END", "one end")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("b", "END", "the other end")
                    .asRequired()
                    .completing(JointCheckCommand::ends))
            .with(PictureOptions.options()));
    check = new CheckJoint(books);
  }

  @Override
  public Optional<BareWords> bareWords() {
    return Optional.of(
        words -> EndPair.asOptions(words, List.of("on", "to", "into", "with", "and"), "a", "b"));
  }

  public static List<String> ends() {
    return Families.ends().stream().map(End::toString).toList();
  }

  /**
   * A verdict, with the names of {@link Verdict}, and what to do where the two do not mate.
   *
   * @param instead the shortest bridge; null when they mate, and when there is none
   * @param picture the file drawn; null when none was asked for
   */
  record Document(@JsonUnwrapped Verdict verdict, BridgeDocument instead, String picture) {

    static Document of(Checked checked) {
      return new Document(checked.verdict(), checked.instead().bridge(), checked.picture());
    }
  }

  @Override
  protected Answer answer(Invocation in) {
    Checked checked = check.check(in.required("a"), in.required("b"), PictureOptions.picture(in));
    return Answer.of(Document.of(checked), screen -> text(checked, screen));
  }

  private static String text(Checked checked, Screen screen) {
    Prose text = new Prose(screen);
    Verdict verdict = checked.verdict();
    text.line(checked.a() + " to " + checked.b() + ": " + JointDrawing.heading(verdict));
    text.line("  ", verdict.reason());
    text.block(JointDrawing.text(checked.a(), checked.b(), verdict));
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
    if (!checked.instead().sentence().isEmpty()) {
      text.line("  ", "instead: " + checked.instead().sentence());
    }
    text.line("  ", "source: " + verdict.source());
    if (checked.picture() != null) {
      text.line("  ", "drawn into " + checked.picture());
    }
    return text.toString();
  }
}
