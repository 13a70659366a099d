package hosewright.problem;

/**
 * One thing wrong with what a user gave.
 *
 * @param field the name the user knows it by: an option, a job-file key, a column
 * @param value what was given, as given; empty when it was missing
 * @param allowed what is allowed there, in words
 * @param nearest the nearest right thing, ready to type; empty when there is none
 */
public record Problem(String field, String value, String allowed, String nearest) {

  public static Problem of(String field, String value, String allowed) {
    return new Problem(field, value, allowed, "");
  }

  /** One line for the user. */
  public String sentence() {
    String given = value.isEmpty() ? field + " is missing" : field + " cannot be '" + value + "'";
    String suggestion = nearest.isEmpty() ? "" : " Did you mean '" + nearest + "'?";
    return given + ": " + allowed + "." + suggestion;
  }
}
