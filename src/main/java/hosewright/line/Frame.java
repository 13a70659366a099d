package hosewright.line;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.List;

/**
 * The big choices of a plan: which hose, which way round, how many lines side by side, and what
 * must stand in the line. What is left to choose is the lay and the bridge over each gap.
 *
 * @param before what stands between source and hose, in order: valve, meter, backflow preventer,
 *     and last the wye when there is more than one line
 * @param after what stands between hose and appliance, in order: first the siamese when there is
 *     more than one line, then devices asked for there
 */
record Frame(
    HoseLine hose, boolean reversed, int lines, List<Bridge.Link> before, List<Bridge.Link> after) {

  Frame {
    before = List.copyOf(before);
    after = List.copyOf(after);
  }

  End inlet() {
    return reversed ? hose.outlet() : hose.inlet();
  }

  End outlet() {
    return reversed ? hose.inlet() : hose.outlet();
  }

  /** What must stand in the line, in order. */
  List<Bridge.Link> fixedParts() {
    List<Bridge.Link> parts = new ArrayList<>(before);
    parts.addAll(after);
    return parts;
  }

  /**
   * A place where two ends must be joined, over a bridge if need be.
   *
   * @param lines how many bridges are needed side by side
   */
  record Gap(End from, End to, boolean fromPipe, boolean toPipe, int lines) {}

  /**
   * The gaps from source to appliance; the hose stands behind {@code before().size() + 1} of them.
   */
  List<Gap> gaps(End source, End appliance) {
    List<Gap> gaps = new ArrayList<>();
    End open = source;
    boolean pipe = true;
    for (Bridge.Link part : before) {
      gaps.add(new Gap(open, part.upstream(), pipe, false, 1));
      open = part.downstream();
      pipe = false;
    }
    gaps.add(new Gap(open, inlet(), pipe, false, lines));
    open = outlet();
    int sideBySide = lines;
    for (Bridge.Link part : after) {
      gaps.add(new Gap(open, part.upstream(), false, false, sideBySide));
      open = part.downstream();
      sideBySide = 1;
    }
    gaps.add(new Gap(open, appliance, false, true, sideBySide));
    return gaps;
  }
}
