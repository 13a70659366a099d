package hosewright.job.question;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.lang3.StringUtils;

/** What is known of a field of a job before anybody answers it. */
public abstract sealed class FieldFacts permits JobField {
  /** By what stands for an answer in help. */
  private static final Map<String, String> UNITS =
      Map.of(
          "LENGTH", "ft",
          "FLOW", "gpm",
          "PRESSURE", "psi",
          "SIZE", "in",
          "PERCENT", "%",
          "WEIGHT", "lb",
          "TEMPERATURE", "F");

  private final QuestionDraft<?> facts;

  FieldFacts(QuestionDraft<?> facts) {
    this.facts = facts;
  }

  public final String word() {
    return facts.word;
  }

  public final String placeholder() {
    return facts.placeholder;
  }

  /** What the field says, in a few words. */
  public final String meaning() {
    return facts.meaning;
  }

  /** Something that may be typed there. */
  public final String example() {
    return facts.example;
  }

  /** Whether a job cannot be read without it, given the other answers. */
  public final boolean required(Map<JobField, String> answers) {
    return facts.required.test(answers);
  }

  /** Whether an answer is a number with a unit. */
  public final boolean isMeasured() {
    return facts.sort == QuestionDraft.Sort.MEASURE;
  }

  /** The unit that a number alone is in where a form shows it; empty for what is no measure. */
  public final Optional<String> unit() {
    return isMeasured() ? Optional.ofNullable(UNITS.get(facts.placeholder)) : Optional.empty();
  }

  /** What a person is asked, in plain words. */
  public final String question() {
    return facts.asking.question().isEmpty()
        ? StringUtils.capitalize(facts.meaning) + "?"
        : facts.asking.question();
  }

  /** Whether it is answered by yes or no, so that its word alone says yes. */
  public final boolean isFlag() {
    return facts.sort == QuestionDraft.Sort.FLAG;
  }

  /** The few words an answer is one of; empty where there are more. */
  public final List<String> choices() {
    return facts.words;
  }

  public final Offer offer() {
    return facts.offer;
  }

  /** Whether it stays as it is when a quote is revised. */
  public final boolean stays() {
    return facts.stays;
  }

  public final Asking asking() {
    return facts.asking;
  }

  public final WhenOpen whenOpen() {
    return facts.whenOpen;
  }

  @Override
  public final boolean equals(Object other) {
    return this == other;
  }

  @Override
  public final int hashCode() {
    return word().hashCode();
  }

  @Override
  public final String toString() {
    return word();
  }
}
