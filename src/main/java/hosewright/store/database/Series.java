package hosewright.store.database;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A series of papers, numbered from 1 without a gap. */
public enum Series {
  QUOTE("Q", "quote"),
  ORDER("O", "order"),
  PURCHASE("P", "purchase order");

  private final String letter;
  private final String paper;

  Series(String letter, String paper) {
    this.letter = letter;
    this.paper = paper;
  }

  /** What is numbered, in words. */
  public String paper() {
    return paper;
  }

  /** The series of that name; empty where there is none. */
  public static Optional<Series> named(String paper) {
    return Stream.of(values()).filter(series -> series.paper.equals(paper)).findFirst();
  }

  /** A number as it stands on paper: {@code Q-000001}. */
  public String written(int number) {
    return String.format(Locale.ROOT, "%s-%06d", letter, number);
  }

  /** All numbers after one, up to another, as they stand on paper. */
  public Stream<String> between(int last, int highest) {
    return IntStream.rangeClosed(last + 1, highest).mapToObj(this::written);
  }

  /** Whether a text is a number of this series as it stands on paper, at most so high. */
  public boolean isUpTo(String written, int highest) {
    return written.matches(letter + "-[0-9]{6,9}") && number(written) <= highest;
  }

  /** The number again. */
  public static int number(String written) {
    return Integer.parseInt(written.substring(written.indexOf('-') + 1));
  }
}
