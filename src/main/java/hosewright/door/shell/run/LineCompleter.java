package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.ShellCommand;
import hosewright.problem.PlainText;
import hosewright.problem.RefusalException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import org.springframework.shell.core.command.completion.CompletionContext;
import org.springframework.shell.core.command.completion.CompletionProposal;

/** Offers commands first; once one is named, what it says may follow. */
final class LineCompleter implements Completer {
  private final CommandIndex commands;

  LineCompleter(CommandIndex commands) {
    this.commands = commands;
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    try {
      offer(line, candidates);
      // What is shown in a menu goes to the terminal past every other gate.
      candidates.removeIf(one -> !PlainText.is(one.value() + one.displ() + one.descr()));
    } catch (RefusalException e) {
      // The books cannot be had just now; the command itself will say why.
    }
  }

  private void offer(ParsedLine line, List<Candidate> candidates) {
    List<String> before = line.words().subList(0, line.wordIndex());
    Optional<CommandIndex.Match> match = commands.head(before);
    if (match.isEmpty()) {
      nextWords(before).forEach(word -> candidates.add(new Candidate(word)));
      return;
    }
    ShellCommand command = match.get().command();
    List<String> rest = match.get().rest();
    if (command.getName().equals(HelpCommand.NAME)) {
      nextWords(rest).forEach(word -> candidates.add(new Candidate(word)));
      return;
    }
    List<String> words = Stream.concat(rest.stream(), Stream.of(line.word())).toList();
    CompletionContext context =
        new CompletionContext(words, rest.size(), line.wordCursor(), command, null);
    for (CompletionProposal proposal : command.getCompletionProvider().apply(context)) {
      candidates.add(
          new Candidate(
              proposal.value(),
              proposal.displayText(),
              null,
              proposal.description(),
              null,
              null,
              proposal.complete(),
              // What is wanted first stands first.
              candidates.size() + 1));
    }
  }

  /** The words that can follow these on the way to a command's name. */
  private Set<String> nextWords(List<String> before) {
    String start = before.isEmpty() ? "" : String.join(" ", before) + " ";
    Stream<String> own =
        before.isEmpty() ? commands.own().forms().keySet().stream() : Stream.empty();
    return Stream.concat(commands.names(), own)
        .filter(name -> name.startsWith(start))
        .map(name -> StringUtils.substringBefore(name.substring(start.length()), " "))
        .collect(Collectors.toSet());
  }
}
