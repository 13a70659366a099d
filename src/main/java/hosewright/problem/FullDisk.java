package hosewright.problem;

import java.util.regex.Pattern;

/** Knows by a system's words that a disk has no room left, which is for the user to mend. */
public final class FullDisk {
  private static final Pattern WORDS =
      Pattern.compile(
          "no space left|not enough space|file too large|quota exceeded", Pattern.CASE_INSENSITIVE);

  private FullDisk() {}

  /**
   * Whether a failure's message says so.
   *
   * @param message null says nothing
   */
  public static boolean isSaid(String message) {
    return message != null && WORDS.matcher(message).find();
  }
}
