package hosewright.line.search;

import hosewright.catalogue.NetPrice;
import hosewright.catalogue.Rating;
import hosewright.job.Job;
import hosewright.line.assembly.HoseLine;
import hosewright.line.assembly.Lay;
import hosewright.line.assembly.LegShape;
import hosewright.line.assembly.SectionOption;
import hosewright.line.assembly.Topology;
import hosewright.line.goods.Availability;
import hosewright.thread.End;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.joda.money.Money;

/** Every lay that a search of every line looks at, found the plain way. */
final class PlainLays {
  private final Job job;
  private final Map<HoseLine, boolean[]> oddOf = new IdentityHashMap<>();

  /** By hose, feet needed and number of stations, which alone decide. */
  private final Map<HoseLine, Map<List<Number>, List<Lay>>> laysOf = new IdentityHashMap<>();

  PlainLays(Job job) {
    this.job = job;
  }

  /** Whether some section of a line could be left out. */
  static boolean hasSpare(Topology topology, List<Lay> lays) {
    boolean spare = false;
    for (int i = 0; i < lays.size(); i++) {
      LegShape leg = topology.legs().get(i);
      boolean more = lays.get(i).sections() > leg.midway().size() + 1;
      spare |= more && spares(leg.hose(), lays.get(i), leg.neededFt()) > 0;
    }
    return spare;
  }

  /**
   * Whether some section is laid for which another of its make and length costs no more however
   * many are bought, weighs no more, is no weaker and can be had in any number; of two alike the
   * later is odd.
   */
  boolean hasOdd(Topology topology, List<Lay> lays, NetPrice prices) {
    for (int leg = 0; leg < lays.size(); leg++) {
      boolean[] ofHose =
          oddOf.computeIfAbsent(topology.legs().get(leg).hose(), h -> odd(h, prices));
      for (int i = 0; i < ofHose.length; i++) {
        if (ofHose[i] && lays.get(leg).counts().get(i) > 0) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean[] odd(HoseLine hose, NetPrice prices) {
    List<SectionOption> options = hose.options();
    boolean[] odd = new boolean[options.size()];
    for (int i = 0; i < odd.length; i++) {
      for (int j = 0; j < odd.length; j++) {
        odd[i] |=
            i != j
                && noWorse(options.get(j), options.get(i), prices)
                && (j < i || !noWorse(options.get(i), options.get(j), prices));
      }
    }
    return odd;
  }

  private boolean noWorse(SectionOption one, SectionOption other, NetPrice prices) {
    if (one.lengthFt() != other.lengthFt()
        || one.weightLb() > other.weightLb()
        || !noWeaker(one.rating(), other.rating())
        || one.isOwned()
        || other.isOwned()
        || one.bill().size() > 1
        || other.bill().size() > 1
        || job.accessories().contains(other.item().orElseThrow().number())
        || !Availability.of(job).toBeHad(one.item().orElseThrow(), 1_000_000)) {
      return false;
    }
    Money before = null;
    for (int quantity = 1; quantity <= 100; quantity++) {
      Money price = prices.unitPrice(one.item().orElseThrow(), quantity).orElseThrow();
      Money rival = prices.unitPrice(other.item().orElseThrow(), quantity).orElseThrow();
      if (price.isGreaterThan(rival) || before != null && price.isGreaterThan(before)) {
        return false;
      }
      before = price;
    }
    return true;
  }

  private static boolean noWeaker(Rating one, Rating other) {
    double unrated = Double.POSITIVE_INFINITY;
    boolean noWeaker =
        one.serviceTestPsi().orElse(unrated) >= other.serviceTestPsi().orElse(unrated)
            && one.vacuumInHg().orElse(0) >= other.vacuumInHg().orElse(0);
    for (double temperatureF = 60; temperatureF <= 160; temperatureF += 5) {
      noWeaker &=
          one.workingPsiAt(temperatureF).orElse(unrated)
              >= other.workingPsiAt(temperatureF).orElse(unrated);
    }
    return noWeaker;
  }

  /** Every lay of a leg, of one section where sections do not couple to each other. */
  List<Lay> of(LegShape leg) {
    return laysOf
        .computeIfAbsent(leg.hose(), hose -> new HashMap<>())
        .computeIfAbsent(List.of(leg.neededFt(), leg.midway().size()), stretch -> search(leg));
  }

  private List<Lay> search(LegShape leg) {
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
  private List<Lay> lays(LegShape leg) {
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
