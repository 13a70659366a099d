package hosewright.shell;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandRegistry;

/** Finds the command that words name. */
final class CommandIndex {
  private final CommandRegistry registry;

  CommandIndex(CommandRegistry registry) {
    this.registry = registry;
  }

  /** A command and the words after its name. */
  record Match(ShellCommand command, List<String> rest) {}

  /** Every command, in the order of help. */
  List<ShellCommand> all() {
    return registry.getCommands().stream()
        .filter(ShellCommand.class::isInstance)
        .map(ShellCommand.class::cast)
        .sorted(
            Comparator.<ShellCommand, Group>comparing(c -> c.spec().group())
                .thenComparing(ShellCommand::getName))
        .toList();
  }

  /** The command of this name or alias. */
  Optional<ShellCommand> named(String name) {
    return Optional.ofNullable(registry.getCommandByName(name))
        .filter(ShellCommand.class::isInstance)
        .map(ShellCommand.class::cast);
  }

  /** The command at the head of the words: two words are tried before one. */
  Optional<Match> head(List<String> words) {
    for (int length = Math.min(2, words.size()); length > 0; length--) {
      Optional<ShellCommand> found = named(String.join(" ", words.subList(0, length)));
      if (found.isPresent()) {
        return Optional.of(new Match(found.get(), words.subList(length, words.size())));
      }
    }
    return Optional.empty();
  }

  /**
   * The command at the head of the words.
   *
   * @throws BadInputException naming the nearest command
   */
  Match find(List<String> words) {
    return head(words).orElseThrow(() -> new BadInputException(List.of(unknown(words))));
  }

  /** Commands whose first word this is. */
  List<ShellCommand> verbsOf(String noun) {
    return all().stream().filter(c -> c.getName().startsWith(noun + " ")).toList();
  }

  private Problem unknown(List<String> words) {
    if (words.isEmpty()) {
      return Problem.of("command", "", "name one; 'help' lists them");
    }
    List<String> names =
        all().stream()
            .flatMap(c -> Stream.concat(Stream.of(c.getName()), c.getAliases().stream()))
            .toList();
    List<ShellCommand> verbs = verbsOf(words.get(0));
    if (!verbs.isEmpty()) {
      List<String> known = verbs.stream().map(ShellCommand::getName).toList();
      String typed = String.join(" ", words.subList(0, Math.min(2, words.size())));
      String nearest = words.size() < 2 ? "" : Nearest.to(typed, known);
      return new Problem("command", typed, "there is " + String.join(", ", known), nearest);
    }
    String two = Nearest.to(String.join(" ", words.subList(0, Math.min(2, words.size()))), names);
    String nearest = two.isEmpty() ? Nearest.to(words.get(0), names) : two;
    return new Problem("command", words.get(0), "'help' lists the commands", nearest);
  }
}
