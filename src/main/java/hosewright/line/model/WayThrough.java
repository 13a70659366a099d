package hosewright.line.model;

import hosewright.line.model.Hydraulics.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One way for water through a layout.
 *
 * @param legs from the source to an appliance
 */
public record WayThrough(List<Leg> legs) {
  public WayThrough {
    legs = List.copyOf(legs);
  }

  /** Every way from a source to an appliance, in the order the legs are listed. */
  public static List<WayThrough> all(Layout layout) {
    List<WayThrough> all = new ArrayList<>();
    for (Node node : layout.nodes()) {
      if (node.role() == Role.SOURCE) {
        goOn(layout, node, List.of(), all);
      }
    }
    return all;
  }

  private static void goOn(Layout layout, Node at, List<Leg> legs, List<WayThrough> all) {
    for (Leg leg : layout.behind(at)) {
      List<Leg> longer = new ArrayList<>(legs);
      longer.add(leg);
      Node next = layout.node(leg.ends());
      if (next.role() == Role.APPLIANCE) {
        all.add(new WayThrough(longer));
      } else {
        goOn(layout, next, longer, all);
      }
    }
  }

  /** Every part on it, source first. */
  public List<Part> run(Layout layout) {
    List<Part> run = new ArrayList<>();
    run.add(layout.node(legs.get(0).begins()).part());
    for (Leg leg : legs) {
      run.addAll(leg.parts());
      run.add(layout.node(leg.ends()).part());
    }
    return run;
  }

  /** The leg that ends at the appliance. */
  public Leg last() {
    return legs.get(legs.size() - 1);
  }

  /** The legs it leads through, in words. */
  public String words() {
    return legs.stream().map(Leg::name).collect(Collectors.joining(", "));
  }

  /** Pressure from the source to the appliance; empty where its legs do not tell. */
  public List<Station> profile() {
    return legs.stream().flatMap(leg -> leg.water().profile().stream()).toList();
  }
}
