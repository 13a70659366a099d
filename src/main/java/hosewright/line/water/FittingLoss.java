package hosewright.line.water;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.hydraulics.ApplianceLoss;
import hosewright.hydraulics.Fitting;
import hosewright.hydraulics.LineElement;
import hosewright.hydraulics.MinorLossTable;
import hosewright.hydraulics.TaughtLoss;
import hosewright.line.assembly.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What an adapter, device, split or join takes from the water.
 *
 * <p>The maker's coefficient first. Where there is none, what its waterway gives: the change of
 * bore into it and out of it, and the body; and for an appliance no less than the loss that is
 * taught for it, from the flow on that it is taught for.
 */
public final class FittingLoss {
  private static final String MAKERS = "K from the catalogue's item";

  private FittingLoss() {}

  /** One part of a line as the water meets it; neither hose nor one of the line's two ends. */
  public static LineElement of(Placed part) {
    OptionalDouble statedPsi =
        part.item().map(Item::applianceLossPsi).orElseGet(OptionalDouble::empty);
    if (statedPsi.isPresent() && alwaysLoses(kind(part))) {
      return new ApplianceLoss(part.description(), 0, statedPsi.getAsDouble(), part.lines());
    }
    OptionalDouble makers = part.item().map(Item::lossCoefficient).orElseGet(OptionalDouble::empty);
    if (makers.isPresent()) {
      Port throat = Port.fastest(part);
      return new Fitting(
          part.description(), makers.getAsDouble(), throat.boreIn(), throat.abreast(), MAKERS);
    }
    Fitting waterway = waterway(part);
    return taught(part, statedPsi)
        .map(taught -> (LineElement) new TaughtLoss(waterway, taught))
        .orElse(waterway);
  }

  /** A meter turns and a backflow preventer's springs open at any flow. */
  private static boolean alwaysLoses(ItemKind kind) {
    return kind == ItemKind.BACKFLOW || kind == ItemKind.METER;
  }

  private static ItemKind kind(Placed part) {
    return part.item().map(Item::kind).orElse(ItemKind.ADAPTER);
  }

  private static Optional<ApplianceLoss> taught(Placed part, OptionalDouble statedPsi) {
    if (statedPsi.isPresent()) {
      return Optional.of(
          new ApplianceLoss(
              part.description(),
              ApplianceLoss.USUAL_THRESHOLD_GPM,
              statedPsi.getAsDouble(),
              part.lines()));
    }
    return ApplianceTeaching.counted(kind(part).word())
        .map(row -> new ApplianceLoss(part.description(), row.fromGpm(), row.psi(), part.lines()));
  }

  /** What bore and body take, as one coefficient on the velocity where it is highest. */
  private static Fitting waterway(Placed part) {
    Port up = Port.upstream(part);
    Port down = Port.downstream(part);
    Port throat = Port.fastest(part);
    Port narrower = up.boreIn() <= down.boreIn() ? up : down;
    double k =
        changeK(up.nominalIn(), up.boreIn()) * up.headOver(throat)
            + changeK(up.boreIn(), down.boreIn()) * narrower.headOver(throat)
            + changeK(down.boreIn(), down.nominalIn()) * down.headOver(throat);
    Optional<MinorLossTable.Row> body = MinorLossTable.coefficient(kind(part).word());
    List<String> sources = new ArrayList<>(body.map(MinorLossTable.Row::source).stream().toList());
    if (k > 0 || sources.isEmpty()) {
      sources.add(Fitting.BORDA_CARNOT);
    }
    return new Fitting(
        part.description(),
        k + body.map(MinorLossTable.Row::k).orElse(0.0),
        throat.boreIn(),
        throat.abreast(),
        String.join("; ", sources));
  }

  private static double changeK(double fromIn, double toIn) {
    return Fitting.changeOfBore("", fromIn, toIn).lossCoefficient();
  }
}
