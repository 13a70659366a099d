package hosewright.problem;

import java.util.Collection;
import java.util.List;

/** What was named is not there: "There is no order 2: 'order list' shows all." */
public final class NoSuchThingException extends RefusalException {
  private static final long serialVersionUID = 1L;

  /**
   * @param thing what it would be: an order, a customer
   * @param named as the user named it
   * @param known what there is, by the names it goes by; the nearest is offered
   * @param next how to see what there is, or to make the first
   */
  public NoSuchThingException(String thing, String named, Collection<String> known, String next) {
    this(new Problem(thing, named, next, Nearest.to(named, known)));
  }

  private NoSuchThingException(Problem problem) {
    super(Kind.NO_SUCH_THING, sentence(problem), List.of(problem));
  }

  private static String sentence(Problem problem) {
    String missing =
        asSentence(
            "there is no %s %s: %s".formatted(problem.field(), problem.value(), problem.allowed()));
    return problem.nearest().isEmpty()
        ? missing
        : missing + " Did you mean '" + problem.nearest() + "'?";
  }
}
