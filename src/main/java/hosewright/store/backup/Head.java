package hosewright.store.backup;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a backup says of itself first.
 *
 * @param schema the last migration of the books it was made of
 * @param program the version of the program that made it
 */
record Head(int form, int schema, String program, Instant made) {
  private static final Pattern WRITTEN =
      Pattern.compile(
          "form\t(?<form>\\d{1,4})\n"
              + "schema\t(?<schema>\\d{1,4})\n"
              + "program\t(?<program>[\\w.+-]{1,40})\n"
              + "made\t(?<made>[\\d:TZ.-]{20,30})\n");

  String written() {
    return "form\t%d\nschema\t%d\nprogram\t%s\nmade\t%s\n"
        .formatted(form, schema, program, made.truncatedTo(ChronoUnit.SECONDS));
  }

  /**
   * The head again.
   *
   * @throws IllegalArgumentException when it is none
   */
  static Head read(String text) {
    Matcher lines = WRITTEN.matcher(text);
    if (!lines.matches()) {
      throw new IllegalArgumentException(text);
    }
    return new Head(
        Integer.parseInt(lines.group("form")),
        Integer.parseInt(lines.group("schema")),
        lines.group("program"),
        CellType.MOMENT.read(lines.group("made")) instanceof java.time.OffsetDateTime moment
            ? moment.toInstant()
            : Instant.EPOCH);
  }
}
