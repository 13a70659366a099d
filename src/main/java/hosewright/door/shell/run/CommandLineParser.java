package hosewright.door.shell.run;

import hosewright.door.shell.command.ArgumentSpec;
import hosewright.door.shell.command.CommandIndex;
import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.GlobalOptions;
import hosewright.door.shell.command.OptionSpec;
import hosewright.door.shell.command.Words;
import hosewright.problem.BadInputException;
import hosewright.problem.Nearest;
import hosewright.problem.PlainText;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandArgument;
import org.springframework.shell.core.command.CommandOption;
import org.springframework.shell.core.command.CommandParser;
import org.springframework.shell.core.command.ParsedInput;

/** Turns words into a command with its options, or says everything that is wrong with them. */
public final class CommandLineParser implements CommandParser {
  private final CommandIndex commands;

  CommandLineParser(CommandIndex commands) {
    this.commands = commands;
  }

  @Override
  public ParsedInput parse(String line) {
    return parse(Words.of(line));
  }

  /**
   * Reads words that are already apart; none is split or joined again.
   *
   * @throws BadInputException naming every unknown, missing or surplus word at once
   */
  ParsedInput parse(List<String> words) {
    GlobalOptions global = GlobalOptions.of(words);
    boolean explainNoCommand = global.help() && commands.head(global.rest()).isEmpty();
    boolean explain = global.help() && !explainNoCommand;
    List<String> asked = global.rest();
    if (explainNoCommand) {
      asked = prepend("help", asked);
    } else if (global.version() && !explain) {
      asked = List.of("version");
    } else if (!asked.isEmpty() && asked.get(0).startsWith("?")) {
      asked = explained(asked);
    }
    CommandIndex.Match match = commands.find(asked);
    ParsedInput.Builder input = ParsedInput.builder();
    String[] name = match.command().getName().split(" ");
    input.commandName(name[0]);
    Stream.of(name).skip(1).forEach(input::addSubCommand);
    addFlag(input, "json", global.json());
    addFlag(input, "verbose", global.verbose());
    addFlag(input, "help", explain);
    if (!explain) {
      new Reading(match.command().spec(), input).read(asOptions(match));
    }
    return input.build();
  }

  private static List<String> prepend(String first, List<String> words) {
    return Stream.concat(Stream.of(first), words.stream()).toList();
  }

  /** A question mark asks for help, with or without a blank behind it. */
  private static List<String> explained(List<String> asked) {
    String word = asked.get(0).substring(1);
    List<String> rest = asked.subList(1, asked.size());
    return prepend("help", word.isEmpty() ? rest : prepend(word, rest));
  }

  /** Words before any option become the options they mean, where the command reads them so. */
  private static List<String> asOptions(CommandIndex.Match match) {
    List<String> rest = match.rest();
    List<String> bare = rest.stream().takeWhile(word -> !word.startsWith("--")).toList();
    return match
        .command()
        .bareWords()
        .filter(reader -> !bare.isEmpty())
        .map(
            reader ->
                Stream.concat(reader.asOptions(bare).stream(), rest.stream().skip(bare.size()))
                    .toList())
        .orElse(rest);
  }

  private static void addFlag(ParsedInput.Builder input, String name, boolean on) {
    if (on) {
      input.addOption(option(name, "true"));
    }
  }

  private static CommandOption option(String name, String value) {
    return CommandOption.with().longName(name).value(value).build();
  }

  /** One command's words being read. */
  private static final class Reading {
    private final CommandSpec spec;
    private final ParsedInput.Builder input;
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private final List<Valued> valued = new ArrayList<>();
    private Optional<Valued> open = Optional.empty();
    private int arguments;

    Reading(CommandSpec spec, ParsedInput.Builder input) {
      this.spec = spec;
      this.input = input;
    }

    void read(List<String> words) {
      int at = 0;
      boolean optionsEnded = false;
      while (at < words.size()) {
        String word = words.get(at++);
        if (!optionsEnded && !word.startsWith("--") && open.isPresent()) {
          open.get().text().add(word);
        } else if (optionsEnded || !word.startsWith("--")) {
          argument(word);
        } else if (word.equals("--")) {
          optionsEnded = true;
        } else {
          String following = at < words.size() ? words.get(at) : "--";
          at += option(word.substring(2), following) ? 1 : 0;
        }
      }
      for (Valued given : valued) {
        String value = String.join(" ", given.text());
        requirePlain("--" + given.name(), value);
        input.addOption(CommandLineParser.option(given.name(), value));
      }
      missing();
      if (!problems.isEmpty()) {
        throw new BadInputException(problems);
      }
    }

