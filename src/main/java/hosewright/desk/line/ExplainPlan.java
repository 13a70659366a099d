package hosewright.desk.line;

import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.job.Job;
import hosewright.line.plan.Planner;
import java.util.function.Supplier;

/** Plans the line for a job and tells what was weighed, and why every other hose lost. */
public final class ExplainPlan {
  private final Supplier<Books> books;

  public ExplainPlan(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * The plan with its reasons.
   *
   * @throws hosewright.problem.BadInputException when the job names what the books do not know
   */
  public Planner.Explained explain(Job job) {
    try (Books open = books.get()) {
      return new Planning(open).planner(job).explain(job);
    }
  }
}
