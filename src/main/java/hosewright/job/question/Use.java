package hosewright.job.question;

import java.util.Locale;

/** What the line is for, which decides the marks its parts must carry. */
public enum Use {
  FIRE,
  WATER,
  DRINKING;

  static Use of(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }
}
