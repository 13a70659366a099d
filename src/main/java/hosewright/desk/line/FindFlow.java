package hosewright.desk.line;

import hosewright.desk.Books;
import hosewright.desk.Planning;
import hosewright.job.Job;
import hosewright.job.SoughtFlow;
import hosewright.job.layout.LayoutJob;
import hosewright.line.layout.LayoutFlow;
import hosewright.line.model.LinePlan;
import hosewright.line.plan.Flowing;
import hosewright.line.plan.Planner;
import java.util.Optional;
import java.util.function.Supplier;

/** Finds the flow that a source brings through the line planned for a job. */
public final class FindFlow {
  private final Supplier<Books> books;

  public FindFlow(Supplier<Books> books) {
    this.books = books;
  }

  /**
   * What arrives, or why nothing can.
   *
   * @param flow empty where no line can be laid at all
   * @param noPlan the plan that says why; empty where there is a flow
   */
  public record Found(Optional<Flowing> flow, Optional<LinePlan> noPlan) {}

  /**
   * What arrives through a layout, or why nothing can.
   *
   * @param flow empty where it cannot be laid at all
   * @param noPlan the plan that says why; empty where there is a flow
   */
  public record FoundLayout(Optional<LayoutFlow> flow, Optional<LinePlan> noPlan) {}

  /**
   * The flow through a layout of legs.
   *
   * @throws hosewright.problem.BadInputException as {@link #find(SoughtFlow)}
   */
  public FoundLayout find(LayoutJob layout) {
    try (Books open = books.get()) {
      Planner planner = new Planning(open).planner(layout.whole());
      Optional<LayoutFlow> flow = planner.flow(layout);
      return new FoundLayout(
          flow, flow.isPresent() ? Optional.empty() : Optional.of(planner.plan(layout)));
    }
  }

  /**
   * The flow.
   *
   * @throws hosewright.problem.BadInputException when the job names what the books do not know, or
   *     tells nothing of its source
   */
  public Found find(SoughtFlow sought) {
    Job job = sought.job();
    try (Books open = books.get()) {
      Optional<Flowing> flow = new Planning(open).planner(job).flow(sought);
      return flow.isPresent()
          ? new Found(flow, Optional.empty())
          : new Found(flow, Optional.of(new Planning(open).plan(job).plan()));
    }
  }
}
