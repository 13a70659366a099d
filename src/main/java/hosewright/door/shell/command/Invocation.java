package hosewright.door.shell.command;

import hosewright.desk.interview.Asker;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.shell.core.InputReader;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.CommandOption;

/** One use of a command: what was typed, checked against what the command takes. */
public final class Invocation {
  private final CommandSpec spec;
  private final CommandContext context;

  Invocation(CommandSpec spec, CommandContext context) {
    this.spec = spec;
    this.context = context;
  }

  /** The option's value; its default when none was typed; empty when it has none. */
  public Optional<String> value(String option) {
    OptionSpec declared = declared(option);
    return typed(option).stream().findFirst().or(declared::standard);
  }

  /** The value of a required option. */
  public String required(String option) {
    return value(option)
        .orElseThrow(() -> new IllegalStateException("--" + option + " is not a required option"));
  }

  /** Every value of a repeatable option, in the order typed. */
  public List<String> values(String option) {
    declared(option);
    return typed(option);
  }

  /** Whether the option was typed, whatever its default. */
  public boolean given(String option) {
    declared(option);
    return !typed(option).isEmpty();
  }

  /** Whether the flag is on. */
  public boolean flag(String option) {
    return given(option);
  }

  /**
   * Whether nothing at all was typed after the command's name, but for {@code --json} and so on.
   *
   * @param setAside options that do not count, because they only say how to answer
   */
  public boolean bare(String... setAside) {
    Set<String> besides = Set.of(setAside);
    return arguments().isEmpty()
        && spec.options().stream().noneMatch(o -> !besides.contains(o.name()) && given(o.name()));
  }

  /** Words given by position. */
  public List<String> arguments() {
    return context.parsedInput().arguments().stream().map(CommandArgument::value).toList();
  }

  /** The word at this position, 0 for the first. */
  public Optional<String> argument(int position) {
    return arguments().stream().skip(position).findFirst();
  }

  /** Whether one JSON document is wanted. */
  public boolean json() {
    return !typed("json").isEmpty();
  }

  boolean help() {
    return !typed("help").isEmpty();
  }

  /** Asks a person, where one is there to answer and prose is wanted. */
  public Optional<Asker> asker() {
    InputReader reader = context.inputReader();
    return json() || !(reader instanceof Asker asker) ? Optional.empty() : Optional.of(asker);
  }

  private OptionSpec declared(String option) {
    return spec.option(option)
        .orElseThrow(
            () -> new IllegalArgumentException(spec.name() + " declares no option --" + option));
  }

  private List<String> typed(String option) {
    return context.parsedInput().options().stream()
        .filter(o -> option.equals(o.longName()))
        .map(CommandOption::value)
        .toList();
  }
}
