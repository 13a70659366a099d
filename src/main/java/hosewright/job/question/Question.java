package hosewright.job.question;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * A field whose answers are read as one type.
 *
 * @param <T> what an answer is read as
 */
public final class Question<T> extends JobField {
  private final BiFunction<String, String, T> reader;

  Question(QuestionDraft<T> draft, int place) {
    super(draft, place);
    this.reader = draft.reader;
  }

  /**
   * What an answer says.
   *
   * @throws BadInputException naming this field, what is allowed and the nearest right thing
   */
  @Override
  public T read(String text) {
    try {
      return reader.apply(word(), text.strip());
    } catch (BadInputException e) {
      List<Problem> own =
          e.problems().stream()
              .map(
                  problem ->
                      new Problem(word(), problem.value(), problem.allowed(), problem.nearest()))
              .toList();
      throw new BadInputException(own);
    }
  }

  /** The answer taken where none is given; empty where that is left to the plan. */
  Optional<T> usual() {
    return whenOpen().usual().map(this::read);
  }
}
