package hosewright.command;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import hosewright.shell.Answer;
import hosewright.shell.CommandSpec;
import hosewright.shell.Group;
import hosewright.shell.Invocation;
import hosewright.shell.OptionSpec;
import hosewright.shell.ShellCommand;
import hosewright.thread.End;
import hosewright.thread.Families;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.List;
import java.util.Locale;

/** Says whether two ends join, how the joint seals, and whether it comes apart. */
final class JointCheckCommand extends ShellCommand {

  JointCheckCommand() {
    super(
        CommandSpec.of(
                "joint check",
                Group.IDENTIFY,
                "Says whether two ends join, and how",
                "joint check --a \"1.5 NPSH female swivel\" --b \"1.5 NPT male\"")
            .with(
                OptionSpec.value("a", "END", "one end")
                    .asRequired()
                    .completing(JointCheckCommand::ends),
                OptionSpec.value("b", "END", "the other end")
                    .asRequired()
                    .completing(JointCheckCommand::ends)));
  }

  static List<String> ends() {
    return Families.ends().stream().map(End::toString).toList();
  }

  @Override
  protected Answer answer(Invocation in) {
    End a = end("a", in.required("a"));
    End b = end("b", in.required("b"));
    Verdict verdict = Mating.of(a, b);
    return Answer.of(verdict, text(a, b, verdict));
  }

  private static End end(String option, String text) {
    try {
      return End.parse(text);
    } catch (BadInputException e) {
      throw new BadInputException(
          e.problems().stream()
              .map(p -> new Problem(option, p.value(), p.allowed(), p.nearest()))
              .toList());
    }
  }

  private static String text(End a, End b, Verdict verdict) {
    String heading =
        switch (verdict.outcome()) {
          case MATES -> "joins";
          case JAMS -> "starts, then jams: do not force it";
          case NO -> "does not join";
          case MEASURE -> "must be measured first";
        };
    StringBuilder text = new StringBuilder();
    text.append(a).append(" to ").append(b).append(": ").append(heading).append('\n');
    text.append("  ").append(verdict.reason()).append('\n');
    if (verdict.mates()) {
      text.append("  seal: ")
          .append(verdict.seal().name().toLowerCase(Locale.ROOT))
          .append(verdict.removable() ? ", comes apart again\n" : ", permanent\n");
    }
    if (!verdict.engagement().isEmpty()) {
      text.append("  in the hand: ").append(verdict.engagement()).append('\n');
    }
    return text.append("  source: ").append(verdict.source()).toString();
  }
}
