package hosewright.line;

import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every lay that a search of every line looks at, found the plain way. */
final class PlainLays {
  private final Job job;

  PlainLays(Job job) {
    this.job = job;
  }

  /** Whether some section of a line could be left out. */
  static boolean hasSpare(Frame frame, List<Lay> lays) {
    boolean spare = false;
    for (int i = 0; i < lays.size(); i++) {
      Leg leg = frame.legs().get(i);
      boolean more = lays.get(i).sections() > leg.midway().size() + 1;
      spare |= more && spares(leg.hose(), lays.get(i), leg.neededFt()) > 0;
    }
    return spare;
  }

  /** Every lay of a leg, of one section where sections do not couple to each other. */
  List<Lay> of(Leg leg) {
    End inlet = leg.hose().inlet();
    boolean couples = BruteForce.joins(leg.hose().outlet(), inlet, false);
    List<Lay> lays = new ArrayList<>(lays(leg));
    lays.removeIf(lay -> !couples && lay.sections() > 1);
    return lays;
  }

  /**
   * Every choice of sections that covers the run, gives each station a coupling, and has one
   * section to spare at the most.
   */
  private List<Lay> lays(Leg leg) {
    HoseLine hose = leg.hose();
    double neededFt = leg.neededFt();
    double shortestFt =
        hose.options().stream().mapToDouble(SectionOption::lengthFt).min().orElseThrow();
    List<Lay> lays = new ArrayList<>();
    int most = Math.max((int) Math.ceil(neededFt / shortestFt), leg.midway().size()) + 1;
    addLays(hose, most, new ArrayList<>(), lays);
    lays.removeIf(
        lay ->
            lay.lengthFt() < neededFt - 1e-9
                || lay.sections() <= leg.midway().size()
                || spares(hose, lay, neededFt) > Math.max(1, leg.midway().size()));
    lays.removeIf(lay -> !enoughOwned(hose, lay));
    return lays;
  }

  /** Whether the buyer owns as many as are laid of what is not bought. */
  private boolean enoughOwned(HoseLine hose, Lay lay) {
    for (int i = 0; i < hose.options().size(); i++) {
      int laid = lay.counts().get(i) * job.wishes().lines().orElse(1);
      if (hose.options().get(i).owned().map(owned -> laid > owned.count()).orElse(false)) {
        return false;
      }
    }
    return true;
  }

  /** How many sections could be left out. */
  private static int spares(HoseLine hose, Lay lay, double neededFt) {
    List<Double> laidFt = new ArrayList<>();
    for (int i = 0; i < hose.options().size(); i++) {
      for (int section = 0; section < lay.counts().get(i); section++) {
        laidFt.add(hose.options().get(i).lengthFt());
      }
    }
    laidFt.sort(Comparator.naturalOrder());
    double leftFt = lay.lengthFt();
    int spared = 0;
    while (leftFt - laidFt.get(spared) >= neededFt - 1e-9) {
      leftFt -= laidFt.get(spared++);
    }
    return spared;
  }

  private static void addLays(HoseLine hose, int most, List<Integer> counts, List<Lay> lays) {
    int option = counts.size();
    if (option == hose.options().size()) {
      double lengthFt = 0;
      for (int i = 0; i < option; i++) {
        lengthFt += counts.get(i) * hose.options().get(i).lengthFt();
      }
      lays.add(new Lay(List.copyOf(counts), lengthFt));
      return;
    }
    for (int count = 0; count <= most; count++) {
      counts.add(count);
      addLays(hose, most - count, counts, lays);
      counts.remove(option);
    }
  }
}
