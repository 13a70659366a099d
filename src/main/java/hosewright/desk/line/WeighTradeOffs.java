package hosewright.desk.line;

import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.job.Job;
import java.util.function.Supplier;

/** Weighs price, pressure, weight and coupling against each other for a job. */
public final class WeighTradeOffs {
  private final Supplier<Books> books;

  public WeighTradeOffs(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * Lines of which each is better in something than every other.
   *
   * @throws hosewright.problem.BadInputException when the job names what the books do not know
   */
  public TradeOffs weigh(Job job) {
    try (Books open = books.get()) {
      return TradeOffs.of(job, new Planning(open).planner(job).front(job, TradeOffs.MOST_ROWS));
    }
  }
}
