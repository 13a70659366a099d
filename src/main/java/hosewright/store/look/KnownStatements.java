package hosewright.store.look;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Every statement by which the embedded store remembers what our migrations made, at any version. A
 * test writes them down anew from the migrations and holds this list to them.
 */
record KnownStatements(Set<String> statements) {
  private static final String FILE = "known-statements.txt";

  /** Differs from one store of ours to the next and cannot do anything. */
  private static final List<Varying> VARYING =
      List.of(
          new Varying("SET CREATE_BUILD ", "^SET CREATE_BUILD \\d{1,6}$", "SET CREATE_BUILD"),
          new Varying("SALT", "(?<=\"SA\") SALT '[0-9a-f]*' HASH '[0-9a-f]*'(?= ADMIN$)", ""),
          new Varying("SELECTIVITY", " SELECTIVITY \\d{1,3}(?=[,)\\s])", ""),
          // Names of indexes are counted from what stood there when they were made.
          new Varying("_INDEX_", "(?<=_INDEX_)[0-9A-F_]{1,12}(?=\")", ""),
          new Varying("PRIMARY_KEY_", "(?<=\"PRIMARY_KEY_)[0-9A-F_]{1,12}(?=\")", ""));

  /**
   * A part of a statement and what it is taken for.
   *
   * @param word stands in every statement with such a part, and is looked for faster
   */
  private record Varying(String word, Pattern part, String by) {
    Varying(String word, String part, String by) {
      this(word, Pattern.compile(part), by);
    }

    String taken(String statement) {
      return statement.contains(word) ? part.matcher(statement).replaceAll(by) : statement;
    }
  }

  static KnownStatements read() {
    try (BufferedReader lines =
        new BufferedReader(
            new InputStreamReader(
                KnownStatements.class.getResourceAsStream(FILE), StandardCharsets.UTF_8))) {
      return new KnownStatements(lines.lines().collect(Collectors.toUnmodifiableSet()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean has(String statement) {
    return statements.contains(plain(statement));
  }

  /** A statement without what differs from one store to the next. */
  static String plain(String statement) {
    String plain = spaced(statement);
    for (Varying varying : VARYING) {
      plain = varying.taken(plain);
    }
    return plain;
  }

  /** With one space where there are several, or a line's end. */
  private static String spaced(String statement) {
    StringBuilder spaced = new StringBuilder(statement.length());
    boolean afterSpace = false;
    for (int i = 0; i < statement.length(); i++) {
      char c = statement.charAt(i);
      boolean space = c == ' ' || c == '\n' || c == '\r' || c == '\t';
      if (!space) {
        spaced.append(c);
      } else if (!afterSpace) {
        spaced.append(' ');
      }
      afterSpace = space;
    }
    return spaced.toString();
  }
}
