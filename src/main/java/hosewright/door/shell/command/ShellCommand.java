package hosewright.door.shell.command;

import hosewright.door.shell.screen.Answer;
import hosewright.door.shell.screen.Output;
import hosewright.door.shell.screen.Screen;
import hosewright.paper.json.Json;
import java.util.List;
import java.util.Optional;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.ExitStatus;
import org.springframework.shell.core.command.completion.CompletionProvider;

/**
 * A command: says what it takes and answers.
 *
 * <p>It prints nothing itself. Bad input is thrown as {@code BadInputException}; whoever runs the
 * command reports it.
 */
public abstract class ShellCommand implements Command {
  private final CommandSpec spec;

  protected ShellCommand(CommandSpec spec) {
    this.spec = spec;
  }

  /**
   * The answer to what was typed.
   *
   * @throws hosewright.problem.BadInputException when it cannot be used
   */
  protected abstract Answer answer(Invocation in);

  /** How words without options are read; empty where they are not. */
  public Optional<BareWords> bareWords() {
    return Optional.empty();
  }

  public final CommandSpec spec() {
    return spec;
  }

  @Override
  public final String getName() {
    return spec.name();
  }

  @Override
  public final String getDescription() {
    return spec.description();
  }

  @Override
  public final String getGroup() {
    return spec.group().title();
  }

  @Override
  public final List<String> getAliases() {
    return spec.aliases();
  }

  @Override
  public final String getHelp() {
    return HelpText.of(spec, Screen.PIPED);
  }

  @Override
  public final List<CommandOption> getOptions() {
    return spec.options().stream()
        .map(
            o ->
                CommandOption.with()
                    .longName(o.name())
                    .description(o.description())
                    .required(o.required())
                    .type(o.isFlag() ? Boolean.class : String.class)
                    .build())
        .toList();
  }

  @Override
  public final CompletionProvider getCompletionProvider() {
    return new SpecCompletion(spec);
  }

  @Override
  public final ExitStatus execute(CommandContext context) {
    Invocation in = new Invocation(spec, context);
    Answer answer = in.help() ? explanation() : answer(in);
    Output out =
        context.outputWriter() instanceof Output output
            ? output
            : new Output(context.outputWriter(), Screen.PIPED);
    if (in.json()) {
      out.println(Json.write(answer.document()));
    } else {
      String text = answer.text().apply(out.screen());
      if (!text.isEmpty()) {
        out.answer(text);
      }
    }
    out.flush();
    return new ExitStatus(answer.exitCode(), spec.name());
  }

  private Answer explanation() {
    return Answer.of(HelpDocument.of(spec), screen -> HelpText.of(spec, screen));
  }
}
