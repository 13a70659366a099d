package hosewright.door.shell.command;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.springframework.shell.core.command.completion.CompletionContext;
import org.springframework.shell.core.command.completion.CompletionProposal;
import org.springframework.shell.core.command.completion.CompletionProvider;

/** Offers what may follow within one command: its options, their values, its words. */
final class SpecCompletion implements CompletionProvider {
  private final CommandSpec spec;

  SpecCompletion(CommandSpec spec) {
    this.spec = spec;
  }

  @Override
  public List<CompletionProposal> apply(CompletionContext context) {
    String typed = Optional.ofNullable(context.currentWordUpToCursor()).orElse("");
    List<String> before = context.getWords().subList(0, context.getWordIndex());
    int equals = typed.indexOf('=');
    if (typed.startsWith("--") && equals > 0) {
      String head = typed.substring(0, equals + 1);
      return option(head.substring(0, equals)).stream()
          .flatMap(option -> option.candidates().apply(typed.substring(equals + 1)).stream())
          .map(value -> proposal(head + value).displayText(value))
          .toList();
    }
    List<CompletionProposal> further = runningOn(before, typed);
    if (!further.isEmpty()) {
      return Stream.concat(further.stream(), options(typed, before)).toList();
    }
    Optional<OptionSpec> waiting =
        before.isEmpty()
            ? Optional.empty()
            : option(before.get(before.size() - 1)).filter(option -> !option.isFlag());
    return waiting
        .map(option -> option.candidates().apply(typed).stream())
        .map(values -> values.map(SpecCompletion::proposal).toList())
        .orElseGet(() -> wordsThenOptions(typed, before));
  }

  /** A word that must be given comes before any option, which are there once two dashes are. */
  private List<CompletionProposal> wordsThenOptions(String typed, List<String> before) {
    if (typed.startsWith("-")) {
      return options(typed, before).toList();
    }
    List<CompletionProposal> words = words(typed, before).toList();
    int given = given(before).size();
    boolean missing = given < spec.arguments().size() && spec.arguments().get(given).required();
    return missing && !words.isEmpty()
        ? words
        : Stream.concat(words.stream(), options(typed, before)).toList();
  }

  /** The next word of a value that runs on over several, as the command line allows. */
  private List<CompletionProposal> runningOn(List<String> before, String typed) {
    int at = before.size() - 1;
    while (at >= 0 && !before.get(at).startsWith("--")) {
      at--;
    }
    if (at < 0 || at == before.size() - 1 || !spec.arguments().isEmpty()) {
      return List.of();
    }
    String start = String.join(" ", before.subList(at + 1, before.size())) + " ";
    return option(before.get(at)).filter(option -> !option.isFlag()).stream()
        .flatMap(option -> further(option.candidates(), start, typed))
        .toList();
  }

  /** What can stand next in a value of several words, one word at a time. */
  private static Stream<CompletionProposal> further(
      Function<String, List<String>> candidates, String start, String typed) {
    return candidates.apply(start + typed).stream()
        .filter(value -> StringUtils.startsWithIgnoreCase(value, start))
        .map(value -> StringUtils.substringBefore(value.substring(start.length()), " "))
        .distinct()
        .map(SpecCompletion::proposal);
  }

  /** What the word that stands here by position may be. */
  private Stream<CompletionProposal> words(String typed, List<String> before) {
    List<String> given = given(before);
    List<ArgumentSpec> wanted = spec.arguments();
    if (given.size() < wanted.size()) {
      return wanted.get(given.size()).candidates().apply(typed).stream()
          .map(SpecCompletion::proposal);
    }
    int last = wanted.size() - 1;
    if (last < 0 || !wanted.get(last).repeatable()) {
      return Stream.empty();
    }
    Function<String, List<String>> candidates = wanted.get(last).candidates();
    String start = String.join(" ", given.subList(last, given.size())) + " ";
    return Stream.concat(
        candidates.apply(typed).stream().map(SpecCompletion::proposal),
        further(candidates, start, typed));
  }

  /** The words that stand by position. */
  private List<String> given(List<String> before) {
    List<String> given = new ArrayList<>();
    for (int at = 0; at < before.size(); at++) {
      boolean value = at > 0 && option(before.get(at - 1)).filter(o -> !o.isFlag()).isPresent();
      if (!value && !before.get(at).startsWith("--")) {
        given.add(before.get(at));
      }
    }
    return given;
  }

  private Stream<CompletionProposal> options(String typed, List<String> before) {
    // What every command takes is offered only to those who have begun an option.
    Stream<OptionSpec> everywhere =
        typed.startsWith("--") ? CommandSpec.everywhere().stream().skip(1) : Stream.empty();
    Stream<OptionSpec> requiredFirst =
        spec.options().stream().sorted(Comparator.comparing(option -> !option.required()));
    return Stream.concat(requiredFirst, everywhere)
        .filter(option -> option.repeatable() || !before.contains("--" + option.name()))
        .map(option -> proposal("--" + option.name()).description(option.description()));
  }

  /** A proposal after which a space follows, unless it is a folder whose files come next. */
  private static CompletionProposal proposal(String value) {
    return new CompletionProposal(value).complete(!value.endsWith("/"));
  }

  private Optional<OptionSpec> option(String word) {
    return word.startsWith("--") ? spec.option(word.substring(2)) : Optional.empty();
  }
}
