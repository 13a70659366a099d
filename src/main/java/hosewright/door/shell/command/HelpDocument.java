package hosewright.door.shell.command;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What {@code --help --json} answers about one command. */
public record HelpDocument(
    String command,
    String group,
    String description,
    String example,
    List<Option> options,
    List<Argument> arguments,
    List<String> aliases) {

  record Option(
      String name,
      Optional<String> value,
      String description,
      boolean required,
      boolean repeatable,
      Optional<String> defaultsTo) {}

  record Argument(String name, String description, boolean required, boolean repeatable) {}

  public static HelpDocument of(CommandSpec spec) {
    return new HelpDocument(
        spec.name(),
        spec.group().name().toLowerCase(Locale.ROOT),
        spec.description(),
        spec.example(),
        spec.options().stream().map(HelpDocument::option).toList(),
        spec.arguments().stream()
            .map(a -> new Argument(a.placeholder(), a.description(), a.required(), a.repeatable()))
            .toList(),
        spec.aliases());
  }

  private static Option option(OptionSpec o) {
    return new Option(
        "--" + o.name(),
        Optional.of(o.placeholder()).filter(p -> !p.isEmpty()),
        o.description(),
        o.required(),
        o.repeatable(),
        Optional.of(o.unsaid().said()).filter(s -> !s.isEmpty()));
  }
}
