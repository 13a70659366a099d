package hosewright.desk;

import hosewright.problem.BadInputException;
import hosewright.problem.NoSuchThingException;
import hosewright.problem.Problem;
import hosewright.problem.RefusalException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Gathers everything wrong with what was typed, so that it is all said at once. */
public final class Refusals {
  private final List<RefusalException> refused = new ArrayList<>();

  /** What the reader gives; empty when it refuses, and then its problems are kept. */
  public <T> Optional<T> read(Supplier<T> reader) {
    try {
      return Optional.of(reader.get());
    } catch (BadInputException | NoSuchThingException e) {
      refused.add(e);
      return Optional.empty();
    }
  }

  /** What the reader gives; its problems are named after the option it was typed behind. */
  public <T> Optional<T> read(String option, Supplier<T> reader) {
    return read(() -> named(option, reader));
  }

  public void add(String field, String value, String allowed) {
    add(Problem.of(field, value, allowed));
  }

  public void add(Problem problem) {
    refused.add(new BadInputException(List.of(problem)));
  }

  /**
   * Ends the reading.
   *
   * @throws RefusalException when anything was refused
   */
  public void throwAny() {
    if (refused.size() == 1) {
      throw refused.get(0);
    }
    if (!refused.isEmpty()) {
      throw BadInputException.ofAll(refused);
    }
  }

  /** What the reader gives; its problems are renamed to the option the user knows. */
  public static <T> T named(String option, Supplier<T> reader) {
    try {
      return reader.get();
    } catch (BadInputException e) {
      throw new BadInputException(
          e.problems().stream()
              .map(p -> new Problem(option, p.value(), p.allowed(), p.nearest()))
              .toList());
    }
  }
}
