package hosewright.door.shell.command;

import hosewright.door.shell.screen.Listing;
import hosewright.door.shell.screen.Screen;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.text.WordUtils;

/** Explains a command, or all of them, to a person. */
public final class HelpText {
  private HelpText() {}

  /** What one command does, takes and looks like in use. */
  public static String of(CommandSpec spec, Screen screen) {
    List<String> parts = new ArrayList<>();
    parts.add(spec.name() + ": " + spec.description() + ".");
    parts.add("Usage: " + usage(spec));
    if (!spec.aliases().isEmpty()) {
      parts.add("Short: " + String.join(", ", spec.aliases()));
    }
    if (!spec.arguments().isEmpty()) {
      Listing listing = new Listing();
      spec.arguments().forEach(a -> listing.add(a.placeholder(), a.description()));
      parts.add(listing.under("Words", screen));
    }
    if (!spec.options().isEmpty()) {
      parts.add(options("Options", spec.options(), screen));
    }
    parts.add(options("With every command", CommandSpec.everywhere(), screen));
    parts.add("Example:\n  hosewright " + spec.example());
    return String.join("\n\n", parts);
  }

  /** Commands by what a person is doing, then the user's own short forms. */
  public static String overview(List<ShellCommand> commands, ShortForms own, Screen screen) {
    String groups =
        Stream.of(Group.values())
            .map(group -> group(group, commands, screen))
            .filter(text -> !text.isEmpty())
            .collect(Collectors.joining("\n\n"));
    List<String> parts = new ArrayList<>(List.of(groups));
    if (!own.forms().isEmpty()) {
      Listing listing = new Listing();
      own.forms().forEach((word, stands) -> listing.add(word, Words.typed(stands)));
      parts.add(listing.under("Your own short forms", screen));
    }
    own.problems().forEach(problem -> parts.add(sentence(problem.sentence(), screen)));
    parts.add(
        Stream.of(
                "A word after a comma is a short form of the same command; your own stand in "
                    + ShortForms.FILE
                    + " in the data folder, one a line: WORD = COMMAND with its options.",
                "A value runs on to the next option (--from 2.5 NH male --to 2 NPT female); where a"
                    + " command takes words as well, a value with spaces stands in quotes.",
                "After any command, --help explains it and shows one example.",
                "'hosewright @FILE' runs a file of commands and stops at the first that fails;"
                    + " with --keep-going it goes on.")
            .map(line -> sentence(line, screen))
            .collect(Collectors.joining("\n")));
    return String.join("\n\n", parts);
  }

  private static String sentence(String text, Screen screen) {
    return WordUtils.wrap(text, screen.proseWidth() - 2, "\n  ", false);
  }

  /** The commands that begin with one word. */
  public static String commands(String title, List<ShellCommand> commands, Screen screen) {
    Listing listing = new Listing();
    commands.forEach(c -> listing.add(called(c.spec()), c.getDescription()));
    return listing.under(title, screen);
  }

  private static String called(CommandSpec spec) {
    return Stream.concat(Stream.of(spec.name()), spec.aliases().stream())
        .collect(Collectors.joining(", "));
  }

  private static String group(Group group, List<ShellCommand> commands, Screen screen) {
    List<ShellCommand> members = commands.stream().filter(c -> c.spec().group() == group).toList();
    return members.isEmpty() ? "" : commands(group.title(), members, screen);
  }

  private static String options(String title, List<OptionSpec> options, Screen screen) {
    Listing listing = new Listing();
    options.forEach(o -> listing.add(o.written(), explained(o)));
    return listing.under(title, screen);
  }

  private static String explained(OptionSpec option) {
    StringBuilder text = new StringBuilder(option.description());
    if (option.required()) {
      text.append(" (required)");
    }
    if (option.repeatable()) {
      text.append(" (may be repeated)");
    }
    if (!option.unsaid().said().isEmpty()) {
      text.append(" (default: ").append(option.unsaid().said()).append(")");
    }
    return text.toString();
  }

  private static String usage(CommandSpec spec) {
    String required =
        spec.options().stream()
            .filter(OptionSpec::required)
            .map(o -> " " + o.written())
            .collect(Collectors.joining());
    String arguments =
        spec.arguments().stream().map(a -> " " + a.written()).collect(Collectors.joining());
    boolean more = spec.options().stream().anyMatch(o -> !o.required());
    return spec.name() + arguments + required + (more ? " [options]" : "");
  }
}
