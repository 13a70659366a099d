package hosewright.line.shape;

import hosewright.job.Job;
import hosewright.line.assembly.Between;
import hosewright.line.assembly.Bridge;
import hosewright.line.assembly.Placed;
import hosewright.line.check.PracticeChecks;
import java.util.List;
import java.util.function.Predicate;

/** Of the devices that are sold, those that go into a line without a reducer and an increaser. */
final class FullSize {
  private final Job job;

  FullSize(Job job) {
    this.job = job;
  }

  /**
   * Of every choice of devices that stand one after another, those of full size; where none is
   * sold, those no narrower than the line, and else all.
   *
   * @param upstreamIn size of the end before them, in
   * @param downstreamIn size of the end behind them, in
   */
  List<List<Bridge.Link>> of(
      List<List<Bridge.Link>> choices, double upstreamIn, double downstreamIn) {
    if (PracticeChecks.anyDevice(job)) {
      return choices;
    }
    double narrowerIn = Math.min(upstreamIn, downstreamIn);
    Predicate<List<Bridge.Link>> wide =
        devices -> devices.stream().allMatch(device -> wide(device, narrowerIn));
    List<List<Bridge.Link>> fitting =
        choices.stream()
            .filter(wide)
            .filter(devices -> oneWay(devices, upstreamIn, downstreamIn))
            .toList();
    if (!fitting.isEmpty()) {
      return fitting;
    }
    List<List<Bridge.Link>> notNarrower = choices.stream().filter(wide).toList();
    return notNarrower.isEmpty() ? choices : notNarrower;
  }

  private static boolean wide(Bridge.Link device, double leastIn) {
    return Between.wideEnough(Placed.inLine(device, 1).waterwayIn(), leastIn);
  }

  /** Whether the line grows only narrower along them, or only wider. */
  private static boolean oneWay(List<Bridge.Link> devices, double upstreamIn, double downstreamIn) {
    boolean narrower = true;
    boolean wider = true;
    double beforeIn = upstreamIn;
    for (Bridge.Link device : devices) {
      double inIn = device.upstream().sizeIn();
      double outIn = device.downstream().sizeIn();
      narrower &= inIn <= beforeIn && outIn <= inIn;
      wider &= inIn >= beforeIn && outIn >= inIn;
      beforeIn = outIn;
    }
    return narrower && downstreamIn <= beforeIn || wider && downstreamIn >= beforeIn;
  }
}
