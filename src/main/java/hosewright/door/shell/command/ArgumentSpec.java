package hosewright.door.shell.command;

import hosewright.door.shell.screen.FileNames;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What a command says about a word it takes by position.
 *
 * @param placeholder what stands for it in help, for example NUMBER
 * @param repeatable whether all further words belong to it; only the last argument may be so
 * @param candidates values offered by completion for what is typed so far, fetched only when asked
 *     for
 */
public record ArgumentSpec(
    String placeholder,
    String description,
    boolean required,
    boolean repeatable,
    Function<String, List<String>> candidates) {

  public static ArgumentSpec required(String placeholder, String description) {
    return new ArgumentSpec(placeholder, description, true, false, typed -> List.of());
  }

  public static ArgumentSpec optional(String placeholder, String description) {
    return new ArgumentSpec(placeholder, description, false, false, typed -> List.of());
  }

  public ArgumentSpec asRepeatable() {
    return new ArgumentSpec(placeholder, description, required, true, candidates);
  }

  public ArgumentSpec completing(Supplier<List<String>> values) {
    return completing(typed -> values.get());
  }

  /** Offers files and folders. */
  public ArgumentSpec completingFiles() {
    return completing(FileNames::beginning);
  }

  /** Offers what fits what is typed so far, for lists too long to be fetched whole. */
  public ArgumentSpec completing(Function<String, List<String>> values) {
    return new ArgumentSpec(placeholder, description, required, repeatable, values);
  }

  /** As the usage line shows it, for example {@code [NUMBER...]}. */
  String written() {
    String word = repeatable ? placeholder + "..." : placeholder;
    return required ? word : "[" + word + "]";
  }
}
