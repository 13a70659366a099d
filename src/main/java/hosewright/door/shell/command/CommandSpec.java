package hosewright.door.shell.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Everything a command says about itself: enough to parse it, complete it and explain it.
 *
 * @param name one or two words, for example {@code line plan}
 * @param description one line without a full stop
 * @param example a whole command that works as it stands, without the program's name
 * @param aliases other names for the same command
 */
public record CommandSpec(
    String name,
    Group group,
    String description,
    String example,
    List<OptionSpec> options,
    List<ArgumentSpec> arguments,
    List<String> aliases) {

  private static final Set<String> TAKEN =
      Set.of("data", "db", "json", "color", "verbose", "help", "version");

  public CommandSpec {
    options = List.copyOf(options);
    arguments = List.copyOf(arguments);
    aliases = List.copyOf(aliases);
    for (OptionSpec option : options) {
      if (TAKEN.contains(option.name())) {
        throw new IllegalArgumentException(
            "--" + option.name() + " belongs to every command; " + name + " cannot redefine it");
      }
    }
  }

  /** A command without options, to be grown with the methods below. */
  public static CommandSpec of(String name, Group group, String description, String example) {
    return new CommandSpec(name, group, description, example, List.of(), List.of(), List.of());
  }

  public CommandSpec with(OptionSpec... more) {
    List<OptionSpec> all = new ArrayList<>(options);
    all.addAll(List.of(more));
    return new CommandSpec(name, group, description, example, all, arguments, aliases);
  }

  public CommandSpec with(ArgumentSpec... more) {
    List<ArgumentSpec> all = new ArrayList<>(arguments);
    all.addAll(List.of(more));
    return new CommandSpec(name, group, description, example, options, all, aliases);
  }

  public CommandSpec alias(String... names) {
    return new CommandSpec(name, group, description, example, options, arguments, List.of(names));
  }

  public Optional<OptionSpec> option(String optionName) {
    return options.stream().filter(o -> o.name().equals(optionName)).findFirst();
  }

  /** What belongs to every command. */
  public static List<OptionSpec> everywhere() {
    return List.of(
        OptionSpec.value("data", "FOLDER", "where catalogue, quotes and history are kept")
            .withDefaultSaid("HOSEWRIGHT_DATA, else .hosewright in your home"),
        OptionSpec.value("db", "ADDRESS", "the books of a team: jdbc:postgresql://HOST/DATABASE")
            .withDefaultSaid("HOSEWRIGHT_DB, else the books in the data folder"),
        OptionSpec.flag("json", "answer with one JSON document"),
        OptionSpec.value("color", "WHEN", "colour: always, never or auto")
            .withDefaultSaid("auto: on a terminal where NO_COLOR is not set")
            .completing("always", "never", "auto"),
        OptionSpec.flag("verbose", "keep the details of a failure in the data folder's log"),
        OptionSpec.flag("help", "explain instead of doing"));
  }
}
