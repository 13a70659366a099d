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
    String current = Optional.ofNullable(context.currentWordUpToCursor()).orElse("");
    List<String> before =
        context.getWords().subList(0, Math.min(context.getWordIndex(), context.getWords().size()));
    int equals = current.indexOf('=');
    if (current.startsWith("--") && equals > 0) {
      String head = current.substring(0, equals + 1);
      return option(head.substring(2, equals)).stream()
          .flatMap(o -> o.candidates().get().stream())
          .map(value -> new CompletionProposal(head + value).displayText(value))
          .toList();
    }
    Optional<OptionSpec> waiting =
        before.isEmpty()
            ? Optional.empty()
            : Optional.of(before.get(before.size() - 1))
                .filter(word -> word.startsWith("--"))
                .flatMap(word -> option(word.substring(2)))
                .filter(o -> !o.isFlag());
    return waiting
        .map(o -> o.candidates().get().stream().map(CompletionProposal::new).toList())
        .orElseGet(() -> optionsAndWords(before));
  }

  private List<CompletionProposal> optionsAndWords(List<String> before) {
    Stream<CompletionProposal> options =
        Stream.concat(spec.options().stream(), CommandSpec.everywhere().stream().skip(1))
            .filter(o -> o.repeatable() || !before.contains("--" + o.name()))
            .map(
                o ->
                    new CompletionProposal("--" + o.name())
                        .description(o.description())
                        .category(spec.name()));
    Stream<CompletionProposal> words =
        spec.arguments().stream()
            .flatMap(a -> a.candidates().get().stream())
            .map(CompletionProposal::new);
    return Stream.concat(words, options).toList();
  }

  private Optional<OptionSpec> option(String name) {
    return spec.option(name);
  }
}
