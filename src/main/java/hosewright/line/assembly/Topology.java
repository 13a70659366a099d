package hosewright.line.assembly;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/**
 * The big choices of a plan: which hose, which way round, how many lines side by side, and what
 * must stand in the line. What is left to choose is the lay of each leg and the bridge over each
 * gap.
 *
 * @param outlets like outlets of the source that the line starts from
 * @param before what stands between source and hose, in order: valve, meter, backflow preventer,
 *     and last the wye when lines side by side start from one outlet; once for each outlet
 * @param legs the stretches of hose from the source on: one, or the supply line and the attack
 *     lines behind its wye
 */
public record Topology(int outlets, List<Bridge.Link> before, List<LegShape> legs) {

  public Topology {
    before = List.copyOf(before);
    legs = List.copyOf(legs);
  }

  /** The leg that starts at the source. */
  public LegShape supply() {
    return legs.get(0);
  }

  /** The leg that ends at the appliance. */
  public LegShape last() {
    return legs.get(legs.size() - 1);
  }

  /** The hose that starts at the source. */
  public HoseLine hose() {
    return supply().hose();
  }

  /** Lines side by side at the source. */
  public int lines() {
    return supply().lines();
  }

  /** Where along the line something stands, as far as it decides what pressure it sees. */
  public enum Stretch {
    BEFORE_HOSE,
    BETWEEN,
    BEHIND_HOSE
  }

  /**
   * A part that must stand in the line.
   *
   * @param lines how many times it stands side by side
   */
  public record Fixed(Bridge.Link part, int lines, Stretch stretch) {}

  /** What must stand in the line, in order. */
  public List<Fixed> fixedParts() {
    List<Fixed> parts = new ArrayList<>();
    before.forEach(part -> parts.add(new Fixed(part, outlets, Stretch.BEFORE_HOSE)));
    for (int i = 0; i < legs.size(); i++) {
      LegShape leg = legs.get(i);
      Stretch behind = behind(i);
      leg.midway().stream()
          .flatMap(midway -> midway.parts().stream())
          .forEach(part -> parts.add(new Fixed(part, leg.lines(), Stretch.BETWEEN)));
      leg.after().forEach(part -> parts.add(new Fixed(part, leg.afterLines(), behind)));
    }
    return parts;
  }

  private Stretch behind(int leg) {
    return leg == legs.size() - 1 ? Stretch.BEHIND_HOSE : Stretch.BETWEEN;
  }

  /**
   * A place where two ends must be joined, over a bridge if need be.
   *
   * @param lines how many bridges are needed side by side
   */
  public record Gap(
      End from, End to, boolean fromPipe, boolean toPipe, int lines, Stretch stretch) {}

  /** The gaps from source to appliance; nothing but like sections stands between other ends. */
  public List<Gap> gaps(End source, End appliance) {
    List<Gap> gaps = new ArrayList<>();
    End open = source;
    boolean pipe = true;
    int sideBySide = outlets;
    for (Bridge.Link part : before) {
      gaps.add(new Gap(open, part.upstream(), pipe, false, outlets, Stretch.BEFORE_HOSE));
      open = part.downstream();
      pipe = false;
    }
    for (int i = 0; i < legs.size(); i++) {
      LegShape leg = legs.get(i);
      Stretch into = i == 0 ? Stretch.BEFORE_HOSE : Stretch.BETWEEN;
      int lines = Math.max(sideBySide, leg.lines());
      gaps.add(new Gap(open, leg.inlet(), pipe, false, lines, into));
      for (LegShape.Midway midway : leg.midway()) {
        open = leg.outlet();
        for (Bridge.Link part : midway.parts()) {
          gaps.add(new Gap(open, part.upstream(), false, false, leg.lines(), Stretch.BETWEEN));
          open = part.downstream();
        }
        gaps.add(new Gap(open, leg.inlet(), false, false, leg.lines(), Stretch.BETWEEN));
      }
      open = leg.outlet();
      pipe = false;
      sideBySide = leg.lines();
      Stretch behind = behind(i);
      for (Bridge.Link part : leg.after()) {
        gaps.add(new Gap(open, part.upstream(), false, false, sideBySide, behind));
        open = part.downstream();
        sideBySide = leg.afterLines();
      }
    }
    gaps.add(new Gap(open, appliance, false, true, sideBySide, Stretch.BEHIND_HOSE));
    return gaps;
  }
}
