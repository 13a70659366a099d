package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What stands at the head of a job's papers.
 *
 * @param title a short name
 * @param customer whose terms price the plan; empty for list prices
 * @param date the day prices are taken of; empty for today
 */
public record Heading(String title, Optional<String> customer, Optional<LocalDate> date) {

  static Heading read(Answers answers, Ends ends) {
    return new Heading(
        answers.of(JobField.TITLE).orElseGet(() -> ends.from() + " to " + ends.to()),
        answers.of(JobField.CUSTOMER),
        answers.of(JobField.DATE));
  }

  Heading on(LocalDate day) {
    return new Heading(title, customer, Optional.of(day));
  }
}
