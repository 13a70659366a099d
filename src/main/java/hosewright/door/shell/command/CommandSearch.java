package hosewright.door.shell.command;

import hosewright.csv.ReferenceTable;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Finds commands by what a person wants, in the person's words: names, descriptions and options,
 * and the words people use for them (people-words.csv).
 */
public final class CommandSearch {
  /** As many as are read before the first is tried. */
  public static final int MOST = 5;

  private static final Set<String> EMPTY_WORDS =
      Set.of(
          "a", "an", "the", "i", "my", "me", "we", "our", "us", "is", "are", "was", "do", "does",
          "this", "that", "it", "of", "to", "in", "on", "for", "with", "and", "or", "can", "will",
          "these", "from", "at", "by", "be", "one", "no", "not", "such", "thing", "things");

  private static final double NAME = 4;
  private static final double SAID = 3;
  private static final double DESCRIPTION = 2;
  private static final double OPTION = 1.5;
  private static final double OPTION_DESCRIPTION = 0.5;

  private final Map<ShellCommand, Map<String, Double>> weights = new HashMap<>();
  private final Map<String, Integer> commandsWith = new HashMap<>();
  private final List<ShellCommand> commands;

  public CommandSearch(List<ShellCommand> commands) {
    this.commands = commands;
    Map<String, String> said = new TreeMap<>();
    ReferenceTable.rows("people-words.csv", row -> said.put(row.get("command"), row.get("words")));
    for (ShellCommand command : commands) {
      Map<String, Double> words = weighed(command.spec(), said.getOrDefault(command.getName(), ""));
      weights.put(command, words);
      words.keySet().forEach(word -> commandsWith.merge(word, 1, Integer::sum));
    }
  }

  /** The likeliest commands first; empty where no command is called or described so. */
  public List<ShellCommand> find(String wanted) {
    Map<ShellCommand, Double> scores = new HashMap<>();
    Set<String> words = new HashSet<>(stems(wanted).toList());
    for (ShellCommand command : commands) {
      double score = words.stream().mapToDouble(word -> score(command, word)).sum();
      if (score > 0 && words.stream().anyMatch(word -> isTold(command, word))) {
        scores.put(command, score);
      }
    }
    return commands.stream()
        .filter(scores::containsKey)
        .sorted(Comparator.comparingDouble(command -> -scores.get(command)))
        .limit(MOST)
        .toList();
  }

  /** What stands only in what an option does finds nothing alone. */
  private boolean isTold(ShellCommand command, String word) {
    return weights.get(command).getOrDefault(word, 0.0) > OPTION_DESCRIPTION;
  }

  /** A word that few commands have says more than one that many have. */
  private double score(ShellCommand command, String word) {
    double weight = weights.get(command).getOrDefault(word, 0.0);
    return weight == 0
        ? 0
        : weight * Math.log(1 + (double) commands.size() / commandsWith.get(word));
  }

  private static Map<String, Double> weighed(CommandSpec spec, String said) {
    Map<String, Double> words = new HashMap<>();
    add(words, spec.name(), NAME);
    spec.aliases().forEach(alias -> add(words, alias, SAID));
    add(words, said, SAID);
    add(words, spec.description(), DESCRIPTION);
    for (OptionSpec option : spec.options()) {
      add(words, option.name(), OPTION);
      add(words, option.description(), OPTION_DESCRIPTION);
    }
    return words;
  }

  private static void add(Map<String, Double> words, String text, double weight) {
    stems(text).forEach(word -> words.merge(word, weight, Math::max));
  }

  private static Stream<String> stems(String text) {
    return Arrays.stream(text.toLowerCase(Locale.ROOT).split("[^a-z0-9.]+"))
        .filter(word -> !word.isEmpty() && !EMPTY_WORDS.contains(word))
        .map(CommandSearch::stem);
  }

  /** The word without the ending that says how many or when. */
  private static String stem(String word) {
    for (String ending : List.of("ing", "ed", "es", "s", "e")) {
      if (word.length() > ending.length() + 2 && word.endsWith(ending)) {
        return word.substring(0, word.length() - ending.length());
      }
    }
    return word;
  }
}
