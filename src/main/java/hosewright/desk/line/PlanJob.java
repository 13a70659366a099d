package hosewright.desk.line;

import hosewright.desk.Books;
import hosewright.desk.WrittenJob;
import hosewright.desk.kit.PlanWithParts;
import hosewright.line.model.LinePlan;
import java.util.Optional;
import java.util.function.Supplier;

/** Plans the line or the layout for a job, at its customer's prices. */
public final class PlanJob {
  private final Supplier<Books> books;

  public PlanJob(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The plan, which may be no feasible one.
   *
   * @throws hosewright.problem.BadInputException when the job names what the books do not know
   */
  public LinePlan plan(WrittenJob job) {
    try (Books open = books.get()) {
      return new PlanWithParts(open, Optional.empty()).plan(job).planned().plan();
    }
  }
}
