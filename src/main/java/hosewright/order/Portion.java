package hosewright.order;

import hosewright.problem.BadInputException;
import hosewright.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/** So many pieces of some lines, as somebody receives or ships them. */
public final class Portion {
  private Portion() {}

  /**
   * Refuses quantities of lines there are none of, or beyond what each line has.
   *
   * @param quantities pieces by position
   * @param most how many a line has
   * @param what the words for these, such as {@code reserved}
   * @throws BadInputException naming every such line
   */
  public static <T> void check(
      Map<Integer, Integer> quantities,
      List<T> lines,
      ToIntFunction<T> position,
      ToIntFunction<T> most,
      String what) {
    List<Problem> problems = new ArrayList<>();
    quantities.forEach(
        (line, quantity) -> {
          int limit =
              lines.stream()
                  .filter(one -> position.applyAsInt(one) == line)
                  .mapToInt(most)
                  .findFirst()
                  .orElse(0);
          if (quantity < 1 || quantity > limit) {
            problems.add(
                Problem.of(
                    "line",
                    line + "=" + quantity,
                    limit == 0
                        ? "nothing of line " + line + " is " + what
                        : "1 to " + limit + ", which is " + what));
          }
        });
    if (!problems.isEmpty()) {
      throw new BadInputException(problems);
    }
  }
}