    /** An option's value, which may still grow. */
    private record Valued(String name, List<String> text) {}

    /** Reads one option; true when it took the following word as its value. */
    private boolean option(String written, String following) {
      open = Optional.empty();
      int equals = written.indexOf('=');
      String name = equals < 0 ? written : written.substring(0, equals);
      Optional<String> attached =
          equals < 0 ? Optional.empty() : Optional.of(written.substring(equals + 1));
      Optional<OptionSpec> known = spec.option(name);
      if (known.isEmpty()) {
        problems.add(unknown(name));
        return attached.isEmpty() && !following.startsWith("--");
      }
      OptionSpec option = known.get();
      boolean follows = attached.isEmpty() && !option.isFlag() && !following.startsWith("--");
      if (!seen.add(name) && !option.repeatable()) {
        problems.add(Problem.of("--" + name, attached.orElse(following), "give it only once"));
      } else if (option.isFlag()) {
        flag(option, attached);
      } else {
        value(option, attached.orElse(follows ? following : ""));
      }
      return follows;
    }

    private void flag(OptionSpec option, Optional<String> attached) {
      String value = attached.orElse("true");
      if (!value.equals("true") && !value.equals("false")) {
        problems.add(Problem.of("--" + option.name(), value, "it takes no value"));
      } else if (value.equals("true")) {
        input.addOption(CommandLineParser.option(option.name(), value));
      }
    }

    private void value(OptionSpec option, String value) {
      if (value.isBlank()) {
        problems.add(
            Problem.of("--" + option.name(), "", "give " + option.placeholder() + " after it"));
      } else {
        Valued given = new Valued(option.name(), new ArrayList<>(List.of(value)));
        valued.add(given);
        // Where a command takes no words of its own, a value runs on to the next option.
        open = spec.arguments().isEmpty() ? Optional.of(given) : Optional.empty();
      }
    }

    private void argument(String word) {
      List<ArgumentSpec> wanted = spec.arguments();
      boolean open = !wanted.isEmpty() && wanted.get(wanted.size() - 1).repeatable();
      if (arguments < wanted.size() || open) {
        requirePlain(wanted.get(Math.min(arguments, wanted.size() - 1)).placeholder(), word);
        input.addArgument(new CommandArgument(arguments++, word));
      } else {
        problems.add(
            Problem.of(
                "word",
                word,
                spec.name()
                    + " takes "
                    + (wanted.isEmpty() ? "options only" : "no more than " + usage())
                    + "; put quotes around a value that has spaces"));
      }
    }

    private void requirePlain(String field, String value) {
      PlainText.refusal(field, value).ifPresent(problems::add);
    }

    private String usage() {
      return spec.arguments().stream()
          .map(ArgumentSpec::placeholder)
          .collect(Collectors.joining(" "));
    }

    private Problem unknown(String name) {
      List<String> known =
          Stream.concat(spec.options().stream(), CommandSpec.everywhere().stream())
              .map(o -> "--" + o.name())
              .toList();
      String nearest = Nearest.closely("--" + name, known);
      if (!nearest.isEmpty()) {
        // What was meant is not also missing.
        seen.add(nearest.substring(2));
      }
      return new Problem(
          "option", "--" + name, spec.name() + " takes " + String.join(", ", known), nearest);
    }

    private void missing() {
      spec.options().stream()
          .filter(o -> o.required() && !seen.contains(o.name()))
          .map(
              o ->
                  Problem.of(
                      "--" + o.name(), "", "give " + o.placeholder() + ", the " + o.description()))
          .forEach(problems::add);
      spec.arguments().stream()
          .skip(arguments)
          .filter(ArgumentSpec::required)
          .map(a -> Problem.of(a.placeholder(), "", "give " + a.description()))
          .forEach(problems::add);
    }
  }
}
