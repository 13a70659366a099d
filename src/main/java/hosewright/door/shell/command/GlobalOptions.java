package hosewright.door.shell.command;

import hosewright.problem.BadInputException;
import hosewright.problem.PlainText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What may be said with any command, taken out of its words.
 *
 * <p>A value that follows an option never starts with two dashes ({@code --note=--json} is the way
 * to write such a value), so these are found wherever they stand before a bare {@code --}.
 *
 * @param stores where the books are
 * @param colour whether colour was asked for or refused
 * @param rest the words that are left, in order
 */
public record GlobalOptions(
    Stores stores,
    Optional<Boolean> colour,
    boolean json,
    boolean verbose,
    boolean help,
    boolean version,
    List<String> rest) {

  private static final String COLOUR = "--color";

  /**
   * Where the books are.
   *
   * @param data the data folder asked for
   * @param db the address of the database asked for
   */
  public record Stores(Optional<String> data, Optional<String> db) {}

  /** The data folder asked for. */
  public Optional<String> data() {
    return stores.data();
  }

  /** The address of the database asked for. */
  public Optional<String> db() {
    return stores.db();
  }

  /**
   * Splits the words of one command.
   *
   * @throws BadInputException when {@code --data}, {@code --db} or {@code --color} has no value
   *     that can be used
   */
  public static GlobalOptions of(List<String> words) {
    Optional<String> data = Optional.empty();
    Optional<String> db = Optional.empty();
    Optional<Boolean> colour = Optional.empty();
    boolean json = false;
    boolean verbose = false;
    boolean help = false;
    boolean version = false;
    List<String> rest = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      String word = words.get(i);
      if (word.equals("--")) {
        rest.addAll(words.subList(i, words.size()));
        break;
      }
      switch (word) {
        case "--json" -> json = true;
        case "--verbose" -> verbose = true;
        case "--help", "-h" -> help = true;
        case "--version" -> version = true;
        case "--data" -> data = Optional.of(folder(++i < words.size() ? words.get(i) : ""));
        case "--db" -> db = Optional.of(address(++i < words.size() ? words.get(i) : ""));
        case COLOUR -> colour = colour(++i < words.size() ? words.get(i) : "");
        default -> {
          if (word.startsWith(COLOUR + "=")) {
            colour = colour(word.substring(COLOUR.length() + 1));
          } else if (word.startsWith("--data=")) {
            data = Optional.of(folder(word.substring("--data=".length())));
          } else if (word.startsWith("--db=")) {
            db = Optional.of(address(word.substring("--db=".length())));
          } else {
            rest.add(word);
          }
        }
      }
    }
    return new GlobalOptions(
        new Stores(data, db), colour, json, verbose, help, version, List.copyOf(rest));
  }

  private static Optional<Boolean> colour(String value) {
    return switch (value) {
      case "always" -> Optional.of(true);
      case "never" -> Optional.of(false);
      case "auto" -> Optional.empty();
      default ->
          throw new BadInputException(
              COLOUR, value, "always, never, or auto: on a terminal where NO_COLOR is not set");
    };
  }

  private static String folder(String value) {
    if (value.isBlank() || value.startsWith("--")) {
      throw new BadInputException("--data", "", "give the folder after it");
    }
    return PlainText.require("--data", value);
  }

  private static String address(String value) {
    if (value.isBlank() || value.startsWith("--")) {
      throw new BadInputException(
          "--db", "", "give the address of a database after it: jdbc:postgresql://HOST/DATABASE");
    }
    return PlainText.require("--db", value);
  }
}
