package hosewright.line.assembly;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Collections;
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

  /** Whether some of its hose is made up on the bench. */
  public boolean madeUp() {
    return legs.stream().anyMatch(leg -> leg.hose().finish().madeUp());
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
   * @param leastIn how wide a bridge must be at the least, in
   */
  public record Gap(
      End from,
      End to,
      boolean fromPipe,
      boolean toPipe,
      int lines,
      Stretch stretch,
      double leastIn) {

    /** Asked for every gap of every topology: several times sooner than the usual one. */
    @Override
    public int hashCode() {
      int hash = 31 * from.hashCode() + to.hashCode();
      return 31 * (31 * hash + stretch.ordinal()) + lines;
    }
  }

  /** The gaps from source to appliance; nothing but like sections stands between other ends. */
  public List<Gap> gaps(End source, End appliance) {
    List<Gap> gaps = new ArrayList<>();
    List<Side> sides = sides(source, appliance);
    for (int i = 0; i < sides.size(); i++) {
      addGaps(sides.get(i), i == 0, i == sides.size() - 1, gaps);
    }
    return gaps;
  }

  /** What must stand in the line, between which waterways. */
  public List<Between> between(End source, End appliance) {
    return sides(source, appliance).stream().map(Side::between).toList();
  }

  /**
   * What stands between two waterways that are given.
   *
   * @param lines how many bridges side by side are needed over each of its gaps
   */
  private record Side(Between between, Stretch stretch, List<Integer> lines) {}

  private List<Side> sides(End source, End appliance) {
    List<Side> sides = new ArrayList<>();
    Between.Fixed from = new Between.Fixed(source, false);
    List<Bridge.Link> parts = before;
    Stretch stretch = Stretch.BEFORE_HOSE;
    int first = outlets;
    int later = outlets;
    for (int i = 0; i < legs.size(); i++) {
      LegShape leg = legs.get(i);
      Between.Fixed inlet = new Between.Fixed(leg.inlet(), true);
      Between.Fixed outlet = new Between.Fixed(leg.outlet(), true);
      int last = Math.max(parts.isEmpty() ? first : later, leg.lines());
      sides.add(side(from, parts, inlet, stretch, lines(parts.size(), first, later, last)));
      for (LegShape.Midway midway : leg.midway()) {
        List<Integer> lines = Collections.nCopies(midway.parts().size() + 1, leg.lines());
        sides.add(side(outlet, midway.parts(), inlet, Stretch.BETWEEN, lines));
      }
      from = outlet;
      parts = leg.after();
      stretch = behind(i);
      first = leg.lines();
      later = leg.afterLines();
    }
    int last = parts.isEmpty() ? first : later;
    Between.Fixed to = new Between.Fixed(appliance, false);
    sides.add(side(from, parts, to, stretch, lines(parts.size(), first, later, last)));
    return sides;
  }

  private static List<Integer> lines(int parts, int first, int later, int last) {
    List<Integer> lines = new ArrayList<>();
    for (int gap = 0; gap < parts; gap++) {
      lines.add(gap == 0 ? first : later);
    }
    lines.add(last);
    return lines;
  }

  private static Side side(
      Between.Fixed from,
      List<Bridge.Link> parts,
      Between.Fixed to,
      Stretch stretch,
      List<Integer> lines) {
    List<Placed> placed = parts.stream().map(part -> Placed.inLine(part, 1)).toList();
    return new Side(new Between(from, placed, to), stretch, lines);
  }

  private static void addGaps(Side side, boolean fromSource, boolean toAppliance, List<Gap> gaps) {
    Between between = side.between();
    End open = between.from().end();
    int last = between.parts().size();
    for (int gap = 0; gap <= last; gap++) {
      End next =
          gap < last ? between.parts().get(gap).upstream().orElseThrow() : between.to().end();
      gaps.add(
          new Gap(
              open,
              next,
              fromSource && gap == 0,
              toAppliance && gap == last,
              side.lines().get(gap),
              side.stretch(),
              between.leastIn(gap)));
      if (gap < last) {
        open = between.parts().get(gap).downstream().orElseThrow();
      }
    }
  }
}
