package hosewright.job.question;

import java.util.List;
import java.util.Map;

/** What is known of a field of a job before anybody answers it. */
public abstract sealed class FieldFacts permits JobField {
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
