package hosewright.shell;

import java.util.List;
import java.util.function.Supplier;

/**
 * What a command says about a word it takes by position.
 *
 * @param placeholder what stands for it in help, for example NUMBER
 * @param repeatable whether all further words belong to it; only the last argument may be so
 * @param candidates values offered by completion, fetched only when asked for
 */
public record ArgumentSpec(
    String placeholder,
    String description,
    boolean required,
    boolean repeatable,
    Supplier<List<String>> candidates) {

  public static ArgumentSpec required(String placeholder, String description) {
    return new ArgumentSpec(placeholder, description, true, false, List::of);
  }

  public static ArgumentSpec optional(String placeholder, String description) {
    return new ArgumentSpec(placeholder, description, false, false, List::of);
  }

  public ArgumentSpec asRepeatable() {
    return new ArgumentSpec(placeholder, description, required, true, candidates);
  }

  public ArgumentSpec completing(Supplier<List<String>> values) {
    return new ArgumentSpec(placeholder, description, required, repeatable, values);
  }

  /** As the usage line shows it, for example {@code [NUMBER...]}. */
  String written() {
    String word = repeatable ? placeholder + "..." : placeholder;
    return required ? word : "[" + word + "]";
  }
}
