package hosewright.door.shell.command;

import hosewright.desk.interview.Asker;
import hosewright.door.shell.run.Greeting;
import hosewright.door.shell.run.ShellApplication;
import hosewright.door.shell.screen.Answer;
import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;

/** Commands that do what no real command should, so that the program around them can be tried. */
public final class ProbeCommands {
  private ProbeCommands() {}

  public static void main(String[] args) {
    System.exit(
        ShellApplication.run(
            args,
            new Greeting(""),
            (workspace, notices) ->
                List.of(
                    new Echo(),
                    new Fault(),
                    new Unsafe(),
                    new Refuse(),
                    new Keep(workspace),
                    new Ask())));
  }

  /** Says back what it was given. */
  public static final class Echo extends ShellCommand {
    public Echo() {
      super(
          CommandSpec.of("probe echo", Group.SHELL, "Says back", "probe echo --text hello")
              .with(
                  OptionSpec.value("text", "TEXT", "what to say"),
                  OptionSpec.value("rise", "FEET", "a length, up or down"),
                  OptionSpec.value("slack", "PERCENT", "extra").withDefault("5%"),
                  OptionSpec.value("tag", "TAG", "a tag").asRepeatable().completing("red", "blue"),
                  OptionSpec.flag("loud", "say it loudly"))
              .with(ArgumentSpec.optional("WORD", "more words").asRepeatable())
              .alias("pe"));
    }

    record Said(
        Optional<String> text,
        Optional<String> rise,
        Optional<String> slack,
        List<String> tags,
        boolean loud,
        List<String> words) {}

    @Override
    protected Answer answer(Invocation in) {
      Said said =
          new Said(
              in.value("text"),
              in.value("rise"),
              in.value("slack"),
              in.values("tag"),
              in.flag("loud"),
              in.arguments());
      return Answer.of(said, "said " + said.text().orElse("nothing"));
    }
  }

  /** Fails as a program does. */
  static final class Fault extends ShellCommand {
    Fault() {
      super(CommandSpec.of("probe fault", Group.SHELL, "Fails", "probe fault"));
    }

    @Override
    protected Answer answer(Invocation in) {
      throw new IllegalStateException("the pump is on fire");
    }
  }

  /** Answers that there is no safe plan. */
  public static final class Unsafe extends ShellCommand {
    public Unsafe() {
      super(CommandSpec.of("probe unsafe", Group.SHELL, "No safe plan", "probe unsafe"));
    }

    record Infeasible(boolean feasible) {}

    @Override
    protected Answer answer(Invocation in) {
      return Answer.noSafePlan(new Infeasible(false), screen -> "no safe plan");
    }
  }

  /** Refuses its input for two reasons. */
  static final class Refuse extends ShellCommand {
    Refuse() {
      super(CommandSpec.of("probe refuse", Group.SHELL, "Refuses", "probe refuse"));
    }

    @Override
    protected Answer answer(Invocation in) {
      throw new BadInputException(
          List.of(
              new Problem("--from", "2.5 NG male", "give an end", "2.5 NH male"),
              Problem.of("--length", "-1ft", "give feet above zero")));
    }
  }

  /** Needs the data folder. */
  public static final class Keep extends ShellCommand {
    private final Workspace workspace;

    public Keep(Workspace workspace) {
      super(
          CommandSpec.of("probe keep", Group.SHELL, "Uses the data folder", "probe keep")
              .with(
                  OptionSpec.value("end", "END", "an end")
                      .completing("2.5 NH male", "2.5 NH female swivel", "2 NPT male"),
                  OptionSpec.value("papers", "KINDS", "papers")
                      .completingList(() -> List.of("pdf", "csv")),
                  OptionSpec.flag("quick", "at once")));
      this.workspace = workspace;
    }

    record Kept(String folder) {}

    @Override
    protected Answer answer(Invocation in) {
      Kept kept = new Kept(workspace.folder().toString());
      return Answer.of(kept, kept.folder());
    }
  }

  /** Takes a paper's number, as commands of the trade do. */
  public static final class Paper extends ShellCommand {
    public Paper() {
      super(
          CommandSpec.of("probe paper", Group.SHELL, "Shows a paper", "probe paper Q-000001")
              .with(
                  OptionSpec.flag("internal", "what it costs"),
                  OptionSpec.value("as", "KINDS", "papers")
                      .completingList(() -> List.of("csv", "pdf")),
                  OptionSpec.value("end", "END", "an end")
                      .completing("2.5 NH male", "2.5 NH female swivel"))
              .with(
                  ArgumentSpec.required("NUMBER", "the paper's number")
                      .completing(() -> List.of("Q-000001", "Q-000002"))));
    }

    record Shown(String number, Optional<String> kinds, Optional<String> end) {}

    @Override
    protected Answer answer(Invocation in) {
      Shown shown = new Shown(in.argument(0).orElse(""), in.value("as"), in.value("end"));
      return Answer.of(
          shown,
          "paper "
              + shown.number()
              + " as "
              + shown.kinds().orElse("nothing")
              + shown.end().map(" on "::concat).orElse(""));
    }
  }

  /** Asks for a name. */
  public static final class Ask extends ShellCommand {
    public Ask() {
      super(CommandSpec.of("probe ask", Group.SHELL, "Asks", "probe ask"));
    }

    record Named(String name) {}

    @Override
    protected Answer answer(Invocation in) {
      Asker asker =
          in.asker().orElseThrow(() -> new BadInputException("name", "", "give it yourself"));
      Named named = new Named(asker.ask("name? ", List.of()).orElse("nobody"));
      return Answer.of(named, "hello " + named.name());
    }
  }
}
