package hosewright.line.plan;

import static hosewright.line.check.Checks.text;

import hosewright.catalogue.Stated;
import hosewright.job.layout.LayoutJob;
import hosewright.job.question.SourceKind;
import hosewright.line.layout.FedLayout;
import hosewright.line.layout.FedLeg;
import hosewright.line.layout.search.Divider;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What pumps are set to and gates are closed by, so that each appliance passes what is planned:
 * pumps serve the appliance that needs most, gates hold back the rest (common practice, no source).
 */
final class LayoutSettings {
  private static final double LEAST_PSI = 1;

  private final LayoutJob layout;
  private final FedLayout fed;

  private LayoutSettings(LayoutJob layout, FedLayout fed) {
    this.layout = layout;
    this.fed = fed;
  }

  static List<String> of(LayoutJob layout, FedLayout fed) {
    LayoutSettings settings = new LayoutSettings(layout, fed);
    List<String> sentences = new ArrayList<>();
    settings.source().ifPresent(sentences::add);
    for (FedLeg leg : fed.legs()) {
      settings.pump(leg).ifPresent(sentences::add);
      settings.gate(leg).ifPresent(sentences::add);
    }
    return sentences;
  }

  private Optional<String> source() {
    return sourceOverPsi() < LEAST_PSI
        ? Optional.empty()
        : Optional.of(
            text(
                "Set the pump at the source to %.0f psi: that feeds every appliance. Set higher, up"
                    + " to the %.0f psi it can give, more water flows than was planned.",
                Math.ceil(fed.whole().needsPsi()), fed.source().flowingPsi()));
  }

  /** What the pump at the source could give over what the layout needs, psi; 0 without one. */
  private double sourceOverPsi() {
    return layout.whole().source() == SourceKind.PUMP && layout.supply().isPresent()
        ? Math.max(0, fed.source().flowingPsi() - Math.ceil(fed.whole().needsPsi()))
        : 0;
  }

  /** What a pump on the way is set to, where it could give more. */
  private Optional<String> pump(FedLeg leg) {
    if (leg.pumpedOverPsi() < LEAST_PSI) {
      return Optional.empty();
    }
    double neededPsi = Math.ceil(leg.neededBehindPsi());
    return leg.laid()
        .divider()
        .flatMap(Divider::pump)
        .map(
            pump ->
                neededPsi <= leg.outletPsi()
                    ? text(
                        "%s is not needed at this flow: %.0f psi come in, and %.0f psi feed all"
                            + " behind it. Leave it out, or let the water run through.",
                        pump.name(), leg.outletPsi(), neededPsi)
                    : text(
                        "Set %s to give %.0f psi: that feeds all behind it; at its most it would"
                            + " give %.0f psi, and more water.",
                        pump.name(), neededPsi, pump.boost().outletPsi(leg.outletPsi())));
  }

  /** By how much a gate must be closed once pumps are set. */
  private Optional<String> gate(FedLeg leg) {
    if (!leg.laid().asked().last()
        || leg.meeting().isPresent()
        || leg.before().isEmpty() && !sharesPump()
        || !leg.hydraulics().calculated()) {
      return Optional.empty();
    }
    double overPsi = leg.sparePsi() - setAwayPsi(leg);
    return overPsi < LEAST_PSI
        ? Optional.empty()
        : Optional.of(
            text(
                gated(leg)
                    ? "Throttle %s by %.0f psi at its gate: it needs %.1f psi for %.0f gpm and"
                        + " would get %.1f psi, and more water, with the gate open."
                    : "Nothing throttles %s, where %.0f psi are too much: it needs %.1f psi for"
                        + " %.0f gpm and would get %.1f psi, and more water; a gate valve before"
                        + " it would.",
                leg.name(),
                overPsi,
                leg.laid().needPsi(),
                leg.job().flowGpm(),
                leg.laid().needPsi() + overPsi));
  }

  /** Whether several legs begin at discharges of the pump at the source, each with its gate. */
  private boolean sharesPump() {
    return layout.whole().source() == SourceKind.PUMP
        && layout.supply().isPresent()
        && fed.legs().stream().filter(leg -> leg.before().isEmpty()).count() > 1;
  }

  /** What the setting of the nearest pump before a leg takes of what comes to it, psi. */
  private double setAwayPsi(FedLeg leg) {
    for (Optional<FedLeg> at = leg.before(); at.isPresent(); at = at.get().before()) {
      if (at.get().laid().divider().flatMap(Divider::pump).isPresent()) {
        return at.get().pumpedOverPsi();
      }
    }
    return sourceOverPsi();
  }

  /** Whether it begins at a gate; a pump's discharges have theirs. */
  private static boolean gated(FedLeg leg) {
    return leg.before()
        .flatMap(before -> before.laid().divider().orElseThrow().item())
        .map(item -> item.form().gated() == Stated.YES)
        .orElse(true);
  }
}
