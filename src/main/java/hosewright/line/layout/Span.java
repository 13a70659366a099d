package hosewright.line.layout;

import hosewright.job.layout.LegJob;
import hosewright.thread.End;

/** A leg between two ends that it may be laid between. */
record Span(LegJob leg, End from, End to) {

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
