package hosewright.line.layout.search;

import hosewright.job.Job;
import hosewright.job.layout.LegJob;
import hosewright.line.search.LegWays;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A leg laid one way, with all that hangs behind it.
 *
 * @param job the leg between the ends that the plan chose
 * @param divider what divides the water where it ends; empty at an appliance
 * @param behind the legs that begin there, in the order of the divider's outlets
 * @param needPsi what it must deliver where it ends, psi
 */
public record LaidLeg(
    LegJob asked,
    Job job,
    LegWays.Way way,
    Optional<Divider> divider,
    List<LaidLeg> behind,
    double needPsi) {
  public LaidLeg {
    behind = List.copyOf(behind);
  }

  /** What it needs where it begins, psi, so that every way behind it gets what it needs. */
  public double needsPsi() {
    return way.levels().neededPsi(needPsi);
  }

  /** This leg and every leg behind it, in the order water meets them. */
  public Stream<LaidLeg> all() {
    return Stream.concat(Stream.of(this), behind.stream().flatMap(LaidLeg::all));
  }

  /** Its lines by themselves, each at its share of the flow: itself where it is one. */
  public List<LaidLeg> members() {
    if (way.abreast().isEmpty()) {
      return List.of(this);
    }
    List<LaidLeg> members = new ArrayList<>();
    for (int i = 0; i < way.abreast().size(); i++) {
      LegWays.Abreast one = way.abreast().get(i);
      LegJob member = asked.joined().get(i);
      Job alone = new Span(member, job.from(), job.to()).job();
      members.add(
          new LaidLeg(
              member,
              alone.flowing(one.flowGpm(), job.needPsi()),
              one.way(),
              divider,
              behind,
              needPsi));
    }
    return members;
  }

  /** What the divider at its end takes on the way to a leg behind it, psi. */
  public double dividerPsi(int leg) {
    return divider.map(one -> one.lossPsi(leg)).orElse(0.0);
  }
}
