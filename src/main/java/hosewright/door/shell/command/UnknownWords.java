package hosewright.door.shell.command;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What a person can only mean who begins with a word that no command begins with: {@code show 1}.
 */
final class UnknownWords {
  private static final int MOST = 3;

  /** The first letter of a paper's number, and what its commands begin with. */
  private static final Map<String, String> PAPERS =
      Map.of("Q", "quote ", "O", "order ", "P", "order ");

  private final List<ShellCommand> commands;

  UnknownWords(List<ShellCommand> commands) {
    this.commands = commands;
  }

  /** The likeliest commands first; empty where nothing is likely. */
  List<ShellCommand> meant(List<String> words) {
    Optional<String> paper = paper(words);
    List<ShellCommand> byVerb =
        commands.stream()
            .filter(command -> command.getName().endsWith(" " + words.get(0)))
            .filter(command -> takes(command, paper))
            .toList();
    List<ShellCommand> found =
        byVerb.isEmpty()
            ? new CommandSearch(commands)
                .find(paper.isEmpty() ? String.join(" ", words) : words.get(0)).stream()
                    .filter(command -> takes(command, paper))
                    .toList()
            : byVerb;
    return found.stream().limit(MOST).toList();
  }

  /** The command as it would be typed, with the paper that was named. */
  static String typed(ShellCommand command, List<String> words) {
    return command.getName() + paper(words).map(" "::concat).orElse("");
  }

  private static Optional<String> paper(List<String> words) {
    return words.size() == 2 && words.get(1).matches("(?i)([QOP]-?)?\\d{1,9}")
        ? Optional.of(words.get(1))
        : Optional.empty();
  }

  private static boolean takes(ShellCommand command, Optional<String> paper) {
    if (paper.isEmpty()) {
      return true;
    }
    boolean takesNumber =
        command.spec().arguments().stream()
            .limit(1)
            .anyMatch(argument -> argument.placeholder().equals("NUMBER"));
    String letter = paper.get().substring(0, 1).toUpperCase(Locale.ROOT);
    return takesNumber && command.getName().startsWith(PAPERS.getOrDefault(letter, ""));
  }
}
