package hosewright.door.shell.screen;

import java.util.regex.Pattern;

/** Colours what fails, what warns and what is a heading; the words say it all without. */
final class Colours {
  private static final String PLAIN = "\u001B[0m";
  private static final String BOLD = "\u001B[1m";
  private static final String RED = "\u001B[1;31m";
  private static final String YELLOW = "\u001B[33m";

  private static final Pattern FAILS = Pattern.compile("\\bNO SAFE PLAN\\b|\\bFAIL\\b|!!");
  private static final Pattern WARNS = Pattern.compile("\\bWARN\\b|(?m)^Take care$");
  private static final Pattern TABLE_HEADING =
      Pattern.compile("(?m)^(?=\\S| +\\S)(.+)$(?=\\n-{3,}$)");

  private Colours() {}

  static String in(String text) {
    String headed = TABLE_HEADING.matcher(text).replaceAll(BOLD + "$1" + PLAIN);
    String failing = FAILS.matcher(headed).replaceAll(RED + "$0" + PLAIN);
    return WARNS.matcher(failing).replaceAll(YELLOW + "$0" + PLAIN);
  }
}
