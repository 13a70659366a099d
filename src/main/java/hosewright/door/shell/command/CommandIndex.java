package hosewright.door.shell.command;

import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandRegistry;

/** Finds the command that words name, by its name or by a short form. */
public final class CommandIndex {
  private final CommandRegistry registry;
  private final Workspace workspace;

  public CommandIndex(CommandRegistry registry, Workspace workspace) {
    this.registry = registry;
    this.workspace = workspace;
  }

  /** A command and the words after its name, those a short form stands for first. */
  public record Match(ShellCommand command, List<String> rest) {}

  /** Every command, in the order of help. */
  public List<ShellCommand> all() {
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

  /**
   * The command at the head of the words: two words are tried before one, and the user's own short
   * forms last, so that none can hide a command.
   */
  public Optional<Match> head(List<String> words) {
    return named(words).or(() -> own(words));
  }

  /** The user's own short forms as their file stands now. */
  public ShortForms own() {
    return ShortForms.read(
        workspace.where().resolve(ShortForms.FILE),
        this::taken,
        words ->
            named(words).isPresent() ? Optional.empty() : Optional.of(unknown(words, Set.of())));
  }

  private boolean taken(String word) {
    return named(word).isPresent() || !verbsOf(word).isEmpty();
  }

  private Optional<Match> own(List<String> words) {
    if (words.isEmpty()) {
      return Optional.empty();
    }
    return Optional.ofNullable(own().forms().get(words.get(0)))
        .flatMap(form -> named(Stream.concat(form.stream(), words.stream().skip(1)).toList()));
  }

  private Optional<Match> named(List<String> words) {
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
  public Match find(List<String> words) {
    Optional<Match> found = head(words);
    if (found.isPresent()) {
      return found.get();
    }
    ShortForms own = own();
    throw new BadInputException(
        Stream.concat(Stream.of(unknown(words, own.forms().keySet())), own.problems().stream())
            .toList());
  }

  /** Whether these words, and no more, are the name of a command or a short form of one. */
  public boolean isNamed(List<String> words) {
    String name = String.join(" ", words);
    return named(name).isPresent() || own().forms().containsKey(name);
  }

  /** Names and built-in short forms of all commands. */
  public Stream<String> names() {
    return all().stream()
        .flatMap(c -> Stream.concat(Stream.of(c.getName()), c.getAliases().stream()));
  }

  /** Commands whose first word this is. */
  public List<ShellCommand> verbsOf(String noun) {
    return all().stream().filter(c -> c.getName().startsWith(noun + " ")).toList();
  }

  private Problem unknown(List<String> words, Set<String> more) {
    if (words.isEmpty()) {
      return Problem.of("command", "", "name one; 'help' lists them");
    }
    List<String> names = Stream.concat(names(), more.stream()).toList();
    List<ShellCommand> verbs = verbsOf(words.get(0));
    if (!verbs.isEmpty()) {
      List<String> known = verbs.stream().map(ShellCommand::getName).toList();
      String typed = String.join(" ", words.subList(0, Math.min(2, words.size())));
      String nearest = words.size() < 2 ? "" : Nearest.closely(typed, known);
      return new Problem("command", typed, "there is " + String.join(", ", known), nearest);
    }
    String two = String.join(" ", words.subList(0, Math.min(2, words.size())));
    String nearest = Nearest.closely(two, names);
    nearest = nearest.isEmpty() ? Nearest.closely(words.get(0), names) : nearest;
    return new Problem(
        "command",
        words.get(0),
        nearest.isEmpty() ? meant(words) : "'help' lists the commands",
        nearest);
  }

  /** What can be meant by words that no command begins with. */
  private String meant(List<String> words) {
    List<ShellCommand> found = new UnknownWords(all()).meant(words);
    return found.isEmpty()
        ? "'help' lists the commands"
        : found.stream()
                .map(command -> "'" + UnknownWords.typed(command, words) + "'")
                .collect(Collectors.joining(" or "))
            + " may do that; 'help' and what you want finds a command";
  }
}
