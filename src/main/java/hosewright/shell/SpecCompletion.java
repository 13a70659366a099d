package hosewright.shell;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
    Optional<OptionSpec> waiting =
        before.isEmpty()
            ? Optional.empty()
            : option(before.get(before.size() - 1)).filter(option -> !option.isFlag());
    return waiting
        .map(option -> option.candidates().apply(typed).stream())
        .map(values -> values.map(SpecCompletion::proposal).toList())
        .orElseGet(() -> Stream.concat(words(typed), options(typed, before)).toList());
  }

  private Stream<CompletionProposal> words(String typed) {
    return spec.arguments().stream()
        .flatMap(argument -> argument.candidates().apply(typed).stream())
        .map(SpecCompletion::proposal);
  }

  private Stream<CompletionProposal> options(String typed, List<String> before) {
    // What every command takes is offered only to those who have begun an option.
    Stream<OptionSpec> everywhere =
        typed.startsWith("--") ? CommandSpec.everywhere().stream().skip(1) : Stream.empty();
    return Stream.concat(spec.options().stream(), everywhere)
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
