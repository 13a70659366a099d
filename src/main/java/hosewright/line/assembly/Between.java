package hosewright.line.assembly;

import hosewright.job.question.Practice;
import hosewright.line.model.Role;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/**
 * What stands between two waterways that are given: those of the source, of a hose's couplings, of
 * the appliance. They decide how wide everything between them must be.
 *
 * @param parts in the order water meets them; one of them at the most divides or joins the line
 */
public record Between(Fixed from, List<Placed> parts, Fixed to) {
  private static final double LEAST_SHARE = Practice.named("narrow-fitting").limit().orElseThrow();

  /** Far below any difference of bores, far above what dividing two sizes may lose. */
  private static final double HAIR = 1e-9;

  public Between {
    parts = List.copyOf(parts);
  }

  /**
   * A waterway that is given.
   *
   * @param ofHose whether it is a hose's coupling, so that a leg begins or ends there
   */
  public record Fixed(End end, boolean ofHose) {
    double waterwayIn() {
      return end.sizeIn();
    }
  }

  /**
   * A part, or one side of a part that divides or joins the line, held to its two ends.
   *
   * @param hasIn how wide it is, in
   * @param leastIn how wide it must be at the least, in
   */
  public record Held(Placed part, double hasIn, double leastIn) {

    /** Whether it is as wide as it must be. */
    public boolean wideEnough() {
      return Between.wideEnough(hasIn, leastIn);
    }
  }

  /** Whether what is so wide may stand where a line is so wide at the least. */
  public static boolean wideEnough(double hasIn, double leastIn) {
    return hasIn >= leastIn * LEAST_SHARE - HAIR;
  }

  /** Every part of an assembled line, between which waterways it stands. */
  public static List<Between> of(List<Placed> line) {
    List<Between> all = new ArrayList<>();
    Fixed from = new Fixed(line.get(0).downstream().orElseThrow(), false);
    List<Placed> parts = new ArrayList<>();
    for (Placed part : line.subList(1, line.size())) {
      if (part.role().isFitting()) {
        parts.add(part);
        continue;
      }
      all.add(new Between(from, parts, new Fixed(part.upstream().orElseThrow(), part.isHose())));
      parts.clear();
      if (part.isHose()) {
        from = new Fixed(part.downstream().orElseThrow(), true);
      }
    }
    return all;
  }

  /** How wide what stands in a gap must be, in; a gap lies before the part of the same place. */
  public double leastIn(int gap) {
    double narrowerIn = Math.min(from.waterwayIn(), to.waterwayIn());
    int node = node();
    if (node < 0) {
      return narrowerIn;
    }
    Fixed near = gap <= node ? from : to;
    return near.ofHose() ? near.waterwayIn() : narrowerIn;
  }

  /** The place of the part that divides or joins the line; below zero where none does. */
  private int node() {
    for (int place = 0; place < parts.size(); place++) {
      if (parts.get(place).role().divides()) {
        return place;
      }
    }
    return -1;
  }

  /** Devices of which an end is not of the line's size on either side, with its size. */
  public List<Held> reduced() {
    double narrowerIn = Math.min(from.waterwayIn(), to.waterwayIn());
    double widerIn = Math.max(from.waterwayIn(), to.waterwayIn());
    List<Held> reduced = new ArrayList<>();
    for (Placed part : parts) {
      double sizeIn = part.smallestEndIn();
      if (part.role() == Role.DEVICE && sizeIn < narrowerIn) {
        reduced.add(new Held(part, sizeIn, narrowerIn));
      } else if (part.role() == Role.DEVICE && sizeIn > widerIn) {
        reduced.add(new Held(part, sizeIn, widerIn));
      }
    }
    return reduced;
  }

  /** Every part with what it must be; one that divides or joins with each of its sides. */
  public List<Held> held() {
    List<Held> held = new ArrayList<>();
    for (int place = 0; place < parts.size(); place++) {
      Placed part = parts.get(place);
      if (part.role().divides()) {
        held.add(new Held(part, part.portIn(part.upstream().orElseThrow()), leastIn(place)));
        held.add(new Held(part, part.portIn(part.downstream().orElseThrow()), leastIn(place + 1)));
      } else {
        held.add(new Held(part, part.waterwayIn(), leastIn(place)));
      }
    }
    return held;
  }
}
