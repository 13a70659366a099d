package hosewright.line.layout.search;

import hosewright.job.Ends;
import hosewright.job.Job;
import hosewright.job.layout.LegJob;
import hosewright.job.question.ApplianceKind;
import hosewright.job.question.SourceKind;
import hosewright.thread.End;
import java.util.Optional;

/** A leg between two ends that it may be laid between. */
public record Span(LegJob leg, End from, End to) {

  /** What is asked of the leg between them, fed from nothing yet. */
  public Job job() {
    Job job = leg.job();
    return job.between(
            new Ends(
                leg.behind().isEmpty() ? job.source() : SourceKind.OUTLET,
                from,
                leg.last() ? job.appliance() : ApplianceKind.APPLIANCE,
                to))
        .withSupply(Optional.empty());
  }

  /** Legs are told apart by their names, which is quick: a leg's own hash runs over its job. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Span span
        && leg.name().equals(span.leg.name())
        && from.equals(span.from)
        && to.equals(span.to);
  }

  @Override
  public int hashCode() {
    return (leg.name().hashCode() * 31 + from.hashCode()) * 31 + to.hashCode();
  }
}
