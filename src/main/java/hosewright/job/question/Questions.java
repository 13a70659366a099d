package hosewright.job.question;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is asked, in the order in which a person at the counter would. */
public final class Questions {
  private static final List<JobField> ORDER =
      JobField.values().stream()
          .filter(field -> field.asking().ever())
          .sorted(Comparator.comparing(field -> field.asking().last()))
          .toList();

  private final boolean forQuote;

  /**
   * @param forQuote whether a customer must be named
   */
  public Questions(boolean forQuote) {
    this.forQuote = forQuote;
  }

  /** The first question that matters and is neither answered nor passed over. */
  public Optional<JobField> next(Map<JobField, String> answers, Set<JobField> passed) {
    return ORDER.stream()
        .filter(field -> !answers.containsKey(field))
        .filter(field -> !passed.contains(field))
        .filter(field -> field.asking().matters().test(answers))
        .findFirst();
  }

  public boolean needed(JobField field, Map<JobField, String> answers) {
    return field.required(answers)
        || field.asking().needed().test(answers)
        || (forQuote && field.equals(JobField.CUSTOMER));
  }
}
