package hosewright.line;

import java.util.ArrayList;
import java.util.List;
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

  /** No plan in a frame costs less, its bridges left out; empty when no lay is possible. */
  OptionalDouble leastCost(Frame frame) {
    List<Choice<Lay>> choices = lays.of(frame).lays();
    return choices.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(fixedCost(frame) + Choice.least(choices));
  }

  private double fixedCost(Frame frame) {
    double cost = accessories.leastCost(job.accessories(), frame.hose());
    for (Bridge.Link part : frame.fixedParts()) {
      cost += floor.ofOne(part.item());
    }
    return cost;
  }

  /**
   * A frame, and the bridges there are for it.
   *
   * @param bridges over each gap; empty where the catalogue has none
   * @param fixedLossPsi what the parts take that must stand in the line, psi
   * @param leastSeenBeforePsi what every part before the hose sees at the least, psi
   * @param leastSeenBehindPsi what every part behind the hose sees at the least, psi
   */
  record Unopened(
      Frame frame,
      List<Frame.Gap> gaps,
      List<Optional<GapBridges>> bridges,
      double fixedLossPsi,
      double leastSeenBeforePsi,
      double leastSeenBehindPsi) {

    long missing() {
      return bridges.stream().filter(Optional::isEmpty).count();
    }
  }

  /** Looks for bridges over each gap of a frame that can be laid. */
  Unopened look(Frame frame) {
    List<Frame.Gap> gaps = frame.gaps(job.from(), job.to());
    double fixedLossPsi = PressureBudget.fixedLossPsi(job, frame);
    double lossPsi = lays.of(frame).leastLossPsi() + fixedLossPsi;
    for (Frame.Gap gap : gaps) {
      lossPsi += bridges.over(gap, 0).map(GapBridges::leastLossPsi).orElse(0.0);
    }
    double beforePsi = PressureBudget.seenBeforeHosePsi(job, lossPsi);
    double behindPsi = PressureBudget.seenBehindHosePsi(job, lossPsi);
    List<Optional<GapBridges>> over = new ArrayList<>();
    for (int i = 0; i < gaps.size(); i++) {
      over.add(bridges.over(gaps.get(i), i <= frame.before().size() ? beforePsi : behindPsi));
    }
    return new Unopened(frame, gaps, over, fixedLossPsi, beforePsi, behindPsi);
  }

  /** The frame ready to be searched, with adapters to be sourced over gaps that have no bridge. */
  Opened open(Unopened unopened) {
    Frame frame = unopened.frame();
    LayChoices.Offer offer = lays.of(frame);
    OptionalDouble sourcedPsi = PressureBudget.enoughPsi(job, frame.hose().rating());
    List<GapBridges> over = new ArrayList<>();
    for (int i = 0; i < unopened.gaps().size(); i++) {
      Frame.Gap gap = unopened.gaps().get(i);
      over.add(unopened.bridges().get(i).orElseGet(() -> bridges.toSource(gap, sourcedPsi)));
    }
    boolean hopeless =
        !offer.inStock()
            || FlowChecks.tipTooLarge(job, frame.hose())
            || !rated(frame.before(), unopened.leastSeenBeforePsi())
            || !rated(frame.after(), unopened.leastSeenBehindPsi());
    return Opened.of(
        frame,
        over,
        offer.lays(),
        fixedCost(frame),
        PressureBudget.of(job, frame, unopened.fixedLossPsi()),
        hopeless);
  }

  private boolean rated(List<Bridge.Link> parts, double seenPsi) {
    double temperatureF = job.service().temperatureOrUsualF();
    return parts.stream()
        .map(part -> part.item().rating().workingPsiAt(temperatureF))
        .allMatch(psi -> psi.orElse(seenPsi) >= seenPsi - PressureChecks.HAIR_PSI);
  }
}
