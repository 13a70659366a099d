package hosewright.door.shell.run;

import hosewright.door.shell.command.CommandSpec;
import hosewright.door.shell.command.OptionSpec;
import hosewright.problem.Given;
import java.util.HashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names fields in a refusal as they are typed here: {@code --customer}. Whoever refuses knows no
 * options; this is the one place where they come back.
 *
 * @param options of the command that was refused
 */
record TypedNames(Set<String> options) {
  /** Where it is not known which command it was. */
  static final TypedNames NONE = new TypedNames(Set.of());

  /** How {@link hosewright.problem.Problem#sentence} begins. */
  private static final Pattern BEGINNING =
      Pattern.compile("^([a-z][a-z-]*)(?= cannot be '| is missing: )", Pattern.MULTILINE);

  static TypedNames of(CommandSpec command) {
    Set<String> options = new HashSet<>();
    command.options().stream().map(OptionSpec::name).forEach(options::add);
    return new TypedNames(options);
  }

  /** Sentences of a refusal, one a line, as a person here reads them. */
  String in(String sentences) {
    String begun =
        BEGINNING
            .matcher(sentences)
            .replaceAll(
                field ->
                    Matcher.quoteReplacement(
                        (options.contains(field.group(1)) ? "--" : "") + field.group(1)));
    return Given.named(begun, "--"::concat);
  }
}
