package hosewright.line.model;

import java.util.Optional;

/**
 * Something asked for besides the line, and what came of it.
 *
 * @param asked the word or item number it was asked for by
 * @param item empty where it is still to be sourced
 * @param description what a buyer reads
 * @param where its place
 * @param why it has its place and number
 * @param care what a buyer must see to
 */
public record Accessory(
    String asked,
    Optional<String> item,
    String description,
    int count,
    String where,
    String why,
    Optional<String> care) {

  /** As a sentence without its full stop. */
  public String sentence() {
    return "%d x %s: %s, because %s".formatted(count, item.orElse(description), where, why);
  }
}
