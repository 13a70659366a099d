package hosewright.desk.quote;

import hosewright.desk.quote.LineChange.Kind;
import java.util.List;
import java.util.Optional;

/**
 * What is to be different on a quote beside its job.
 *
 * @param discountReason why discounts are given; it is printed on the quote
 * @param notesFile name of a text file whose sentences take the place of the notes there
 * @param notes sentences for the buyer, beside those there
 * @param termsFile name of a text file of terms of sale
 * @param group number of the group that gets the lines added and the job's answers; the first
 *     without it
 */
public record Changes(
    List<LineChange> lines,
    Optional<String> discountReason,
    Optional<String> notesFile,
    List<String> notes,
    Optional<String> termsFile,
    Optional<Integer> group) {

  /** Nothing different. */
  public static final Changes NONE =
      new Changes(List.of(), Optional.empty(), Optional.empty(), List.of(), Optional.empty());

  /** What is to be different in the first group. */
  public Changes(
      List<LineChange> lines,
      Optional<String> discountReason,
      Optional<String> notesFile,
      List<String> notes,
      Optional<String> termsFile) {
    this(lines, discountReason, notesFile, notes, termsFile, Optional.empty());
  }

  public Changes {
    lines = List.copyOf(lines);
    notes = List.copyOf(notes);
  }

  List<String> of(Kind kind) {
    return lines.stream().filter(line -> line.kind() == kind).map(LineChange::text).toList();
  }
}
