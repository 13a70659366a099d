package hosewright.door.shell.command;

import hosewright.door.shell.screen.FileNames;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What a command says about one of its options.
 *
 * @param name without dashes, for example {@code source-pressure}
 * @param placeholder what stands for the value in help, for example PSI; empty for a flag
 * @param description one line
 * @param required whether the command refuses to run without it
 * @param repeatable whether it may be given more than once
 * @param unsaid what is taken when none is given
 * @param candidates values offered by completion for what is typed so far, fetched only when asked
 *     for
 */
public record OptionSpec(
    String name,
    String placeholder,
    String description,
    boolean required,
    boolean repeatable,
    Unsaid unsaid,
    Function<String, List<String>> candidates) {

  /**
   * What is taken when none is given.
   *
   * @param value a fixed value; empty where there is none
   * @param said what help says of it, which may also be of a value the command works out
   */
  public record Unsaid(Optional<String> value, String said) {
    static final Unsaid NOTHING = new Unsaid(Optional.empty(), "");
  }

  /** An option that takes a value. */
  public static OptionSpec value(String name, String placeholder, String description) {
    return new OptionSpec(
        name, placeholder, description, false, false, Unsaid.NOTHING, typed -> List.of());
  }

  /** An option that is on when it is there. */
  public static OptionSpec flag(String name, String description) {
    return new OptionSpec(name, "", description, false, false, Unsaid.NOTHING, typed -> List.of());
  }

  /** The value taken when none is given. */
  public Optional<String> standard() {
    return unsaid.value();
  }

  public boolean isFlag() {
    return placeholder.isEmpty();
  }

  public OptionSpec asRequired() {
    return new OptionSpec(name, placeholder, description, true, repeatable, unsaid, candidates);
  }

  public OptionSpec asRepeatable() {
    return new OptionSpec(name, placeholder, description, required, true, unsaid, candidates);
  }

  /** With a value that {@link Invocation#value} gives when none was typed. */
  public OptionSpec withDefault(String value) {
    return new OptionSpec(
        name,
        placeholder,
        description,
        required,
        repeatable,
        new Unsaid(Optional.of(value), value),
        candidates);
  }

  /** With words for help only, such as "today": the command works the value out itself. */
  public OptionSpec withDefaultSaid(String words) {
    return new OptionSpec(
        name,
        placeholder,
        description,
        required,
        repeatable,
        new Unsaid(unsaid.value(), words),
        candidates);
  }

  public OptionSpec completing(Supplier<List<String>> values) {
    return completing(typed -> values.get());
  }

  public OptionSpec completing(String... values) {
    List<String> fixed = List.of(values);
    return completing(() -> fixed);
  }

  /** Offers values for a list with commas: behind the last comma, those not named yet. */
  public OptionSpec completingList(Supplier<List<String>> values) {
    return completing(
        typed -> {
          String named = typed.substring(0, typed.lastIndexOf(',') + 1);
          List<String> before = List.of(named.split("\\s*,\\s*"));
          return values.get().stream()
              .filter(value -> !before.contains(value))
              .map(value -> named + value)
              .toList();
        });
  }

  /** Offers files and folders. */
  public OptionSpec completingFiles() {
    return completing(FileNames::beginning);
  }

  /** Offers what fits what is typed so far, for lists too long to be fetched whole. */
  public OptionSpec completing(Function<String, List<String>> values) {
    return new OptionSpec(name, placeholder, description, required, repeatable, unsaid, values);
  }

  /** As it is typed, for example {@code --length FEET}. */
  String written() {
    return isFlag() ? "--" + name : "--" + name + " " + placeholder;
  }
}
