package hosewright.line;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what the catalogue has for a frame: lays, and bridges that stand what they must see. */
final class Opening {
  private final Job job;
  private final PriceFloor floor;
  private final BridgeChoices bridges;
  private final LayChoices lays;
  private final Accessories accessories;

  Opening(
      Job job, PriceFloor floor, BridgeChoices bridges, LayChoices lays, Accessories accessories) {
    this.job = job;
    this.floor = floor;
    this.bridges = bridges;
    this.lays = lays;
    this.accessories = accessories;
  }

  /**
   * No plan in a frame costs less, its bridges left out and its sections taken at their least;
   * empty when no lay is possible.
   */
  OptionalDouble leastCost(Frame frame) {
    double cost = fixedCost(frame);
    for (LegLays leg : lays.of(frame)) {
      if (leg.isEmpty()) {
        return OptionalDouble.empty();
      }
      cost += leg.bound();
    }
    return OptionalDouble.of(cost);
  }

  private double fixedCost(Frame frame) {
    double cost = accessories.leastCost(job.accessories(), frame.hose());
    for (Frame.Fixed fixed : frame.fixedParts()) {
      cost += floor.ofOne(fixed.part().item()) * fixed.lines();
    }
    return cost;
  }

  /**
   * A frame, and the bridges there are for it.
   *
   * @param bridges over each gap; empty where the catalogue has none
   * @param fixedLossPsi what the parts take that must stand in the line, psi
   * @param leastSeenPsi what every part of a stretch sees at the least, psi
   */
  record Unopened(
      Frame frame,
      List<Frame.Gap> gaps,
      List<Optional<GapBridges>> bridges,
      double fixedLossPsi,
      Map<Frame.Stretch, Double> leastSeenPsi) {

    long missing() {
      return bridges.stream().filter(Optional::isEmpty).count();
    }
  }

  /** Looks for bridges over each gap of a frame that can be laid. */
  Unopened look(Frame frame) {
    List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
    double fixedLossPsi = PressureBudget.fixedLossPsi(job, frame);
    double lossPsi = fixedLossPsi;
    for (LegLays leg : lays.of(frame)) {
      lossPsi += leg.leastLossPsi();
    }
    for (Frame.Gap gap : gaps) {
      lossPsi += bridges.over(gap, 0).map(GapBridges::leastLossPsi).orElse(0.0);
    }
    Map<Frame.Stretch, Double> seenPsi = new EnumMap<>(Frame.Stretch.class);
    for (Frame.Stretch stretch : Frame.Stretch.values()) {
      seenPsi.put(stretch, PressureBudget.leastSeenPsi(job, stretch, lossPsi));
    }
    List<Optional<GapBridges>> over = new ArrayList<>();
    for (Frame.Gap gap : gaps) {
      over.add(bridges.over(gap, seenPsi.get(gap.stretch())));
    }
    return new Unopened(frame, gaps, over, fixedLossPsi, seenPsi);
  }

  /** The frame ready to be searched, with adapters to be sourced over gaps that have no bridge. */
  Opened open(Unopened unopened) {
    Frame frame = unopened.frame();
    List<LegLays> legs = lays.of(frame);
    OptionalDouble sourcedPsi = PressureBudget.enoughPsi(job, frame);
    List<GapBridges> over = new ArrayList<>();
    for (int i = 0; i < unopened.gaps().size(); i++) {
      Frame.Gap gap = unopened.gaps().get(i);
      over.add(unopened.bridges().get(i).orElseGet(() -> bridges.toSource(gap, sourcedPsi)));
    }
    boolean hopeless =
        legs.stream().anyMatch(leg -> !leg.inStock())
            || FlowChecks.tipTooLarge(job, frame.last().hose())
            || frame.fixedParts().stream()
                .anyMatch(fixed -> !rated(fixed, unopened.leastSeenPsi().get(fixed.stretch())));
    return Opened.of(
        frame,
        unopened.gaps().stream().map(Frame.Gap::stretch).toList(),
        over,
        legs,
        fixedCost(frame),
        PressureBudget.of(job, frame, unopened.fixedLossPsi()),
        hopeless);
  }

  private boolean rated(Frame.Fixed fixed, double seenPsi) {
    double temperatureF = job.service().temperatureOrUsualF();
    OptionalDouble ratedPsi = fixed.part().item().rating().workingPsiAt(temperatureF);
    return ratedPsi.orElse(seenPsi) >= seenPsi - PressureChecks.HAIR_PSI;
  }
}
